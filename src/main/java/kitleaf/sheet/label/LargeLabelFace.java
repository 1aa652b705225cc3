package kitleaf.sheet.label;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kitleaf.sheet.label.OpenFace.Part;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sheet.words.Figures;

/**
 * Faces of labels in large print: the largest size at which everything on the face has room, found by measuring, then the
 * largest code that size leaves room for. A label that cannot hold everything even at the ordinary size is set as on the
 * ordinary sheet, which leaves things out.
 */
final class LargeLabelFace {

    /** From one size that is tried to the next. */
    static final double STEP_PT = 0.5;
    /** Larger than this no label needs. */
    static final double MOST_PT = 24;
    static final double MOST_CODE_PT = 48;
    /** The code is the largest thing on a label: so many times the rest. */
    static final double CODE_TIMES = 1.25;

    private LargeLabelFace() { }

    /** A face of a rectangular label. */
    static LabelFace rectangle(LabelWords words, LabelFace.Side side, Box place, boolean turned, TextRuler ruler) {
        double smallPt = place.widthMm() >= LabelFace.WIDE_MM ? LabelFace.WIDE_SMALL_PT : LabelFace.SMALL_PT;
        OpenFace face = new OpenFace.Rectangle(words, place, turned, ruler, false);
        for (double sizePt = MOST_PT; sizePt >= smallPt; sizePt -= STEP_PT) {
            double leastCodePt = Math.max(sizePt * CODE_TIMES, face.ordinaryCodePt());
            for (List<Part> parts : parts(words, side)) {
                if (face.set(parts, sizePt, leastCodePt).isPresent()) {
                    return face.largestCode(parts, sizePt, leastCodePt, MOST_CODE_PT, STEP_PT);
                }
            }
        }
        return LabelFace.rectangle(words, side, place, turned, ruler);
    }

    /**
     * What a side carries besides the code, in the ways it may be set, the best first: each fact by itself, all of them in a
     * sentence, and both with figures parted from their words, which is better than smaller.
     */
    private static List<List<Part>> parts(LabelWords words, LabelFace.Side side) {
        Stream<Part> name = side == LabelFace.Side.BACK || words.name().isEmpty() ? Stream.of()
                : Stream.of(new Part("name", words.name(), 400));
        List<Part> before = name.toList();
        Part piece = new Part("piece", words.piece(), 600);
        if (side == LabelFace.Side.FRONT) {
            return List.of(joined(before, List.of(), piece));
        }
        List<List<Part>> ways = new ArrayList<>();
        for (List<String> facts : List.of(words.facts(), loose(words.facts()))) {
            ways.add(joined(before, facts.stream().map(fact -> new Part("facts", fact, 400)).toList(), piece));
            ways.add(joined(before, List.of(new Part("facts", String.join(words.between(), facts), 400)), piece));
        }
        return ways;
    }

    private static List<String> loose(List<String> facts) {
        return facts.stream().map(fact -> fact.replace(Figures.NO_BREAK, ' ')).toList();
    }

    private static List<Part> joined(List<Part> before, List<Part> facts, Part piece) {
        List<Part> parts = new ArrayList<>(before);
        parts.addAll(facts);
        parts.add(piece);
        return parts;
    }

    /** A round label: swatch, code, name, facts and piece below each other, each as wide as the round lets it be. */
    static LabelFace round(LabelWords words, Box place, TextRuler ruler) {
        OpenFace face = new OpenFace.Round(words, place, ruler, false);
        List<Part> parts = new ArrayList<>();
        if (!words.name().isEmpty()) {
            parts.add(new Part("name", words.name(), 400));
        }
        parts.add(new Part("facts", words.joined(), 400));
        parts.add(new Part("piece", words.piece(), 600));
        for (double sizePt = MOST_PT; sizePt >= LabelFace.SMALL_PT; sizePt -= STEP_PT) {
            double codePt = Math.max(sizePt * CODE_TIMES, face.ordinaryCodePt());
            if (face.set(parts, sizePt, codePt).isPresent()) {
                return face.largestCode(parts, sizePt, codePt, MOST_CODE_PT, STEP_PT);
            }
        }
        return LabelFace.round(words, place, ruler);
    }
}
