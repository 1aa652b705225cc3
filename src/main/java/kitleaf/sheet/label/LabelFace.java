package kitleaf.sheet.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.FittedText;
import kitleaf.sheet.page.Parts;
import kitleaf.sheet.page.Swatch;
import kitleaf.sheet.page.TextRuler;

/**
 * One face of a label: its texts and its swatch, placed. The code is the largest thing on it and the piece's title is
 * always there.
 *
 * @param xMm of the face's left side on the page
 * @param yMm of its top on the page
 * @param widthMm of the face
 * @param heightMm of the face
 * @param turned whether it stands on its head, to be upright when folded over
 * @param swatch the thread's colour and symbol
 * @param swatchBox where the swatch is, from the face's top left corner; round labels have it round
 * @param texts what is written: the code, then the small print, all of it in one size and standing as the code stands
 */
public record LabelFace(double xMm, double yMm, double widthMm, double heightMm, boolean turned, Swatch swatch,
                        Box swatchBox, List<FittedText> texts) implements Parts {

    /** Between a label's edge and what is on it. */
    static final double PAD_MM = 1.8;
    /** The code is at least this large: the smallest size of clear print (UKAAF G003, 2019), so that it reads at arm's length. */
    static final double LEAST_CODE_PT = 12;
    static final double MOST_CODE_PT = 22;
    static final double SMALL_PT = 7;
    /** On wide faces the small print is larger. */
    static final double WIDE_SMALL_PT = 8;
    static final double WIDE_MM = 45;
    static final double LEAST_PT = 6;
    /** Line height of the small print, in parts of its size. */
    static final double LEADING = 1.13;
    static final double PT_MM = 25.4 / 72;
    /** Cap height and descender of the text face, in parts of its size. */
    static final double CAP = 0.668;
    static final double DESCENT = 0.25;

    /** What a face carries. */
    enum Side {
        /** Code, name, piece. */
        FRONT,
        /** Code, what there is to know, piece. */
        BACK,
        /** All of it. */
        ALL
    }

    /** Copies the list. */
    public LabelFace {
        Objects.requireNonNull(swatch);
        Objects.requireNonNull(swatchBox);
        texts = List.copyOf(texts);
        FittedText first = texts.get(0);
        FittedText last = texts.get(texts.size() - 1);
        for (int i = 1; i < texts.size(); i++) {
            FittedText text = texts.get(i);
            if (text.sizePt() != last.sizePt() || text.fitPt() != last.fitPt() || !text.anchor().equals(first.anchor())) {
                throw new IllegalArgumentException("small print of several kinds: " + texts);
            }
        }
    }

    /** The code. */
    public FittedText code() {
        return texts.get(0);
    }

    /** All but the code: the small print, all of one size and one least size. */
    public List<FittedText> small() {
        return texts.subList(1, texts.size());
    }

    /** Whether its texts stand about their middles. */
    public boolean centred() {
        return code().anchor().equals("middle");
    }

    /** A face of a rectangular label. */
    static LabelFace rectangle(LabelWords words, Side side, Box place, boolean turned, TextRuler ruler) {
        double innerMm = place.widthMm() - 2 * PAD_MM;
        double highMm = place.heightMm() - 2 * PAD_MM;
        double smallPt = place.widthMm() >= WIDE_MM ? WIDE_SMALL_PT : SMALL_PT;
        double lineMm = lineMm(smallPt);
        double swatchMm = swatchMm(place);
        double codePt = codePt(swatchMm / PT_MM * 0.9);
        List<FittedText> texts = new ArrayList<>();
        double codeXMm = PAD_MM + swatchMm + 1.6;
        double codeWidthMm = place.widthMm() - PAD_MM - codeXMm;
        double secondLineMm = lineMm(LEAST_CODE_PT);
        boolean twoLines = ruler.widthMm(words.code(), "text", 600, LEAST_CODE_PT) > codeWidthMm && highMm >= 2 * secondLineMm + lineMm;
        if (twoLines) {
            // A long code is set on two lines rather than smaller than it can be read.
            texts.add(new FittedText("code", words.code(), codeXMm, PAD_MM + LEAST_CODE_PT * PT_MM * CAP + 0.4, codeWidthMm, 2,
                    LEAST_CODE_PT, LEAST_CODE_PT, 600, "start"));
        } else {
            texts.add(new FittedText("code", words.code(), codeXMm, PAD_MM + swatchMm / 2 + codePt * PT_MM * CAP / 2, codeWidthMm, 1,
                    codePt, LEAST_CODE_PT, 600, "start"));
        }

        double topMm = PAD_MM + Math.max(swatchMm + 1, twoLines ? 2 * secondLineMm : 0);
        double bottomMm = place.heightMm() - PAD_MM;
        int pieceLines = Math.min(bottomMm - topMm > 3.9 * lineMm ? 2 : 1, ruler.lines(words.piece(), "text", 600, smallPt, innerMm));
        double pieceTopMm = bottomMm - pieceLines * lineMm;
        texts.add(small("piece", words.piece(), PAD_MM, pieceTopMm, innerMm, pieceLines, smallPt, 600, "start"));
        middle(words, side, topMm, pieceTopMm, innerMm, smallPt, ruler, texts);
        boolean lot = words.lotKnown() && side != Side.FRONT;
        if (lacks(texts, lot, ruler)) {
            Optional<LabelFace> tight = TightLabelFace.rectangle(words, side, place, turned, smallPt, ruler);
            if (tight.isPresent()) {
                return tight.get();
            }
            if (lot) {
                withLot(texts, words);
            }
        }
        return new LabelFace(place.xMm(), place.yMm(), place.widthMm(), place.heightMm(), turned, words.swatch(),
                new Box(PAD_MM, PAD_MM, swatchMm, swatchMm), texts);
    }

    /** What stands between the code and the piece: the name, the facts, or both. */
    private static void middle(LabelWords words, Side side, double topMm, double bottomMm, double innerMm, double smallPt,
                               TextRuler ruler, List<FittedText> texts) {
        int room = (int) Math.floor((bottomMm - topMm) / lineMm(smallPt) + 1e-6);
        if (room < 1) {
            return;
        }
        if (side == Side.FRONT && !words.name().isEmpty()) {
            texts.add(small("name", words.name(), PAD_MM, topMm, innerMm, Math.min(3, room), smallPt, 400, "start"));
        } else if (side == Side.BACK) {
            backFacts(words, topMm, room, innerMm, smallPt, ruler, texts);
        } else if (side == Side.ALL) {
            int factLines = words.name().isEmpty() ? Math.min(3, room) : Math.min(2, room - 1);
            if (factLines > 0) {
                texts.add(small("facts", facts(words, 1, factLines, innerMm, ruler).get(0), PAD_MM, bottomMm - factLines * lineMm(smallPt),
                        innerMm, factLines, smallPt, 400, "start"));
            }
            if (!words.name().isEmpty()) {
                texts.add(small("name", words.name(), PAD_MM, topMm, innerMm, Math.max(1, Math.min(3, room - factLines)), smallPt, 400,
                        "start"));
            }
        }
    }

    /** A line for each fact; where there is no room for that, the last ones share a line. */
    private static void backFacts(LabelWords words, double topMm, int room, double innerMm, double smallPt,
                                  TextRuler ruler, List<FittedText> texts) {
        List<String> lines = facts(words, room, 1, innerMm, ruler);
        for (int i = 0; i < lines.size(); i++) {
            texts.add(small("facts", lines.get(i), PAD_MM, topMm + i * lineMm(smallPt), innerMm, 1, smallPt, 400, "start"));
        }
    }

    /** The facts in so many texts at most, each of so many lines: in the longest words that need not be cut, else in the shortest. */
    private static List<String> facts(LabelWords words, int texts, int lines, double widthMm, TextRuler ruler) {
        List<String> set = shared(words.facts(), words.between(), texts);
        if (cut(set, lines, widthMm, ruler)) {
            for (List<String> shorter : words.shorter().get()) {
                set = shared(shorter, words.between(), texts);
                if (!cut(set, lines, widthMm, ruler)) {
                    break;
                }
            }
        }
        return set;
    }

    /** A text for each fact, but that the last share one. */
    private static List<String> shared(List<String> facts, String between, int texts) {
        int number = Math.min(texts, facts.size());
        List<String> set = new ArrayList<>(facts.subList(0, number - 1));
        set.add(String.join(between, facts.subList(number - 1, facts.size())));
        return set;
    }

    private static boolean cut(List<String> texts, int lines, double widthMm, TextRuler ruler) {
        for (String text : texts) {
            if (lines == 1 ? ruler.widthMm(text, "text", 400, LEAST_PT) > widthMm
                    : ruler.lines(text, "text", 400, LEAST_PT, widthMm) > lines) {
                return true;
            }
        }
        return false;
    }

    /** A round label: swatch, code, name, facts and piece below each other, each as wide as the round lets it be. */
    static LabelFace round(LabelWords words, Box place, TextRuler ruler) {
        double across = place.widthMm();
        double lineMm = lineMm(SMALL_PT);
        List<FittedText> texts = new ArrayList<>();
        double swatchMm = across * 0.16;
        double codePt = roundCodePt(place);
        double yMm = PAD_MM + across * 0.04 + swatchMm + 1.2;
        double codeMm = codePt * PT_MM * (CAP + DESCENT);
        texts.add(new FittedText("code", words.code(), across / 2, yMm + codePt * PT_MM * CAP, chord(across, yMm, yMm + codeMm), 1, codePt,
                LEAST_CODE_PT, 600, "middle"));
        yMm += codeMm + 0.3;
        // Below the code the round narrows again: the piece comes first, then the facts, then the name.
        int room = (int) Math.floor((across - PAD_MM - across * 0.08 - yMm) / lineMm);
        int pieceLines = room >= 4 && ruler.lines(words.piece(), "text", 600, SMALL_PT, across * 0.6) > 1 ? 2 : 1;
        int factLines = Math.max(0, Math.min(2, room - pieceLines));
        int nameLines = words.name().isEmpty() ? 0 : Math.min(1, Math.max(0, room - pieceLines - factLines));
        yMm = centred("name", words.name(), across, yMm, nameLines, 400, texts);
        double factsMm = chord(across, yMm, yMm + factLines * lineMm);
        String facts = factLines > 0 ? facts(words, 1, factLines, factsMm, ruler).get(0) : "";
        yMm = centred("facts", facts, across, yMm, factLines, 400, texts);
        centred("piece", words.piece(), across, yMm, pieceLines, 600, texts);
        if (lacks(texts, words.lotKnown(), ruler)) {
            Optional<LabelFace> tight = TightLabelFace.round(words, place, ruler);
            if (tight.isPresent()) {
                return tight.get();
            }
            if (words.lotKnown()) {
                withLot(texts, words);
            }
        }
        return new LabelFace(place.xMm(), place.yMm(), across, across, false, words.swatch(),
                new Box(across / 2 - swatchMm / 2, PAD_MM + across * 0.04, swatchMm, swatchMm), texts);
    }

    /** Where the lot stands nowhere, puts it before the piece on the same line, so that what is cut, and told, is the piece. */
    private static void withLot(List<FittedText> texts, LabelWords words) {
        if (texts.stream().noneMatch(text -> text.role().equals("facts"))) {
            List<String> lots = words.crowded().get().lots();
            String lot = lots.get(lots.size() - 1);
            texts.replaceAll(text -> text.role().equals("piece") ? text.saying(lot + words.between() + text.text()) : text);
        }
    }

    /** Whether a text would be cut, or a lot that is known, which stands among the facts, is not there at all. */
    private static boolean lacks(List<FittedText> texts, boolean lot, TextRuler ruler) {
        boolean facts = false;
        for (FittedText text : texts) {
            facts |= text.role().equals("facts");
            if (text.lines() == 1 ? ruler.widthMm(text.text(), "text", text.weight(), text.fitPt()) > text.widthMm()
                    : ruler.lines(text.text(), "text", text.weight(), text.fitPt(), text.widthMm()) > text.lines()) {
                return true;
            }
        }
        return lot && !facts;
    }

    /** Adds a text so many lines high, if any, and gives where the next one starts. */
    private static double centred(String role, String text, double across, double topMm, int lines, int weight, List<FittedText> texts) {
        double bottomMm = topMm + lines * lineMm(SMALL_PT);
        if (lines > 0) {
            texts.add(small(role, text, across / 2, topMm, chord(across, topMm, bottomMm), lines, SMALL_PT, weight, "middle"));
        }
        return bottomMm;
    }

    /** The side of a rectangular face's swatch. */
    static double swatchMm(Box place) {
        return Math.max(4, Math.min(9, (place.heightMm() - 2 * PAD_MM) * 0.3));
    }

    /** What the code of a round face is set in before it shrinks to its line. */
    static double roundCodePt(Box place) {
        return codePt(place.widthMm() * 0.14 / PT_MM);
    }

    /** A size for the code, brought within what a code may have. */
    static double codePt(double wantedPt) {
        return Math.max(LEAST_CODE_PT, Math.min(MOST_CODE_PT, wantedPt));
    }

    static double lineMm(double sizePt) {
        return sizePt * PT_MM * LEADING;
    }

    /** The width a round label has between two heights, less the pad on both sides. */
    static double chord(double across, double fromMm, double toMm) {
        double radius = across / 2 - PAD_MM;
        double far = Math.max(Math.abs(fromMm - across / 2), Math.abs(toMm - across / 2));
        return 2 * Math.sqrt(Math.max(0, radius * radius - far * far));
    }

    static FittedText small(String role, String text, double xMm, double topMm, double widthMm, int lines, double sizePt,
                                   int weight, String anchor) {
        // What leading adds goes above the capitals; descenders reach to the bottom of the line.
        double baselineMm = topMm + sizePt * PT_MM * (LEADING - DESCENT);
        return new FittedText(role, text, xMm, baselineMm, widthMm, lines, sizePt, LEAST_PT, weight, anchor);
    }

    @Override
    public Object part(String name) {
        return switch (name) {
            case "xMm" -> xMm;
            case "yMm" -> yMm;
            case "widthMm" -> widthMm;
            case "heightMm" -> heightMm;
            case "turned" -> turned;
            case "swatch" -> swatch;
            case "swatchBox" -> swatchBox;
            case "texts" -> texts;
            case "code" -> code();
            case "small" -> small();
            case "smallPt" -> texts.get(texts.size() - 1).sizePt();
            case "leastPt" -> texts.get(texts.size() - 1).fitPt();
            case "centred" -> centred();
            default -> null;
        };
    }
}
