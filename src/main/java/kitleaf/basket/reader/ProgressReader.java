package kitleaf.basket.reader;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Function;
import kitleaf.basket.Amount;
import kitleaf.basket.Goal;
import kitleaf.basket.HowFar;
import kitleaf.basket.LogEntry;
import kitleaf.basket.PieceState;
import kitleaf.basket.Progress;
import kitleaf.basket.SaidState;
import kitleaf.basket.form.AmountText;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.DateText;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.NumberText;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.form.YesNo;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.yaml.Node;

/** Reads how far a piece has come and what is wanted of it. */
public final class ProgressReader {

    public static final Form<LocalDate> DAY = new DateText();
    public static final Form<Double> HOURS = new NumberText(0, true, LogEntry.MOST_HOURS, "log.hours", "2.5");

    public static final Keys ENTRY = Keys.of("thing.log-entry", "- {on: 2026-03-01, hours: 2.5, stitches: 260}");
    private static final Key<LocalDate> ON = ENTRY.must("on", DAY, "2026-03-01");
    private static final Key<Double> SAT = ENTRY.may("hours", HOURS);
    private static final Key<Integer> STITCHES = ENTRY.may("stitches", WholeText.stitches(), "260");
    private static final Key<Integer> UNPICKED = ENTRY.may("unpicked", WholeText.stitches(), "20");
    private static final Key<String> NOTE = ENTRY.may("note", new TextForm("Second page"));

    public static final Keys READING = Keys.of("thing.reading", "- {on: 2026-03-01, done: 45%}");
    private static final Key<LocalDate> READ_ON = READING.must("on", DAY, "2026-04-01");
    private static final Key<Amount> READ_DONE = READING.must("done", new AmountText());

    private static final Keys STATE = Keys.of("thing.state", "- {on: 2026-05-01, is: resting}");
    private static final Key<LocalDate> STATE_ON = STATE.must("on", DAY, "2026-05-01");
    private static final Key<PieceState> IS = STATE.must("is", Choice.of("choice.state", PieceState.class, PieceState::said), "resting");

    public static final Keys PROGRESS = Keys.under("progress", "{started: 2026-02-14, done: 45%}");
    private static final Key<LocalDate> STARTED = PROGRESS.may("started", DAY);
    private static final Key<LocalDate> STITCHED = PROGRESS.may("stitched", DAY, "2027-01-02");
    private static final Key<LocalDate> FINISHED = PROGRESS.may("finished", DAY, "2027-01-06");
    private static final Key<Amount> DONE = PROGRESS.may("done", new AmountText(), "100%");
    private static final Key<Void> READINGS = PROGRESS.list("readings", READING);
    private static final Key<Void> STATES = PROGRESS.list("states", STATE);
    private static final Key<Void> LOG = PROGRESS.list("log", ENTRY);

    public static final Keys GOAL = Keys.under("goal", "{must: yes, by: 2027-06-30, weight: 3}");
    private static final Key<Boolean> MUST = GOAL.may("must", new YesNo());
    private static final Key<LocalDate> BY = GOAL.may("by", DAY, "2027-06-30");
    private static final Key<Integer> WEIGHT = GOAL.may("weight", new WholeText(1, Goal.MOST_WEIGHT, "3"));

    private final Problems problems;

    ProgressReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * How far a piece has come.
     *
     * @param most the most stitches it can hold; empty where that cannot be known
     */
    Progress progress(Fields piece, OptionalLong most) {
        Optional<Node> node = piece.node(PieceReader.PROGRESS);
        if (node.isPresent() && node.get() instanceof Node.Mapping) {
            return Fields.of(node.get(), PROGRESS, problems)
                    .map(fields -> read(fields, most)).orElse(Progress.NONE);
        }
        return node.flatMap(n -> piece.scalar(n, Fields.key("progress"), new AmountText()))
                .map(done -> within(done, piece, "progress", most))
                .map(done -> new Progress(Optional.empty(), Optional.empty(), Optional.of(done), List.of()))
                .orElse(Progress.NONE);
    }

    /** An amount, told of where it is more stitches than there can be. */
    private static Amount within(Amount done, Fields fields, String key, OptionalLong most) {
        if (done instanceof Amount.Stitches stitches && most.isPresent() && stitches.number() > most.getAsLong()) {
            fields.wrong(key, Fault.of("progress.more", stitches.number(), most.getAsLong()));
        }
        return done;
    }

