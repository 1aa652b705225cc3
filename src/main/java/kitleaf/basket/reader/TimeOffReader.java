package kitleaf.basket.reader;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.TimeOff;
import kitleaf.basket.form.DateText;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/** Reads the days without stitching. */
final class TimeOffReader {

    private static final List<String> KEYS = List.of("from", "to", "why");
    private static final String EXAMPLE = "- {from: 2027-07-05, to: 2027-07-18, why: boats}";
    private static final Form<LocalDate> DAY = new DateText();

    private final Problems problems;

    TimeOffReader(Problems problems) {
        this.problems = problems;
    }

    /** The stretches that could be read, in their order. */
    List<TimeOff> read(Fields basket) {
        List<TimeOff> timeOff = new ArrayList<>();
        for (Node node : basket.list("time-off", EXAMPLE)) {
            Fields.of(node, Said.of("thing.time-off"), EXAMPLE, KEYS, problems).flatMap(TimeOffReader::stretch).ifPresent(timeOff::add);
        }
        return timeOff;
    }

    private static Optional<TimeOff> stretch(Fields fields) {
        Optional<LocalDate> from = fields.required("from", DAY);
        Optional<LocalDate> to = fields.value("to", DAY).or(() -> from);
        Optional<String> why = fields.value("why", new TextForm("boats"));
        return from.flatMap(first -> to.flatMap(last -> {
            if (last.isBefore(first)) {
                fields.wrong("to", Fault.of("time-off.backward", last.toString(), first.toString()));
                return Optional.empty();
            }
            return Optional.of(new TimeOff(first, last, why));
        }));
    }
}
