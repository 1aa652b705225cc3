package kitleaf.sheet.tag;

import java.util.ArrayList;
import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.FittedText;
import kitleaf.sheet.page.TextRuler;
import kitleaf.words.Words;

/** Places what is on the fronts and backs of bag tags of one size. */
final class TagFaces implements TagSetter {

    static final double PAD_MM = 4.5;
    /** The strip at the top is kept free for the ribbon; a 5 mm hole in its middle keeps 6 mm from the edge. */
    static final double STRIP_MM = 15;
    private static final double HOLE_MM = 5;
    private static final double HOLE_EDGE_MM = 6;
    private static final double PT_MM = 25.4 / 72;

    private static final double TITLE_PT = 14;
    private static final double SMALL_TITLE_PT = 11;
    private static final double TITLE_LEAST_PT = 8;
    private static final double TITLE_LINE_MM = 5.4;
    private static final double FACT_PT = 7.5;
    private static final double FACT_LEAST_PT = 6;
    private static final double FACT_LINE_MM = 3.5;
    /** Facts of which one would be cut stand closer, to make room for its second line. */
    private static final double CLOSE_FACT_LINE_MM = 3;
    /** What there is beside the hole to say which of a piece's tags it is. */
    private static final double NUMBER_MM = 20;
    private static final double NUMBER_LEAST_PT = 6;
    private static final double THREAD_ROW_MM = 5.8;
    private static final double ABOVE_THREADS_MM = 1.8;
    /** What the last row of threads may reach into the blank edge. */
    private static final double THREADS_OVER_MM = 1.5;
    private static final double THREAD_COLUMN_MM = 21;
    private static final double CODE_X_MM = 10;
    private static final double CODE_PT = 8.5;
    private static final double NAME_PT = 7;

    private static final double LOG_ROW_MM = 5;
    private static final int LEAST_BLANK_ROWS = 3;
    private static final double WIDE_MM = 85;
    private static final double HIGH_MM = 100;
    private static final double NOTE_LINE_MM = 6;
    private static final double GAP_MM = 4;

    private final double widthMm;
    private final double heightMm;
    private final Words words;
    private final TextRuler ruler;

