package kitleaf.sheet.tag;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.FittedText;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sheet.page.TypeScale;
import kitleaf.words.Words;

/**
 * Places what is on bag tags in large print: facts and threads in 16 pt, on as many tags as they take, or as near to it as tags of
 * a small size of her own allow. Further tags carry only what the first had no room for; what a low back has none for, notes and code,
 * stands on the second.
 */
final class LargeTagFaces implements TagSetter {

    private static final double PT_MM = 25.4 / 72;
    private static final double PAD_MM = TagFaces.PAD_MM;
    private static final double STRIP_MM = TagFaces.STRIP_MM;
    private static final double MOST_PT = TypeScale.LEAST_LARGE_PT;
    /** The facts' size on an ordinary tag; large print is never smaller. */
    private static final double LEAST_PT = 7.5;
    private static final double STEP_PT = 0.5;
    private static final double TITLE_TIMES = 1.15;
    private static final int MOST_TITLE_LINES = 3;
    /** What the tags' template says, too. */
    private static final double LEADING = 1.1;
    private static final double ASCENT = 0.78;
    private static final double GAP_MM = 2;
    /** A symbol is this much of its swatch's side. */
    private static final double SYMBOL = 0.56;
    private static final double LOG_LINE = 1.55;
    private static final double HIGH_MM = 108;
    private static final double WIDE_MM = 120;
    private static final double CODE_MM = 28;
    private static final double NOTE_LINE_MM = 9;

    private final double widthMm;
    private final double heightMm;
    private final Words words;
    private final TextRuler ruler;

