package kitleaf.basket.reader;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import kitleaf.basket.Amount;
import kitleaf.basket.Goal;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Progress;
import kitleaf.basket.edit.LogPlace;
import kitleaf.basket.form.AmountText;
import kitleaf.basket.form.DateText;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.NumberText;
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
    public static final Form<Double> HOURS = new NumberText(0, true, 24, "log.hours", "2.5");

    private static final Keys ENTRY = Keys.of("thing.log-entry", "- {on: 2026-03-01, hours: 2.5, stitches: 260}");
    private static final Key<LocalDate> ON = ENTRY.must("on", DAY, "2026-03-01");
    private static final Key<Double> SAT = ENTRY.must("hours", HOURS);
    private static final Key<Integer> STITCHES = ENTRY.must("stitches", WholeText.stitches(), "260");

    static final Keys PROGRESS = Keys.under("progress", "{started: 2026-02-14, done: 45%}");
    private static final Key<LocalDate> STARTED = PROGRESS.may("started", DAY);
    private static final Key<LocalDate> FINISHED = PROGRESS.may("finished", DAY, "2027-01-06");
    private static final Key<Amount> DONE = PROGRESS.may("done", new AmountText(), "100%");
    private static final Key<Void> LOG = PROGRESS.list("log", ENTRY);

    static final Keys GOAL = Keys.under("goal", "{must: yes, by: 2027-06-30, weight: 3}");
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
        Optional<LocalDate> finished = fields.value(FINISHED);
        if (started.isPresent() && finished.isPresent() && finished.get().isBefore(started.get())) {
            fields.wrong("finished", Fault.of("progress.before-start", finished.get().toString(), started.get().toString()));
        }
        Optional<Amount> done = fields.value(DONE).map(amount -> within(amount, fields, "done", most));
        if (finished.isPresent() && done.isPresent() && done.get() instanceof Amount.Share share && share.fraction() < 1) {
            fields.wrong("done", Fault.of("progress.not-all", finished.get().toString()));
        }
        List<LogEntry> log = new ArrayList<>();
        boolean told = false;
        long stitches = 0;
        for (Node node : fields.list(LOG)) {
            Optional<Fields> keys = Fields.of(node, ENTRY, problems);
            Optional<LogEntry> entry = keys.flatMap(one -> logEntry(one, started, finished));
            if (entry.isEmpty()) {
                continue;
            }
            log.add(entry.get());
            // Where one entry is too much all that follow are, so the first is told alone.
            if (!told && most.isPresent() && LogLimits.tooMany(entry.get(), stitches, most.getAsLong())) {
                told = true;
                keys.get().wrong("stitches", Fault.of("log.too-many", stitches + entry.get().stitches(), most.getAsLong()));
            }
            stitches += entry.get().stitches();
        }
        return new Progress(started, finished, done, log);
    }

    private static Optional<LogEntry> logEntry(Fields fields, Optional<LocalDate> started, Optional<LocalDate> finished) {
        Optional<LocalDate> on = fields.value(ON);
        if (on.isPresent() && started.isPresent() && on.get().isBefore(started.get())) {
            fields.wrong("on", Fault.of("progress.before-start", on.get().toString(), started.get().toString()));
        }
        Optional<Double> hours = fields.value(SAT);
        Optional<Integer> stitches = fields.value(STITCHES);
        Optional<LogEntry> entry = on.flatMap(day -> hours.flatMap(h -> stitches.map(n -> new LogEntry(day, h, n))));
        entry.filter(one -> LogLimits.afterFinish(one, finished)).ifPresent(one -> fields.wrong("on",
                Fault.of("progress.after-finish", one.on().toString(), finished.get().toString())));
        entry.filter(LogLimits::tooFast).ifPresent(one -> fields.wrong("stitches",
                Fault.of("log.too-fast", one.stitches(), LogPlace.hours(one), LogLimits.MOST_AN_HOUR)));
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
