package kitleaf.basket.reader;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.TimeOff;
import kitleaf.basket.form.DateText;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.yaml.Node;

/** Reads the days without stitching. */
final class TimeOffReader {

    static final Keys KEYS = Keys.of("thing.time-off", "- {from: 2027-07-05, to: 2027-07-18, why: boats}");
    private static final Key<LocalDate> FROM = KEYS.must("from", new DateText(), "2027-07-05");
    private static final Key<LocalDate> TO = KEYS.may("to", new DateText(), "2027-07-18");
    private static final Key<String> WHY = KEYS.may("why", new TextForm("boats"));

    private final Problems problems;

    TimeOffReader(Problems problems) {
        this.problems = problems;
    }

    /** The stretches that could be read, in their order. */
    List<TimeOff> read(Fields basket) {
        List<TimeOff> timeOff = new ArrayList<>();
        for (Node node : basket.list(SettingsReader.TIME_OFF)) {
            Fields.of(node, KEYS, problems).flatMap(TimeOffReader::stretch).ifPresent(timeOff::add);
        }
        return timeOff;
    }

    private static Optional<TimeOff> stretch(Fields fields) {
        Optional<LocalDate> from = fields.value(FROM);
        Optional<LocalDate> to = fields.value(TO).or(() -> from);
        Optional<String> why = fields.value(WHY);
        return from.flatMap(first -> to.flatMap(last -> {
            if (last.isBefore(first)) {
                fields.wrong("to", Fault.of("time-off.backward", last.toString(), first.toString()));
                return Optional.empty();
            }
            return Optional.of(new TimeOff(first, last, why));
        }));
    }
}