    TagFaces(double widthMm, double heightMm, Words words, TextRuler ruler) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.words = words;
        this.ruler = ruler;
    }

    @Override
    public List<TagSetter.Part> share(TagWords says) {
        boolean crowded = crowded(says);
        List<TagSetter.Part> tags = new ArrayList<>(crowded ? factsAlone(says) : List.of());
        int from = 0;
        for (int share : says.threads().isEmpty() ? crowded ? List.<Integer>of() : List.of(0) : shares(says, columns(says))) {
            tags.add(new TagSetter.Part(facts(says, tags.isEmpty()), says.threads().subList(from, from + share)));
            from += share;
        }
        return tags;
    }

    /** Whether one of the facts would be cut on a tag that has threads below them. */
    private boolean crowded(TagWords says) {
        return !whole(says, says.facts());
    }

    /** Whether a tag has room for these facts and a row of threads. */
    private boolean whole(TagWords says, List<String> facts) {
        return rows(says, facts) > 0 && lines(facts, factsTop(says), THREAD_ROW_MM).equals(facts.stream().map(this::wanted).toList());
    }

    /** Tags with facts and no threads, as many as it takes to have every fact whole. */
    private List<TagSetter.Part> factsAlone(TagWords says) {
        List<TagSetter.Part> tags = new ArrayList<>();
        List<String> facts = new ArrayList<>();
        int room = (int) Math.floor(factsRoomMm(factsTop(says), 0) / FACT_LINE_MM + 1e-9);
        int left = room;
        for (String fact : says.facts()) {
            if (wanted(fact) > left && !facts.isEmpty()) {
                tags.add(new TagSetter.Part(facts, List.of()));
                facts = new ArrayList<>();
                left = room;
            }
            facts.add(fact);
            left -= wanted(fact);
        }
        tags.add(new TagSetter.Part(facts, List.of()));
        return tags;
    }

    @Override
    public TagFace front(TagWords says, TagSetter.Part part, int index, int count, Box box, boolean turned) {
        List<FittedText> texts = head(says, index, count);
        double yMm = factsTop(says);
        double threadsMm = part.threads().isEmpty() ? 0 : THREAD_ROW_MM;
        double lineMm = lineMm(part.facts(), yMm, threadsMm);
        List<Integer> lines = lines(part.facts(), yMm, threadsMm);
        for (int i = 0; i < part.facts().size(); i++) {
            texts.add(new FittedText("fact", part.facts().get(i), PAD_MM, yMm + lineMm - 0.9, innerMm(), lines.get(i), FACT_PT, FACT_LEAST_PT, 400, "start"));
            yMm += lines.get(i) * lineMm;
        }
        double topMm = threadsTop(says, part.facts());
        List<TagWords.Thread> threads = part.threads();
        List<TagFace.Tick> ticks = new ArrayList<>();
        int columns = columns(says);
        double columnMm = innerMm() / columns;
        double nameXMm = nameXMm(says);
        boolean named = named(says, columns);
        for (int i = 0; i < threads.size(); i++) {
            TagWords.Thread thread = threads.get(i);
            ticks.add(new TagFace.Tick(PAD_MM + i % columns * columnMm, topMm + i / columns * THREAD_ROW_MM, columnMm - 1, 4.4, CODE_X_MM, 3.3, CODE_PT,
                    thread.code(), nameXMm, named ? thread.name() : "", thread.swatch()));
        }
        return new TagFace(box, turned, hole(widthMm), STRIP_MM, texts, ticks, List.of(), List.of(), List.of(), 0, 7.5, "", null, List.of());
    }

    @Override
    public TagFace back(TagWords says, TagSetter.Part part, int index, int count, Box box, boolean turned) {
        List<FittedText> texts = head(says, index, count);
        boolean wide = widthMm >= WIDE_MM;
        double topMm = STRIP_MM + 2 + titleLines(says) * TITLE_LINE_MM;
        double codeMm = Math.min(28, wide ? heightMm - topMm - PAD_MM : Math.max(22, heightMm * 0.3));
        Box codeBox = wide ? new Box(widthMm - PAD_MM - codeMm, topMm, codeMm, codeMm)
                : new Box(PAD_MM, heightMm - PAD_MM - codeMm, codeMm, codeMm);
        boolean notesBeside = wide && heightMm >= HIGH_MM;
        Box notes = notesBeside ? new Box(codeBox.xMm(), codeBox.bottomMm() + 3, codeMm, heightMm - PAD_MM - codeBox.bottomMm() - 3)
                : wide ? new Box(PAD_MM, heightMm - PAD_MM - 2 * NOTE_LINE_MM - 1, innerMm() - codeMm - GAP_MM, 2 * NOTE_LINE_MM + 1)
                : new Box(codeBox.rightMm() + GAP_MM, codeBox.yMm(), innerMm() - codeMm - GAP_MM, codeMm);
        texts.add(new FittedText("note", words.say("tag.notes"), notes.xMm(), notes.yMm() + 2.4, notes.widthMm(), 2, 7, 6, 400, "start"));
        int headLines = Math.max(1, Math.min(2, ruler.lines(words.say("tag.notes"), "text", 400, 7, notes.widthMm())));
        List<Box> lines = new ArrayList<>();
        for (double yMm = notes.yMm() + 2.4 * headLines + NOTE_LINE_MM - 1; yMm <= notes.bottomMm() + 1e-6; yMm += NOTE_LINE_MM) {
            lines.add(new Box(notes.xMm(), yMm, notes.widthMm(), 0));
        }

        double logRightMm = wide ? codeBox.xMm() - GAP_MM : widthMm - PAD_MM;
        double logBottomMm = notesBeside ? heightMm - PAD_MM : wide ? notes.yMm() - 2 : codeBox.yMm() - 3;
        double firstMm = topMm + 3.4;
        int rows = Math.max(1, (int) Math.floor((logBottomMm - firstMm - 1) / LOG_ROW_MM));
        double logWidthMm = logRightMm - PAD_MM;
        return new TagFace(box, turned, hole(widthMm), STRIP_MM, texts, List.of(), log(says, rows, firstMm, words), List.of(words.say("tag.day"),
                words.say("tag.hours"), words.say("tag.stitches")), List.of(PAD_MM, PAD_MM + logWidthMm * 0.52, PAD_MM + logWidthMm * 0.74),
                logRightMm, 7.5, plain(says, part.threads(), codeMm, words, ruler), codeBox, lines);
    }

    /** The latest sittings, with room below them to go on by hand. */
    private static List<TagFace.LogLine> log(TagWords says, int rows, double firstMm, Words words) {
        List<List<String>> latest = latest(says, rows - Math.min(LEAST_BLANK_ROWS, rows / 2), words);
        List<TagFace.LogLine> lines = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            lines.add(new TagFace.LogLine(firstMm + (i + 1) * LOG_ROW_MM - 1.2, i < latest.size() ? latest.get(i) : List.of()));
        }
        return lines;
    }

    /** The cells of the latest sittings for which there is room; those before them are counted in the first row. */
    static List<List<String>> latest(TagWords says, int room, Words words) {
        int all = says.log().size();
        boolean counted = all > room && room > 1;
        int written = Math.max(0, counted ? room - 1 : Math.min(all, room));
        List<List<String>> rows = new ArrayList<>();
        if (counted) {
            rows.add(List.of(words.say("tag.earlier", all - written), "", ""));
        }
        says.log().subList(all - written, all).forEach(sitting -> rows.add(List.of(sitting.day(), sitting.hours(), sitting.stitches())));
        return rows;
    }

    /**
     * The facts with as many thread codes as a code of this size can carry and a telephone can read; where even the facts are too
     * much, as many of them as it can, the title first, below the words every code begins with.
     */
    static String plain(TagWords says, List<TagWords.Thread> threads, double codeMm, Words words, TextRuler ruler) {
        int most = (int) Math.floor(codeMm / TextRuler.LEAST_MODULE_MM) - 2 * TextRuler.QUIET_MODULES;
        for (int kept = threads.size(); kept > 0; kept--) {
            StringBuilder text = new StringBuilder(says.plain()).append('\n').append(words.say("tag.threads")).append(' ');
            for (int i = 0; i < kept; i++) {
                text.append(i == 0 ? "" : ", ").append(threads.get(i).code());
            }
            text.append(kept < threads.size() ? ", ..." : "");
            if (ruler.codeModules(text.toString()) <= most) {
                return text.toString();
            }
        }
        String facts = says.plain();
        while (ruler.codeModules(facts) > most && facts.lastIndexOf('\n') > facts.indexOf('\n')) {
            facts = facts.substring(0, facts.lastIndexOf('\n'));
        }
        return facts;
    }

    private List<FittedText> head(TagWords says, int index, int count) {
        List<FittedText> texts = new ArrayList<>();
        // Three lines of the least size are no higher than two of the usual, and better than a title that is cut.
        boolean three = titleLines(says) == 2 && ruler.lines(says.title(), "heading", 500, TITLE_LEAST_PT, innerMm()) > 2;
        double sizePt = three ? TITLE_LEAST_PT : titlePt();
        texts.add(new FittedText("title", says.title(), PAD_MM, STRIP_MM + 2 + sizePt * PT_MM * 0.75, innerMm(), three ? 3 : titleLines(says), sizePt,
                TITLE_LEAST_PT, 500, "start"));
        if (count > 1) {
            String number = words.say("tag.number", index + 1, count);
            String said = ruler.widthMm(number, "text", 600, NUMBER_LEAST_PT) < NUMBER_MM ? number : words.say("tag.number-large", index
                    + 1, count);
            texts.add(new FittedText("number", said, widthMm - PAD_MM, PAD_MM + 2.5, NUMBER_MM, 1, 8, NUMBER_LEAST_PT, 600, "end"));
        }
        return texts;
    }

    static Box hole(double widthMm) {
        return new Box(widthMm / 2 - HOLE_MM / 2, HOLE_EDGE_MM, HOLE_MM, HOLE_MM);
    }

    private double innerMm() {
        return widthMm - 2 * PAD_MM;
    }

    private double titlePt() {
        return widthMm >= WIDE_MM ? TITLE_PT : SMALL_TITLE_PT;
    }

    private int titleLines(TagWords says) {
        // A low tag has a second line only for a title that would be cut.
        double sizePt = heightMm >= 80 ? titlePt() : TITLE_LEAST_PT;
        return Math.max(1, Math.min(2, ruler.lines(says.title(), "heading", 500, sizePt, innerMm())));
    }

    private double factsTop(TagWords says) {
        return STRIP_MM + 2 + titleLines(says) * TITLE_LINE_MM + 0.5;
    }

    /** Further tags of a piece repeat only its first two lines, or none where these have no room, and leave the room to threads. */
    private List<String> facts(TagWords says, boolean first) {
        List<String> brief = says.facts().subList(0, Math.min(2, says.facts().size()));
        return first ? says.facts() : whole(says, brief) ? brief : List.of();
    }

    /** One line for a fact that fits into it at its least size, else as many as it takes, while a row of threads keeps its room below. */
    private List<Integer> lines(List<String> facts, double topMm, double threadsMm) {
        int left = (int) Math.floor(factsRoomMm(topMm, threadsMm) / lineMm(facts, topMm, threadsMm) + 1e-9) - facts.size();
        List<Integer> lines = new ArrayList<>();
        for (String fact : facts) {
            int more = wanted(fact) - 1;
            lines.add(1 + Math.max(0, Math.min(more, left)));
            left -= more;
        }
        return lines;
    }

    private int wanted(String fact) {
        return ruler.lines(fact, "text", 400, FACT_LEAST_PT, innerMm()) <= 1 ? 1 : ruler.lines(fact, "text", 400, FACT_PT, innerMm());
    }

    private double factsRoomMm(double topMm, double threadsMm) {
        return heightMm - PAD_MM - threadsMm - topMm;
    }

    /** From one line of facts to the next: closer where all lines have room only so. */
    private double lineMm(List<String> facts, double topMm, double threadsMm) {
        double alikeMm = (factsRoomMm(topMm, threadsMm) - ABOVE_THREADS_MM + THREADS_OVER_MM) / facts.stream().mapToInt(this::wanted).sum();
        return alikeMm < FACT_LINE_MM && alikeMm >= CLOSE_FACT_LINE_MM ? alikeMm : FACT_LINE_MM;
    }

    private double threadsTop(TagWords says, List<String> facts) {
        double topMm = factsTop(says);
        int lines = lines(facts, topMm, THREAD_ROW_MM).stream().mapToInt(Integer::intValue).sum();
        return topMm + lines * lineMm(facts, topMm, THREAD_ROW_MM) + ABOVE_THREADS_MM;
    }

    /** As many as the longest code leaves room for, or the longest name where that makes no more tags; however few threads one tag takes: all tags of a piece look alike. */
    private int columns(TagWords says) {
        int most = mostColumns(says);
        int tags = shares(says, most).size();
        for (int columns = most; columns > 0; columns--) {
            if (named(says, columns) && shares(says, columns).size() <= tags) {
                return columns;
            }
        }
        return most;
    }

    /** Whether every thread's name has room beside its code. */
    private boolean named(TagWords says, int columns) {
        double longestMm = says.threads().stream().mapToDouble(thread -> ruler.widthMm(thread.name(), "text", 400, NAME_PT)).max().orElse(0);
        return longestMm > 0 && nameXMm(says) + longestMm + 1 <= innerMm() / columns;
    }

    private int mostColumns(TagWords says) {
        return Math.max(1, (int) Math.floor(innerMm() / Math.max(THREAD_COLUMN_MM, CODE_X_MM + longestCodeMm(says) + 1.5)));
    }

    private List<Integer> shares(TagWords says, int columns) {
        return ThreadShares.of(says.threads().size(), columns, tag -> Math.max(1, columns * rows(says, facts(says, tag == 0
                && !crowded(says)))));
    }

    private double longestCodeMm(TagWords says) {
        return says.threads().stream().mapToDouble(thread -> ruler.widthMm(thread.code(), "text", 600, CODE_PT)).max().orElse(0);
    }

    /** From a tick box to the names, which stand below each other. */
    private double nameXMm(TagWords says) {
        return CODE_X_MM + longestCodeMm(says) + 1.8;
    }

    private int rows(TagWords says, List<String> facts) {
        return (int) Math.floor((heightMm - PAD_MM + THREADS_OVER_MM - threadsTop(says, facts)) / THREAD_ROW_MM + 1e-9);
    }
}