    LargeTagFaces(double widthMm, double heightMm, Words words, TextRuler ruler) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.words = words;
        this.ruler = ruler;
    }

    @Override
    public List<Part> share(TagWords says) {
        double sizePt = sizePt(says);
        List<Part> parts = new ArrayList<>();
        List<String> facts = new ArrayList<>();
        double freeMm = roomMm(says, sizePt);
        for (String fact : says.facts()) {
            double factMm = lines(fact, sizePt) * lineMm(sizePt);
            if (factMm > freeMm && !facts.isEmpty()) {
                parts.add(new Part(facts, List.of()));
                facts = new ArrayList<>();
                freeMm = roomMm(says, sizePt);
            }
            facts.add(fact);
            freeMm -= factMm;
        }
        int columns = columns(says, sizePt);
        boolean bare = facts.isEmpty();
        double firstMm = freeMm;
        double otherMm = roomMm(says, sizePt);
        // A tag with nothing on it yet takes one row at least, or there would be no end to tags.
        List<Integer> shares = ThreadShares.of(says.threads().size(), columns, tag -> columns * Math.max(tag == 0 && !bare ? 0 : 1,
                (int) Math.floor(((tag == 0 ? firstMm : otherMm) - GAP_MM) / rowMm(sizePt))));
        int from = 0;
        for (int share : shares) {
            parts.add(new Part(facts, says.threads().subList(from, from + share)));
            facts = List.of();
            from += share;
        }
        if (!facts.isEmpty() || parts.isEmpty()) {
            parts.add(new Part(facts, List.of()));
        }
        return parts;
    }

    @Override
    public TagFace front(TagWords says, Part part, int index, int count, Box box, boolean turned) {
        double sizePt = sizePt(says);
        List<FittedText> texts = head(says, sizePt, index, count);
        double yMm = topMm(says, sizePt);
        for (String fact : part.facts()) {
            int lines = lines(fact, sizePt);
            texts.add(new FittedText("fact", fact, PAD_MM, yMm + sizePt * PT_MM * ASCENT, innerMm(), lines, sizePt, sizePt, 400, "start"));
            yMm += lines * lineMm(sizePt);
        }
        yMm += part.facts().isEmpty() ? 0 : GAP_MM;
        int columns = columns(says, sizePt);
        double swatchMm = swatchMm(sizePt);
        List<TagFace.Tick> ticks = new ArrayList<>();
        for (int i = 0; i < part.threads().size(); i++) {
            TagWords.Thread thread = part.threads().get(i);
            ticks.add(new TagFace.Tick(PAD_MM + i % columns * innerMm() / columns, yMm + i / columns * rowMm(sizePt), innerMm() / columns - 1,
                    swatchMm, codeXMm(sizePt), swatchMm / 2 + sizePt * PT_MM * 0.33, sizePt, thread.code(), 0, "", thread.swatch()));
        }
        return face(box, turned, texts, ticks, List.of(), List.of(), List.of(), 0, sizePt, "", null, List.of());
    }

    @Override
    public TagFace back(TagWords says, Part part, int index, int count, Box box, boolean turned) {
        double sizePt = sizePt(says);
        List<FittedText> texts = head(says, sizePt, index, count);
        double topMm = topMm(says, sizePt);
        Box all = new Box(PAD_MM, topMm, innerMm(), heightMm - PAD_MM - topMm);
        double codeMm = Math.min(CODE_MM, all.heightMm());
        boolean high = heightMm >= HIGH_MM;
        boolean beside = !high && widthMm >= WIDE_MM;
        boolean first = index == 0;
        // The one thing a low back has no room for stands on that of the second tag.
        boolean second = index == 1 && !high;
        Box code = first && high ? new Box(PAD_MM, heightMm - PAD_MM - codeMm, codeMm, codeMm)
                : first && beside ? new Box(widthMm - PAD_MM - codeMm, topMm, codeMm, codeMm)
                : second && !beside ? new Box(PAD_MM, topMm, codeMm, codeMm) : null;
        Box log = !first ? null : high ? new Box(PAD_MM, topMm, innerMm(), code.yMm() - 3 - topMm)
                : beside ? new Box(PAD_MM, topMm, code.xMm() - 4 - PAD_MM, all.heightMm()) : all;
        Box notes = first && high || second && !beside ? new Box(code.rightMm() + 4, code.yMm(), widthMm - PAD_MM - code.rightMm() - 4, heightMm - PAD_MM - code.yMm())
                : second ? all : null;
        List<Box> lines = notes == null ? List.of() : notes(notes, sizePt, texts);
        double logPt = log == null ? sizePt : logPt(says, sizePt, log.widthMm());
        return face(box, turned, texts, List.of(), log == null ? List.of() : log(says, log, logPt), heads(), log == null ? List.of() : logColumns(says, logPt, log),
                log == null ? 0 : log.rightMm(), logPt, code == null ? "" : TagFaces.plain(says, says.threads(), codeMm, words, ruler), code, lines);
    }

    private TagFace face(Box box, boolean turned, List<FittedText> texts, List<TagFace.Tick> ticks, List<TagFace.LogLine> log, List<String> heads,
                         List<Double> columns, double logRightMm, double logPt, String code, Box codeBox, List<Box> lines) {
        return new TagFace(box, turned, TagFaces.hole(widthMm), STRIP_MM, texts, ticks, log, heads, columns, logRightMm, logPt, code, codeBox, lines);
    }

    /** The heading of the notes, and lines below it as far as there is room. */
    private List<Box> notes(Box box, double sizePt, List<FittedText> texts) {
        String heading = words.say("tag.notes");
        int headLines = ruler.lines(heading, "text", 400, sizePt, box.widthMm());
        if (headLines * lineMm(sizePt) > box.heightMm()) {
            return List.of();
        }
        texts.add(new FittedText("note", heading, box.xMm(), box.yMm() + sizePt * PT_MM * ASCENT, box.widthMm(), headLines, sizePt, sizePt, 400, "start"));
        List<Box> lines = new ArrayList<>();
        for (double yMm = box.yMm() + headLines * lineMm(sizePt) + NOTE_LINE_MM; yMm <= box.bottomMm() + 1e-6; yMm += NOTE_LINE_MM) {
            lines.add(new Box(box.xMm(), yMm, box.widthMm(), 0));
        }
        return lines;
    }

    private List<TagFace.LogLine> log(TagWords says, Box box, double logPt) {
        double rowMm = logPt * PT_MM * LOG_LINE;
        double firstMm = box.yMm() + logPt * PT_MM * ASCENT;
        int rows = Math.max(1, (int) Math.floor((box.bottomMm() - 2 - firstMm) / rowMm));
        List<List<String>> latest = TagFaces.latest(says, rows / 2, words);
        List<TagFace.LogLine> lines = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            lines.add(new TagFace.LogLine(firstMm + (i + 1) * rowMm, i < latest.size() ? latest.get(i) : List.of()));
        }
        return lines;
    }

    private List<String> heads() {
        return List.of(words.say("tag.day"), words.say("tag.hours"), words.say("tag.stitches"));
    }

    private List<Double> logColumns(TagWords says, double logPt, Box box) {
        double dayMm = columnMm(logPt, Stream.concat(Stream.of(words.say("tag.day")), says.log().stream().map(TagWords.Sitting::day)));
        double hoursMm = columnMm(logPt, Stream.concat(Stream.of(words.say("tag.hours")), says.log().stream().map(TagWords.Sitting::hours)));
        return List.of(box.xMm(), box.xMm() + dayMm, box.xMm() + dayMm + hoursMm);
    }

    private double columnMm(double sizePt, Stream<String> texts) {
        return texts.mapToDouble(text -> ruler.widthMm(text, "text", 400, sizePt)).max().orElse(0) + 4;
    }

    /** The size at which the log's columns have room beside each other. */
    private double logPt(TagWords says, double sizePt, double roomMm) {
        double logPt = sizePt;
        while (logPt > LEAST_PT) {
            List<Double> columns = logColumns(says, logPt, new Box(0, 0, roomMm, 0));
            double lastMm = columnMm(logPt, Stream.concat(Stream.of(words.say("tag.stitches")), says.log().stream().map(TagWords.Sitting::stitches))) - 4;
            if (columns.get(2) + lastMm <= roomMm) {
                break;
            }
            logPt -= STEP_PT;
        }
        return logPt;
    }

    private List<FittedText> head(TagWords says, double sizePt, int index, int count) {
        List<FittedText> texts = new ArrayList<>();
        double titlePt = sizePt * TITLE_TIMES;
        texts.add(new FittedText("title", says.title(), PAD_MM, STRIP_MM + GAP_MM + titlePt * PT_MM * ASCENT, innerMm(), titleLines(says, sizePt), titlePt,
                sizePt, 500, "start"));
        if (count > 1) {
            texts.add(new FittedText("number", words.say("tag.number-large", index + 1, count), widthMm - PAD_MM, PAD_MM + 4, widthMm / 2 - 8, 1, sizePt, sizePt, 600, "end"));
        }
        return texts;
    }

    /** The largest size at which every fact and every thread has room on a tag, its words whole. */
    private double sizePt(TagWords says) {
        for (double sizePt = MOST_PT; sizePt > LEAST_PT; sizePt -= STEP_PT) {
            double tried = sizePt;
            double roomMm = roomMm(says, sizePt);
            boolean facts = says.facts().stream().allMatch(fact -> whole(fact, tried) && lines(fact, tried) * lineMm(tried) <= roomMm);
            boolean threads = says.threads().isEmpty() || roomMm >= rowMm(tried) + GAP_MM
                    && says.threads().stream().allMatch(thread -> codeXMm(tried) + ruler.widthMm(thread.code(), "text", 600, tried) <= innerMm());
            boolean title = ruler.lines(says.title(), "heading", 500, tried * TITLE_TIMES, innerMm()) <= MOST_TITLE_LINES;
            if (facts && threads && title) {
                return sizePt;
            }
        }
        return LEAST_PT;
    }

    private boolean whole(String text, double sizePt) {
        return Arrays.stream(text.split(" ")).allMatch(word -> ruler.widthMm(word, "text", 400, sizePt) <= innerMm());
    }

    private int lines(String text, double sizePt) {
        return ruler.lines(text, "text", 400, sizePt, innerMm());
    }

    private int titleLines(TagWords says, double sizePt) {
        return Math.max(1, Math.min(MOST_TITLE_LINES, ruler.lines(says.title(), "heading", 500, sizePt * TITLE_TIMES, innerMm())));
    }

    /** Where what is below the title starts. */
    private double topMm(TagWords says, double sizePt) {
        return STRIP_MM + GAP_MM + titleLines(says, sizePt) * sizePt * TITLE_TIMES * PT_MM * LEADING + 1;
    }

    private double roomMm(TagWords says, double sizePt) {
        return heightMm - PAD_MM - topMm(says, sizePt);
    }

    private static double lineMm(double sizePt) {
        return sizePt * PT_MM * LEADING;
    }

    private static double swatchMm(double sizePt) {
        return sizePt * PT_MM / SYMBOL;
    }

    private static double rowMm(double sizePt) {
        return swatchMm(sizePt) + 1.2;
    }

    private static double codeXMm(double sizePt) {
        return 4.6 + swatchMm(sizePt) + 1.6;
    }

    private int columns(TagWords says, double sizePt) {
        double codeMm = says.threads().stream().mapToDouble(thread -> ruler.widthMm(thread.code(), "text", 600, sizePt)).max().orElse(0);
        return Math.max(1, (int) Math.floor(innerMm() / (codeXMm(sizePt) + codeMm + 3)));
    }

    private double innerMm() {
        return widthMm - 2 * PAD_MM;
    }
}
