package kitleaf.basket;

import java.util.List;
import java.util.Optional;
import kitleaf.basket.SizeText.Size;
import kitleaf.words.Said;

/** Reads how bag tags are made. */
final class TagsReader {

    private static final List<String> KEYS = List.of("size", "sides", "back-lies");
    private static final List<String> WAYS = List.of("right", "left", "below", "above");
    private static final String EXAMPLE = "{size: quarter, sides: folded}";
    private static final String SHIFT_EXAMPLE = "{right: 0.8 mm, below: 0.5 mm}";
    private static final Form<Tags.Sides> SIDES = Choice.of("choice.tag-sides", Tags.Sides.class);
    private static final Form<Double> SHIFT = new LengthText(0, Tags.MOST_SHIFT_MM, "tag.shift", "0.8 mm");

    private final Optional<Paper> paper;

    /** A reader for a basket printed on some paper; none if that could not be read, and then no fit is judged. */
    TagsReader(Optional<Paper> paper) {
        this.paper = paper;
    }

    /** The basket's tags; the usual ones where it says nothing of them. */
    Tags read(Fields basket) {
        return basket.group("tags", EXAMPLE, KEYS).map(this::tags).orElse(Tags.USUAL);
    }

    private Tags tags(Fields fields) {
        Tags.Size size = fields.value("size", new TagSizeText()).orElse(Tags.USUAL.size());
        Tags.Sides sides = fields.value("sides", SIDES).orElse(Tags.USUAL.sides());
        Optional<Fields> shift = fields.group("back-lies", SHIFT_EXAMPLE, WAYS);
        Tags tags = new Tags(size, sides, shift.map(lies -> lies(lies, "right", "left")).orElse(0.0),
                shift.map(lies -> lies(lies, "below", "above")).orElse(0.0));
        paper.filter(sheet -> !tags.fit(sheet)).ifPresent(sheet -> fields.wrong("size",
                Misfits.fault(tags, sheet, Tags.Room.USUAL, Misfits.Cause.FILE)));
        return tags;
    }

    /** How far one way, or below nought the other way. */
    private static double lies(Fields fields, String way, String other) {
        if (fields.has(way) && fields.has(other)) {
            fields.wrong(other, Fault.of("tag.both-ways", Said.of("way." + way), Said.of("way." + other)));
            return 0;
        }
        return fields.value(way, SHIFT).orElse(0.0) - fields.value(other, SHIFT).orElse(0.0);
    }

    /** A share of the sheet in a word, or two lengths. */
    private record TagSizeText() implements Form<Tags.Size> {

        private static final LengthText SIDE = new LengthText(1, Paper.MOST_MM, "tag.side", "70 mm");
        private static final SizeText OWN = new SizeText(SIDE, false,
                "size.tag", "70 mm x 110 mm");

        @Override
        public Tags.Size read(String text) throws Fault {
            for (Tags.Share share : Tags.Share.values()) {
                if (share.word().equals(text.strip())) {
                    return share;
                }
            }
            Size size = OWN.read(text);
            if (size.acrossMm() < Tags.LEAST_WIDTH_MM || size.downMm() < Tags.LEAST_HEIGHT_MM) {
                throw Fault.of("tag.small", text.strip());
            }
            return new Tags.Own(size.acrossMm(), size.downMm());
        }

        @Override
        public String example() {
            return "quarter";
        }

        @Override
        public JsonShape shape() {
            return Choice.of("choice.tag-share", Tags.Share.class).shape().or(OWN.shape());
        }
    }
}