    private Progress read(Fields fields, OptionalLong most) {
        Optional<LocalDate> started = fields.value(STARTED);
        Optional<LocalDate> stitched = fields.value(STITCHED);
        Optional<LocalDate> finished = fields.value(FINISHED);
        notBefore(fields, "stitched", stitched, started, "progress.before-start");
        notBefore(fields, "finished", finished, started, "progress.before-start");
        notBefore(fields, "finished", finished, stitched, "progress.before-stitched");
        Optional<Amount> done = fields.value(DONE).map(amount -> within(amount, fields, "done", most));
        Optional<LocalDate> last = stitched.or(() -> finished);
        if (last.isPresent() && done.isPresent() && done.get() instanceof Amount.Share share && share.fraction() < 1) {
            fields.wrong("done", Fault.of("progress.not-all", last.get().toString()));
        }
        List<HowFar> readings = each(fields, READINGS, READING, keys -> reading(keys, started, most));
        List<SaidState> states = each(fields, STATES, STATE, ProgressReader::state);
        List<LogEntry> log = new ArrayList<>();
        boolean told = false;
        long stitches = 0;
        for (Node node : fields.list(LOG)) {
            Optional<Fields> keys = Fields.of(node, ENTRY, problems);
            Optional<LogEntry> entry = keys.flatMap(one -> logEntry(one, started, last));
            if (entry.isEmpty()) {
                continue;
            }
            log.add(entry.get());
            // Where one entry is too much all that follow are, so the first is told alone.
            if (!told && most.isPresent() && LogLimits.tooMany(entry.get(), stitches, most.getAsLong())) {
                told = true;
                keys.get().wrong("stitches", Fault.of("log.too-many", stitches + entry.get().counted(), most.getAsLong()));
            }
            stitches += entry.get().counted();
        }
        return new Progress(started, stitched, finished, done, readings, log, states);
    }

    private <T> List<T> each(Fields fields, Key<Void> list, Keys entry, Function<Fields, Optional<T>> read) {
        return fields.list(list).stream().flatMap(node -> Fields.of(node, entry, problems).stream())
                .flatMap(one -> read.apply(one).stream()).toList();
    }

    private static Optional<HowFar> reading(Fields fields, Optional<LocalDate> started, OptionalLong most) {
        Optional<LocalDate> on = fields.value(READ_ON);
        notBefore(fields, "on", on, started, "progress.before-start");
        Optional<Amount> done = fields.value(READ_DONE).map(amount -> within(amount, fields, "done", most));
        return on.flatMap(day -> done.map(amount -> new HowFar(day, amount)));
    }

    private static Optional<SaidState> state(Fields fields) {
        Optional<LocalDate> on = fields.value(STATE_ON);
        Optional<PieceState> is = fields.value(IS);
        return on.flatMap(day -> is.map(state -> new SaidState(day, state)));
    }

    private static void notBefore(Fields fields, String key, Optional<LocalDate> day, Optional<LocalDate> first, String fault) {
        if (day.isPresent() && first.isPresent() && day.get().isBefore(first.get())) {
            fields.wrong(key, Fault.of(fault, day.get().toString(), first.get().toString()));
        }
    }

    private static Optional<LogEntry> logEntry(Fields fields, Optional<LocalDate> started, Optional<LocalDate> last) {
        Optional<LocalDate> on = fields.value(ON);
        notBefore(fields, "on", on, started, "progress.before-start");
        Optional<Double> hours = fields.value(SAT);
        Optional<Integer> stitches = fields.value(STITCHES);
        Optional<Integer> unpicked = fields.value(UNPICKED);
        Optional<String> note = fields.value(NOTE);
        if (!fields.has("hours") && !fields.has("stitches") && !fields.has("unpicked")) {
            fields.wrong("on", Fault.of("log.nothing"));
            return Optional.empty();
        }
        Optional<LogEntry> entry = on.filter(day -> hours.isPresent() || stitches.isPresent() || unpicked.orElse(0) > 0)
                .map(day -> new LogEntry(day, hours.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                        stitches.map(OptionalInt::of).orElseGet(OptionalInt::empty), unpicked.orElse(0), note));
        entry.filter(one -> LogLimits.afterLast(one, last)).ifPresent(one -> fields.wrong("on",
                Fault.of("progress.after-finish", one.on().toString(), last.get().toString())));
        entry.filter(LogLimits::tooFast).ifPresent(one -> fields.wrong("stitches",
                Fault.of("log.too-fast", one.stitches().getAsInt(), NumberText.written(one.hours().getAsDouble()),
                        LogLimits.MOST_AN_HOUR)));
        return entry;
    }

    /**
     * What is wanted of a piece. Its day may lie in any year: one that went by is what late pieces are named by, one yet to
     * come belongs to a piece of several years, and both outlive the goals of a year.
     */
    Goal goal(Fields piece) {
        return piece.group(PieceReader.GOAL, GOAL).map(fields -> new Goal(
                fields.value(MUST).orElse(false),
                fields.value(BY),
                fields.value(WEIGHT).orElse(1))).orElse(Goal.NONE);
    }
}
