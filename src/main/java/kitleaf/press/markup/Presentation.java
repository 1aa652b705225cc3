package kitleaf.press.markup;

import java.util.ArrayList;
import java.util.List;

/** Reads SVG's presentation attributes into a style. */
public final class Presentation {

    /** A dot at 600 dpi is 0.042 mm; finer dashes would round to nothing and hang viewers. */
    private static final double LEAST_DASH_MM = 0.05;

    private Presentation() {
    }

    /** The style with one attribute changed; the name is one of {@link Vocabulary}'s. */
    static Style apply(Style style, String name, String value) throws BadValue {
        Stroke stroke = style.stroke();
        Type type = style.type();
        String word = value.strip();
        return switch (name) {
            case "fill" -> style.withFill(Paint.read(word));
            case "stroke" -> style.withStroke(stroke.withPaint(Paint.read(word)));
            case "stroke-width" -> style.withStroke(stroke.withWidth(notNegative(word)));
            case "stroke-dasharray" -> style.withStroke(stroke.withDash(dash(word)));
            case "stroke-linecap" -> style.withStroke(stroke.withCap(choice(word, "butt", "round", "square")));
            case "stroke-linejoin" -> style.withStroke(stroke.withJoin(choice(word, "miter", "round", "bevel")));
            case "font-family" -> style.withType(type.withFamily(Family.read(word)));
            case "font-size" -> style.withType(type.withSize(sizePt(word)));
            case "font-weight" -> style.withType(type.withWeight(weight(word)));
            case "letter-spacing" -> style.withType(type.withSpacing(
                    word.equals("normal") ? 0 : NumberScanner.whole(word)));
            case "font-variant-numeric" -> style.withType(type.withTabular(
                    choice(word, "normal", "tabular-nums") == 1));
            case "text-anchor" -> style.withAnchor(Anchor.values()[choice(word, "start", "middle", "end")]);
            case "line-height" -> style.withLineHeight(notNegative(word));
            case "fit" -> style.withFit(sizePt(word));
            default -> throw new IllegalArgumentException("not a presentation attribute: " + name);
        };
    }

    /** A type size: {@code 9.5pt}, or a bare number of millimetres; more than 0. */
    public static double sizePt(String word) throws BadValue {
        double sizePt;
        try {
            sizePt = word.endsWith("pt")
                    ? NumberScanner.whole(word.substring(0, word.length() - 2))
                    : NumberScanner.whole(word) * Plate.POINTS_PER_MM;
        } catch (BadValue e) {
            throw new BadValue("value.size", word);
        }
        if (sizePt < Plate.LEAST_TYPE_PT) {
            throw new BadValue("value.small-size", word);
        }
        return sizePt;
    }

    public static double notNegative(String word) throws BadValue {
        double number = NumberScanner.whole(word);
        if (number < 0) {
            throw new BadValue("value.negative", word);
        }
        return number;
    }

    private static int weight(String word) throws BadValue {
        if (word.equals("normal")) {
            return Type.NORMAL;
        }
        if (word.equals("bold")) {
            return Type.BOLD;
        }
        if (word.length() == 3 && word.endsWith("00") && word.charAt(0) >= '1' && word.charAt(0) <= '9') {
            return (word.charAt(0) - '0') * 100;
        }
        throw new BadValue("value.weight", word);
    }

    private static List<Double> dash(String word) throws BadValue {
        if (word.equals("none")) {
            return List.of();
        }
        NumberScanner scanner = new NumberScanner(word);
        List<Double> dash = new ArrayList<>();
        double sum = 0;
        while (!scanner.atEnd()) {
            double length = scanner.number();
            if (length < 0) {
                throw new BadValue("value.negative-dash", word);
            }
            dash.add(length);
            sum += length;
            scanner.skipSeparator();
        }
        if (dash.isEmpty()) {
            throw new BadValue("value.dashes", word);
        }
        if (sum > 0 && sum < LEAST_DASH_MM) {
            throw new BadValue("value.fine-dashes", word, String.valueOf(LEAST_DASH_MM));
        }
        return sum == 0 ? List.of() : dash;
    }

    private static int choice(String word, String... words) throws BadValue {
        int index = List.of(words).indexOf(word);
        if (index < 0) {
            throw new BadValue("value.choice", word, String.join(", ", words));
        }
        return index;
    }
}
