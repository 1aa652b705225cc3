package kitleaf.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Sets words as passages of large print: every text wrapped to its width, as many lines high as it takes. */
public final class Passages {

    /** A longer paragraph is parted, so that pages break within it. */
    private static final int MOST_LINES = 8;
    /** Ascenders above a baseline, in parts of the size. */
    static final double ASCENT = 0.78;
    private static final double GAP_MM = 3;
    private static final double SECTION_GAP_MM = 4;
    /** Between what stands left and what stands right on one line. */
    private static final double APART_MM = 6;
    private static final double TICK_MM = 7;
    private static final double MOST_TOGETHER_MM = 90;
    /** A swatch's side in parts of the text size: its symbol, a little over half as high, is then no smaller than large print. */
    private static final double SWATCH = 1.62;

    private final TypeScale type;
    private final TextRuler ruler;
    private final double leftMm;
    private final double widthMm;

    /**
     * Passages of one width.
     *
     * @param leftMm where they begin, from the paper's left edge
     * @param widthMm what they are wrapped to, above 0
     */
    public Passages(TypeScale type, TextRuler ruler, double leftMm, double widthMm) {
        this.type = type;
        this.ruler = ruler;
        this.leftMm = leftMm;
        this.widthMm = widthMm;
    }

    /**
     * A face, a size and a colour.
     *
     * @param sizePt size in points, above 0
     * @param weight 100 to 900
     * @param family {@code text} or {@code heading}
     * @param tone {@code ink}, {@code quiet} or {@code accent}
     */
    public record Voice(double sizePt, int weight, String family, String tone) { }

    /** What nothing else is said of. */
    public Voice text() {
        return new Voice(type.text(), 400, "text", "ink");
    }

    /** The same, bold: names and headings of rows. */
    public Voice bold() {
        return new Voice(type.text(), 600, "text", "ink");
    }

    /** Smaller and grey: what is said beside others. */
    public Voice quiet() {
        return new Voice(type.table(), 400, "text", "quiet");
    }

    /** Smaller: notes and explanations. */
    public Voice small() {
        return new Voice(type.table(), 400, "text", "ink");
    }

    Voice accent() {
        return new Voice(type.table(), 600, "text", "accent");
    }

    /** The one figure a page is cut by. */
    public Voice display() {
        return new Voice(type.display(), 600, "text", "ink");
    }

    /** The second figure of a page. */
    public Voice figure() {
        return new Voice(type.figure(), 400, "text", "ink");
    }

    /** A heading, kept with what it heads. */
    public Passage section(String words) {
        Stack stack = new Stack(SECTION_GAP_MM);
        stack.add(words, leftMm, widthMm, new Voice(type.section(), 500, "heading", "ink"));
        return stack.passage(GAP_MM).kept();
    }

    /** A small heading, kept with what it heads. */
    public Passage group(String words) {
        Stack stack = new Stack(SECTION_GAP_MM);
        stack.add(words, leftMm, widthMm, accent());
        return stack.passage(1).kept();
    }

    /** A paragraph, in as many passages as its length wants. */
    public List<Passage> paragraph(String words, Voice voice) {
        List<Passage> passages = new ArrayList<>();
        for (String part : parts(words, voice, widthMm)) {
            Stack stack = new Stack(0);
            stack.add(part, leftMm, widthMm, voice);
            passages.add(stack.passage(0));
        }
        if (!passages.isEmpty()) {
            Passage last = passages.remove(passages.size() - 1);
            passages.add(Passage.of(last.heightMm() + GAP_MM, last.texts()));
        }
        return passages;
    }

    /** Several texts below each other that are not parted. */
    public Passage together(List<String> words, List<Voice> voices) {
        Stack stack = new Stack(0);
        for (int i = 0; i < words.size(); i++) {
            stack.add(words.get(i), leftMm, widthMm, voices.get(i));
        }
        return stack.passage(GAP_MM);
    }

    /** Several texts below each other with a fine line under them. */
    public Passage row(List<String> words, List<Voice> voices) {
        Passage row = together(words, voices);
        return Passage.of(row.heightMm() - GAP_MM, row.texts()).ruled(GAP_MM);
    }

    /** Words to the left and a figure to the right, below them where both have no room on a line. */
    public Passage pair(String words, String figure) {
        Stack stack = new Stack(0);
        stack.pair(words, figure, leftMm, text());
        return stack.passage(0).ruled(GAP_MM);
    }

    /** A step with its number. */
    public Passage numbered(int number, String words) {
        double indentMm = ruler.widthMm("00 ", "text", 600, type.body());
        Stack stack = new Stack(0);
        stack.add(words, leftMm + indentMm, widthMm - indentMm, text());
        stack.texts.add(new PlacedText(Integer.toString(number), leftMm, stack.texts.get(0).baselineMm(), indentMm, 1, type.body(),
                TypeScale.LEADING, 600, "text", "accent", "start"));
        return stack.passage(GAP_MM);
    }

    /** Something to tick off: what it is, a figure beside it, and lines below. */
    public Passage ticked(String words, String figure, List<String> below, Swatch swatch) {
        double side = TypeScale.mm(type.text()) * SWATCH;
        double indentMm = TICK_MM + (swatch == null ? 0 : side + 3);
        Stack stack = new Stack(swatch == null ? 0 : 1.4);
        stack.pair(words, figure, leftMm + indentMm, bold());
        below.stream().filter(line -> !line.isEmpty()).forEach(line -> stack.add(line, leftMm + indentMm, widthMm - indentMm, quiet()));
        return stack.passage(0).ticked(swatch, swatch == null ? null : new Box(leftMm + TICK_MM, 0.2, side, side)).ruled(GAP_MM);
    }

