package kitleaf.sheet.label;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.FittedText;
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
    private static final double LEAST_SWATCH_MM = 4;
    private static final double MOST_SWATCH_MM = 11;
    private static final double SWATCH_SHARE = 0.3;
    private static final double GAP_MM = 1.2;

    private LargeLabelFace() { }

    /** A text below the code. */
    private record Part(String role, String text, int weight) { }

    /** A face of a rectangular label. */
    static LabelFace rectangle(LabelWords words, LabelFace.Side side, Box place, boolean turned, TextRuler ruler) {
        double smallPt = place.widthMm() >= LabelFace.WIDE_MM ? LabelFace.WIDE_SMALL_PT : LabelFace.SMALL_PT;
        Rectangle face = new Rectangle(words, place, turned, ruler);
        for (double sizePt = MOST_PT; sizePt >= smallPt; sizePt -= STEP_PT) {
            double leastCodePt = Math.max(sizePt * CODE_TIMES, face.ordinaryCodePt());
            for (List<Part> parts : parts(words, side)) {
                if (face.set(parts, sizePt, leastCodePt).isPresent()) {
                    return largestCode(leastCodePt, face, parts, sizePt);
                }
            }
        }
        return LabelFace.rectangle(words, side, place, turned, ruler);
    }

    private static LabelFace largestCode(double leastCodePt, Rectangle face, List<Part> parts, double sizePt) {
        double codePt = leastCodePt;
        while (codePt + STEP_PT <= MOST_CODE_PT && face.set(parts, sizePt, codePt + STEP_PT).isPresent()) {
            codePt += STEP_PT;
        }
        return face.set(parts, sizePt, codePt).orElseThrow();
    }

    /**
     * What a side carries besides the code, in the ways it may be set, the best first: each fact by itself, all of them in a
     * sentence, and both with figures parted from their words, which is better than smaller.
     */
    private static List<List<Part>> parts(LabelWords words, LabelFace.Side side) {
        Stream<Part> name = side == LabelFace.Side.BACK || words.name().isEmpty() ? Stream.of() : Stream.of(new Part("name", words.name(), 400));
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

    /** Whether no word of a text is wider than its room. */
    private static boolean whole(String text, int weight, double sizePt, double roomMm, TextRuler ruler) {
        return Arrays.stream(text.split(" |(?<=[^ ]-)")).allMatch(word -> ruler.widthMm(word, "text", weight, sizePt) <= roomMm);
    }

    /** A face whose sizes are still to be found. */
    private record Rectangle(LabelWords words, Box place, boolean turned, TextRuler ruler) {

        private double swatchMm() {
            return Math.max(LEAST_SWATCH_MM, Math.min(MOST_SWATCH_MM, (place.heightMm() - 2 * LabelFace.PAD_MM) * SWATCH_SHARE));
        }

        private double codeXMm() {
            return LabelFace.PAD_MM + swatchMm() + 1.6;
        }

        private double codeRoomMm() {
            return place.widthMm() - LabelFace.PAD_MM - codeXMm();
        }

        /** What the ordinary sheet sets the code in, which shrinks down to its least size to stand on one line. */
        double ordinaryCodePt() {
            double swatch = Math.max(4, Math.min(9, (place.heightMm() - 2 * LabelFace.PAD_MM) * 0.3));
            double fullPt = Math.max(LabelFace.LEAST_CODE_PT, Math.min(LabelFace.MOST_CODE_PT, swatch / LabelFace.PT_MM * 0.9));
            double fits = (place.widthMm() - 2 * LabelFace.PAD_MM - swatch - 1.6) / ruler.widthMm(words.code(), "text", 600, fullPt);
            return Math.max(LabelFace.LEAST_CODE_PT, fullPt * Math.min(1, fits));
        }

        /** The face at these sizes, if everything has room. */
        Optional<LabelFace> set(List<Part> parts, double sizePt, double codePt) {
            double innerMm = place.widthMm() - 2 * LabelFace.PAD_MM;
            int codeLines = ruler.widthMm(words.code(), "text", 600, codePt) <= codeRoomMm() ? 1 : 2;
            double codeMm = codeLines * LabelFace.lineMm(codePt);
            if (codeLines == 2 && (!whole(words.code(), 600, codePt, codeRoomMm(), ruler) || ruler.lines(words.code(), "text", 600, codePt, codeRoomMm()) > 2)) {
                return Optional.empty();
            }
            double headMm = Math.max(swatchMm(), codeMm);
            double topMm = LabelFace.PAD_MM + headMm + GAP_MM;
            double lineMm = LabelFace.lineMm(sizePt);
            double roomMm = place.heightMm() - LabelFace.PAD_MM - topMm;
            int lines = 0;
            List<FittedText> texts = new ArrayList<>();
            double baselineMm = codeLines == 1 ? LabelFace.PAD_MM + headMm / 2 + codePt * LabelFace.PT_MM * LabelFace.CAP / 2
                    : LabelFace.PAD_MM + codePt * LabelFace.PT_MM * (LabelFace.LEADING - LabelFace.DESCENT);
            texts.add(new FittedText("code", words.code(), codeXMm(), baselineMm, codeRoomMm(), codeLines, codePt, codePt, 600, "start"));
            for (Part part : parts) {
                if (!whole(part.text(), part.weight(), sizePt, innerMm, ruler)) {
                    return Optional.empty();
                }
                int takes = ruler.lines(part.text(), "text", part.weight(), sizePt, innerMm);
                lines += takes;
                if (lines * lineMm > roomMm) {
                    return Optional.empty();
                }
                boolean last = part.role().equals("piece");
                double yMm = last ? place.heightMm() - LabelFace.PAD_MM - takes * lineMm : topMm + (lines - takes) * lineMm;
                texts.add(new FittedText(part.role(), part.text(), LabelFace.PAD_MM, yMm + sizePt * LabelFace.PT_MM * (LabelFace.LEADING - LabelFace.DESCENT),
                        innerMm, takes, sizePt, sizePt, part.weight(), "start"));
            }
            return Optional.of(new LabelFace(place.xMm(), place.yMm(), place.widthMm(), place.heightMm(), turned, words.swatch(),
                    new Box(LabelFace.PAD_MM, LabelFace.PAD_MM + Math.max(0, (headMm - swatchMm()) / 2), swatchMm(), swatchMm()), texts));
        }
    }

    /** A round label: swatch, code, name, facts and piece below each other, each as wide as the round lets it be. */
    static LabelFace round(LabelWords words, Box place, TextRuler ruler) {
        Round face = new Round(words, place, ruler);
        for (double sizePt = MOST_PT; sizePt >= LabelFace.SMALL_PT; sizePt -= STEP_PT) {
            double codePt = Math.max(sizePt * CODE_TIMES, face.ordinaryCodePt());
            if (face.set(sizePt, codePt).isPresent()) {
                while (codePt + STEP_PT <= MOST_CODE_PT && face.set(sizePt, codePt + STEP_PT).isPresent()) {
                    codePt += STEP_PT;
                }
                return face.set(sizePt, codePt).orElseThrow();
            }
        }
        return LabelFace.round(words, place, ruler);
    }

    /** A round face whose sizes are still to be found. */
    private record Round(LabelWords words, Box place, TextRuler ruler) {

        private static final double SWATCH = 0.16;
        private static final double TOP = 0.04;

        double ordinaryCodePt() {
            double codePt = Math.max(LabelFace.LEAST_CODE_PT, Math.min(LabelFace.MOST_CODE_PT, place.widthMm() * 0.14 / LabelFace.PT_MM));
            // The ordinary sheet shrinks a long code to its line.
            while (codePt - STEP_PT >= LabelFace.LEAST_CODE_PT && ruler.widthMm(words.code(), "text", 600, codePt) > codeRoomMm(codePt)) {
                codePt -= STEP_PT;
            }
            return codePt;
        }

        private double codeTopMm() {
            return LabelFace.PAD_MM + place.widthMm() * (TOP + SWATCH) + 1;
        }

        private double codeRoomMm(double codePt) {
            return LabelFace.chord(place.widthMm(), codeTopMm(), codeTopMm() + codePt * LabelFace.PT_MM * (LabelFace.CAP + LabelFace.DESCENT));
        }

        Optional<LabelFace> set(double sizePt, double codePt) {
            double across = place.widthMm();
            double swatchMm = across * SWATCH;
            double yMm = codeTopMm();
            double codeMm = codePt * LabelFace.PT_MM * (LabelFace.CAP + LabelFace.DESCENT);
            double codeRoomMm = codeRoomMm(codePt);
            if (ruler.widthMm(words.code(), "text", 600, codePt) > codeRoomMm) {
                return Optional.empty();
            }
            List<FittedText> texts = new ArrayList<>();
            texts.add(new FittedText("code", words.code(), across / 2, yMm + codePt * LabelFace.PT_MM * LabelFace.CAP, codeRoomMm, 1, codePt, codePt, 600, "middle"));
            yMm += codeMm + 0.3;
            List<Part> parts = new ArrayList<>();
            if (!words.name().isEmpty()) {
                parts.add(new Part("name", words.name(), 400));
            }
            parts.add(new Part("facts", words.joined(), 400));
            parts.add(new Part("piece", words.piece(), 600));
            double lineMm = LabelFace.lineMm(sizePt);
            for (Part part : parts) {
                int lines = lines(part, sizePt, yMm, lineMm);
                if (lines == 0) {
                    return Optional.empty();
                }
                texts.add(new FittedText(part.role(), part.text(), across / 2, yMm + sizePt * LabelFace.PT_MM * (LabelFace.LEADING - LabelFace.DESCENT),
                        LabelFace.chord(across, yMm, yMm + lines * lineMm), lines, sizePt, sizePt, part.weight(), "middle"));
                yMm += lines * lineMm;
            }
            return Optional.of(new LabelFace(place.xMm(), place.yMm(), across, across, false, words.swatch(),
                    new Box(across / 2 - swatchMm / 2, LabelFace.PAD_MM + across * TOP, swatchMm, swatchMm), texts));
        }

        /** How many lines a part takes from a height down; 0 if the round has no room for it. */
        private int lines(Part part, double sizePt, double topMm, double lineMm) {
            for (int lines = 1; topMm + lines * lineMm <= place.widthMm() - LabelFace.PAD_MM; lines++) {
                double roomMm = LabelFace.chord(place.widthMm(), topMm, topMm + lines * lineMm);
                if (roomMm > 0 && whole(part.text(), part.weight(), sizePt, roomMm, ruler)
                        && ruler.lines(part.text(), "text", part.weight(), sizePt, roomMm) <= lines) {
                    return lines;
                }
            }
            return 0;
        }
    }
}
