package kitleaf.sheet.label;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.FittedText;
import kitleaf.sheet.page.TextRuler;

/** A label's face whose sizes are still to be found: set only if everything on it has room, and measured by that. */
interface OpenFace {

    /** Swatches are a share of the face within these. */
    double LEAST_SWATCH_MM = 4;
    double MOST_SWATCH_MM = 11;
    double SWATCH_SHARE = 0.3;
    /** Below the swatch and the code. */
    double GAP_MM = 1.2;

    /** A text below the code. */
    record Part(String role, String text, int weight) { }

    /** What the ordinary sheet sets the code in, which shrinks down to its least size to stand on one line. */
    double ordinaryCodePt();

    /**
     * The face at these sizes, if everything has room.
     *
     * @param parts what stands on it besides the code, from its top down, the piece last
     */
    Optional<LabelFace> set(List<Part> parts, double sizePt, double codePt);

    /** The face with the largest code that leaves everything else room, from one that does. */
    default LabelFace largestCode(List<Part> parts, double sizePt, double leastCodePt, double mostCodePt, double stepPt) {
        double codePt = leastCodePt;
        while (codePt + stepPt <= mostCodePt && set(parts, sizePt, codePt + stepPt).isPresent()) {
            codePt += stepPt;
        }
        return set(parts, sizePt, codePt).orElseThrow();
    }

    /** Whether no word of a text is wider than its room. */
    static boolean whole(String text, int weight, double sizePt, double roomMm, TextRuler ruler) {
        return Arrays.stream(text.split(" |(?<=[^ ]-)")).allMatch(word -> ruler.widthMm(word, "text", weight, sizePt) <= roomMm);
    }

    /**
     * A rectangular face.
     *
     * @param parting whether words may be parted that are wider than their room
     */
    record Rectangle(LabelWords words, Box place, boolean turned, TextRuler ruler, boolean parting) implements OpenFace {

        double swatchMm() {
            return Math.max(LEAST_SWATCH_MM, Math.min(MOST_SWATCH_MM, (place.heightMm() - 2 * LabelFace.PAD_MM) * SWATCH_SHARE));
        }

        private double codeXMm() {
            return LabelFace.PAD_MM + swatchMm() + 1.6;
        }

        private double codeRoomMm() {
            return place.widthMm() - LabelFace.PAD_MM - codeXMm();
        }

        @Override
        public double ordinaryCodePt() {
            double swatch = LabelFace.swatchMm(place);
            double fullPt = LabelFace.codePt(swatch / LabelFace.PT_MM * 0.9);
            double fits = (place.widthMm() - 2 * LabelFace.PAD_MM - swatch - 1.6) / ruler.widthMm(words.code(), "text", 600, fullPt);
            return Math.max(LabelFace.LEAST_CODE_PT, fullPt * Math.min(1, fits));
        }

        @Override
        public Optional<LabelFace> set(List<Part> parts, double sizePt, double codePt) {
            double innerMm = place.widthMm() - 2 * LabelFace.PAD_MM;
            int codeLines = ruler.widthMm(words.code(), "text", 600, codePt) <= codeRoomMm() ? 1 : 2;
            double codeMm = codeLines * LabelFace.lineMm(codePt);
            if (codeLines == 2 && (!parting && !OpenFace.whole(words.code(), 600, codePt, codeRoomMm(), ruler)
                    || ruler.lines(words.code(), "text", 600, codePt, codeRoomMm()) > 2)) {
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
                if (!parting && !OpenFace.whole(part.text(), part.weight(), sizePt, innerMm, ruler)) {
                    return Optional.empty();
                }
                int takes = ruler.lines(part.text(), "text", part.weight(), sizePt, innerMm);
                lines += takes;
                if (lines * lineMm > roomMm) {
                    return Optional.empty();
                }
                boolean last = part.role().equals("piece");
                double yMm = last ? place.heightMm() - LabelFace.PAD_MM - takes * lineMm : topMm + (lines - takes) * lineMm;
                texts.add(new FittedText(part.role(), part.text(), LabelFace.PAD_MM, yMm
                        + sizePt * LabelFace.PT_MM * (LabelFace.LEADING - LabelFace.DESCENT),
                        innerMm, takes, sizePt, sizePt, part.weight(), "start"));
            }
            return Optional.of(new LabelFace(place.xMm(), place.yMm(), place.widthMm(), place.heightMm(), turned, words.swatch(),
                    new Box(LabelFace.PAD_MM, LabelFace.PAD_MM + Math.max(0, (headMm - swatchMm()) / 2), swatchMm(), swatchMm()), texts));
        }
    }

    /**
     * A round face: swatch, code and parts below each other, each as wide as the round lets it be.
     *
     * @param parting whether words may be parted that are wider than their room
     */
    record Round(LabelWords words, Box place, TextRuler ruler, boolean parting) implements OpenFace {

        /** From one size of the code that is tried to the next. */
        private static final double STEP_PT = 0.5;
        private static final double SWATCH = 0.16;
        private static final double TOP = 0.04;

        @Override
        public double ordinaryCodePt() {
            double codePt = LabelFace.roundCodePt(place);
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
            return LabelFace.chord(place.widthMm(), codeTopMm(), codeTopMm()
                    + codePt * LabelFace.PT_MM * (LabelFace.CAP + LabelFace.DESCENT));
        }

        @Override
        public Optional<LabelFace> set(List<Part> parts, double sizePt, double codePt) {
            double across = place.widthMm();
            double swatchMm = across * SWATCH;
            double yMm = codeTopMm();
            double codeMm = codePt * LabelFace.PT_MM * (LabelFace.CAP + LabelFace.DESCENT);
            double codeRoomMm = codeRoomMm(codePt);
            if (ruler.widthMm(words.code(), "text", 600, codePt) > codeRoomMm) {
                return Optional.empty();
            }
            List<FittedText> texts = new ArrayList<>();
            texts.add(new FittedText("code", words.code(), across / 2, yMm + codePt * LabelFace.PT_MM * LabelFace.CAP, codeRoomMm, 1,
                    codePt, codePt, 600, "middle"));
            yMm += codeMm + 0.3;
            double lineMm = LabelFace.lineMm(sizePt);
            for (Part part : parts) {
                int lines = lines(part, sizePt, yMm, lineMm);
                if (lines == 0) {
                    return Optional.empty();
                }
                texts.add(new FittedText(part.role(), part.text(), across / 2, yMm
                        + sizePt * LabelFace.PT_MM * (LabelFace.LEADING - LabelFace.DESCENT),
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
                if (roomMm > sizePt * LabelFace.PT_MM && (parting || OpenFace.whole(part.text(), part.weight(), sizePt, roomMm, ruler))
                        && ruler.lines(part.text(), "text", part.weight(), sizePt, roomMm) <= lines) {
                    return lines;
                }
            }
            return 0;
        }
    }
}