    /**
     * Words with a number or letter before them, a box to tick or both, a figure beside them and quiet words below; in as many
     * passages as its length wants.
     */
    public List<Passage> marked(boolean tick, String mark, String words, String figure, String below, Voice voice) {
        double markMm = leftMm + (tick ? TICK_MM : 0);
        double xMm = markMm + (mark.isEmpty() ? 0 : ruler.widthMm(mark.length() < 2 ? "00 " : mark + " ", "text", 600, type.body()));
        double roomMm = leftMm + widthMm - xMm;
        List<Passage> passages = new ArrayList<>();
        List<String> parts = parts(words, voice, roomMm);
        for (int i = 0; i < parts.size(); i++) {
            Stack stack = new Stack(0);
            stack.pair(parts.get(i), i == parts.size() - 1 ? figure : "", xMm, voice);
            if (i == 0 && !mark.isEmpty()) {
                stack.texts.add(new PlacedText(mark, markMm, stack.texts.get(0).baselineMm(), xMm - markMm, 1, type.body(),
                        TypeScale.LEADING, 600, "text", "accent", "start"));
            }
            Passage passage = stack.passage(0);
            passages.add(i == 0 && tick ? passage.ticked(null, null) : passage);
        }
        List<String> quiet = parts(below, quiet(), roomMm);
        for (String part : quiet) {
            Stack stack = new Stack(0);
            stack.add(part, xMm, roomMm, quiet());
            passages.add(stack.passage(0));
        }
        passages.add(passages.remove(passages.size() - 1).ruled(GAP_MM));
        // What is short enough for any page stays on one.
        boolean brief = passages.stream().mapToDouble(Passage::heightMm).sum() <= MOST_TOGETHER_MM;
        return brief ? IntStream.range(0, passages.size()).mapToObj(i -> i < passages.size() - 1 ? passages.get(i).kept() : passages.get(i))
                .toList() : passages;
    }

    /** The parts of a text, none longer than what a page surely holds, and alike, so that none is a line alone. */
    private List<String> parts(String words, Voice voice, double roomMm) {
        List<String> parts = new ArrayList<>();
        String rest = words.strip();
        int all = rest.isEmpty() ? 0 : lines(rest, voice, roomMm);
        int number = Math.max(1, (all + MOST_LINES - 1) / MOST_LINES);
        int most = (all + number - 1) / number;
        while (!rest.isEmpty() && lines(rest, voice, roomMm) > most) {
            String[] single = rest.split(" ");
            int from = 1;
            int to = single.length;
            while (to - from > 1) {
                int middle = (from + to) / 2;
                if (lines(String.join(" ", List.of(single).subList(0, middle)), voice, roomMm) <= most) {
                    from = middle;
                } else {
                    to = middle;
                }
            }
            if (from >= single.length || single.length == 1) {
                break;
            }
            parts.add(String.join(" ", List.of(single).subList(0, from)));
            rest = String.join(" ", List.of(single).subList(from, single.length));
        }
        if (!rest.isEmpty()) {
            parts.add(rest);
        }
        return parts;
    }

    private int lines(String words, Voice voice, double roomMm) {
        return ruler.lines(words, voice.family(), voice.weight(), voice.sizePt(), roomMm);
    }

    /** Texts added from the top down. */
    private final class Stack {

        private final List<PlacedText> texts = new ArrayList<>();
        private double yMm;

        Stack(double topMm) {
            yMm = topMm;
        }

        void add(String words, double xMm, double roomMm, Voice voice) {
            int lines = lines(words, voice, roomMm);
            texts.add(new PlacedText(words, xMm, yMm + TypeScale.mm(voice.sizePt()) * ASCENT, roomMm, lines, voice.sizePt(),
                    TypeScale.LEADING, voice.weight(), voice.family(), voice.tone(), "start"));
            yMm += lines * type.lineMm(voice.sizePt());
        }

        void pair(String words, String figure, double xMm, Voice voice) {
            double roomMm = leftMm + widthMm - xMm;
            double figureMm = figure.isEmpty() ? 0 : ruler.widthMm(figure, "text", 600, voice.sizePt());
            double wordsMm = ruler.widthMm(words, voice.family(), voice.weight(), voice.sizePt());
            boolean beside = wordsMm + APART_MM + figureMm <= roomMm || figureMm + APART_MM <= roomMm * 0.35;
            double baselineMm = yMm + TypeScale.mm(voice.sizePt()) * ASCENT;
            add(words, xMm, beside && !figure.isEmpty() ? roomMm - figureMm - APART_MM + 1 : roomMm, voice);
            if (!figure.isEmpty() && beside) {
                texts.add(new PlacedText(figure, leftMm + widthMm, baselineMm, figureMm + 1, 1, voice.sizePt(), TypeScale.LEADING, 600,
                        "text", "ink", "end"));
            } else if (!figure.isEmpty()) {
                add(figure, xMm, roomMm, new Voice(voice.sizePt(), 600, "text", "ink"));
            }
        }

        Passage passage(double belowMm) {
            return Passage.of(yMm + belowMm, texts);
        }
    }
}
