package kitleaf.basket.reader;

import java.util.Optional;
import kitleaf.basket.Paper;
import kitleaf.basket.Tags;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.JsonShape;
import kitleaf.basket.form.LengthText;
import kitleaf.basket.form.SizeText;
import kitleaf.basket.form.SizeText.Size;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Fault;
import kitleaf.words.Said;

/** Reads how bag tags are made. */
final class TagsReader {

    static final Keys KEYS = Keys.under("tags", "{size: quarter, sides: folded}");
    static final Key<Tags.Size> SIZE = KEYS.may("size", new TagSizeText(), "sixth", "70 mm x 110 mm");
    private static final Key<Tags.Sides> SIDES = KEYS.may("sides", Choice.of("choice.tag-sides", Tags.Sides.class));

    private static final Form<Double> SHIFT = new LengthText(0, Tags.MOST_SHIFT_MM, "tag.shift", "0.8 mm");
    private static final Keys WAYS = Keys.under("back-lies", "{right: 0.8 mm, below: 0.5 mm}");
    private static final Key<Double> RIGHT = WAYS.may("right", SHIFT);
    private static final Key<Double> LEFT = WAYS.may("left", SHIFT);
    private static final Key<Double> BELOW = WAYS.may("below", SHIFT, "0.5 mm");
    private static final Key<Double> ABOVE = WAYS.may("above", SHIFT, "0.5 mm");
    private static final Key<Void> BACK_LIES = KEYS.may("back-lies", WAYS, WAYS.example(), "{left: 0.8 mm, above: 0.5 mm}");

    private final Optional<Paper> paper;

    /** A reader for a basket printed on some paper; none if that could not be read, and then no fit is judged. */
    TagsReader(Optional<Paper> paper) {
        this.paper = paper;
    }

    /** The basket's tags; the usual ones where it says nothing of them. */
    Tags read(Fields basket) {
        return basket.group(SettingsReader.TAGS, KEYS).map(this::tags).orElse(Tags.USUAL);
    }

    private Tags tags(Fields fields) {
        Tags.Size size = fields.value(SIZE).orElse(Tags.USUAL.size());
        Tags.Sides sides = fields.value(SIDES).orElse(Tags.USUAL.sides());
        Optional<Fields> shift = fields.group(BACK_LIES, WAYS);
        Tags tags = new Tags(size, sides, shift.map(lies -> lies(lies, RIGHT, LEFT)).orElse(0.0),
                shift.map(lies -> lies(lies, BELOW, ABOVE)).orElse(0.0));
        paper.filter(sheet -> !tags.fit(sheet)).ifPresent(sheet -> fields.wrong("size",
                Misfits.fault(tags, sheet, Tags.Room.USUAL, Misfits.Cause.FILE)));
        return tags;
    }

    /** How far one way, or below nought the other way. */
    private static double lies(Fields fields, Key<Double> way, Key<Double> other) {
        if (fields.has(way.name()) && fields.has(other.name())) {
            fields.wrong(other.name(), Fault.of("tag.both-ways", Said.of("way." + way.name()), Said.of("way." + other.name())));
            return 0;
        }
        return fields.value(way).orElse(0.0) - fields.value(other).orElse(0.0);
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
