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
import kitleaf.basket.edit.LogPlace;
import kitleaf.basket.form.AmountText;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.DateText;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.NumberText;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.form.YesNo;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/** Reads how far a piece has come and what is wanted of it. */
public final class ProgressReader {

    private static final List<String> KEYS = List.of("started", "stitched", "finished", "done", "readings", "log", "states");
    private static final List<String> READING_KEYS = List.of("on", "done");
    private static final List<String> LOG_KEYS = List.of("on", "hours", "stitches", "unpicked", "note");
    private static final List<String> STATE_KEYS = List.of("on", "is");
    private static final List<String> GOAL_KEYS = List.of("must", "by", "weight");
    private static final String EXAMPLE = "45%";
    private static final String READING_EXAMPLE = "- {on: 2026-03-01, done: 45%}";
    private static final String STATE_EXAMPLE = "- {on: 2026-05-01, is: resting}";
    private static final String LOG_EXAMPLE = "- {on: 2026-03-01, hours: 2.5, stitches: 260}";

    private static final Form<PieceState> STATE = Choice.of("choice.state", PieceState.class, PieceState::said);
    public static final Form<LocalDate> DAY = new DateText();
    public static final Form<Double> HOURS =
            new NumberText(0, true, 24, "log.hours", "2.5");

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
        Optional<Node> node = piece.node("progress", EXAMPLE);
        if (node.isPresent() && node.get() instanceof Node.Mapping) {
            return Fields.of(node.get(), Fields.key("progress"), "{started: 2026-02-14, done: 45%}", KEYS, problems)
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
        Optional<LocalDate> started = fields.value("started", DAY);
        Optional<LocalDate> stitched = fields.value("stitched", DAY);
        Optional<LocalDate> finished = fields.value("finished", DAY);
        notBefore(fields, "stitched", stitched, started, "progress.before-start");
        notBefore(fields, "finished", finished, started, "progress.before-start");
        notBefore(fields, "finished", finished, stitched, "progress.before-stitched");
        Optional<Amount> done = fields.value("done", new AmountText()).map(amount -> within(amount, fields, "done", most));
        Optional<LocalDate> last = stitched.or(() -> finished);
        if (last.isPresent() && done.isPresent() && done.get() instanceof Amount.Share share && share.fraction() < 1) {
            fields.wrong("done", Fault.of("progress.not-all", last.get().toString()));
        }
        List<HowFar> readings = each(fields, "readings", READING_EXAMPLE, "thing.reading", READING_KEYS,
                keys -> reading(keys, started, most));
        List<SaidState> states = each(fields, "states", STATE_EXAMPLE, "thing.state", STATE_KEYS, ProgressReader::state);
        List<LogEntry> log = new ArrayList<>();
        boolean told = false;
        long stitches = 0;
        for (Node node : fields.list("log", LOG_EXAMPLE)) {
            Optional<Fields> keys = Fields.of(node, Said.of("thing.log-entry"), LOG_EXAMPLE, LOG_KEYS, problems);
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

    private <T> List<T> each(Fields fields, String key, String example, String thing, List<String> keys,
                             Function<Fields, Optional<T>> read) {
        return fields.list(key, example).stream().flatMap(node -> Fields.of(node, Said.of(thing), example, keys, problems).stream())
                .flatMap(one -> read.apply(one).stream()).toList();
    }

    private static Optional<HowFar> reading(Fields fields, Optional<LocalDate> started, OptionalLong most) {
        Optional<LocalDate> on = fields.required("on", DAY);
        notBefore(fields, "on", on, started, "progress.before-start");
        Optional<Amount> done = fields.required("done", new AmountText()).map(amount -> within(amount, fields, "done", most));
        return on.flatMap(day -> done.map(amount -> new HowFar(day, amount)));
    }

    private static Optional<SaidState> state(Fields fields) {
        Optional<LocalDate> on = fields.required("on", DAY);
        Optional<PieceState> is = fields.required("is", STATE);
        return on.flatMap(day -> is.map(state -> new SaidState(day, state)));
    }

    private static void notBefore(Fields fields, String key, Optional<LocalDate> day, Optional<LocalDate> first, String fault) {
        if (day.isPresent() && first.isPresent() && day.get().isBefore(first.get())) {
            fields.wrong(key, Fault.of(fault, day.get().toString(), first.get().toString()));
        }
    }

    private static Optional<LogEntry> logEntry(Fields fields, Optional<LocalDate> started, Optional<LocalDate> last) {
        Optional<LocalDate> on = fields.required("on", DAY);
        notBefore(fields, "on", on, started, "progress.before-start");
        Optional<Double> hours = fields.value("hours", HOURS);
        Optional<Integer> stitches = fields.value("stitches", WholeText.stitches());
        Optional<Integer> unpicked = fields.value("unpicked", WholeText.stitches());
        Optional<String> note = fields.value("note", new TextForm("moved to the second page"));
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
                Fault.of("log.too-fast", one.stitches().getAsInt(), LogPlace.hours(one), LogLimits.MOST_AN_HOUR)));
        return entry;
    }

    /**
     * What is wanted of a piece. Its day may lie in any year: one that went by is what late pieces are named by, one yet to
     * come belongs to a piece of several years, and both outlive the goals of a year.
     */
    Goal goal(Fields piece) {
        return piece.group("goal", "{must: yes, by: 2027-06-30, weight: 3}", GOAL_KEYS).map(fields -> new Goal(
                fields.value("must", new YesNo()).orElse(false),
                fields.value("by", DAY),
                fields.value("weight", new WholeText(1, Goal.MOST_WEIGHT, "3")).orElse(1))).orElse(Goal.NONE);
    }
}
