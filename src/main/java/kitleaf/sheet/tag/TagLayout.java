package kitleaf.sheet.tag;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.Piece;
import kitleaf.basket.Tags;
import kitleaf.basket.place.Problem;
import kitleaf.basket.reader.Misfits;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.Swatch;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sheet.words.ThreadWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.sizing.tag.TagPlace;
import kitleaf.sizing.tag.TagSheets;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadTotal;
import kitleaf.words.Words;

/** Lays out a tag for the bag of each piece that is not finished, and more than one where its threads need it. */
public final class TagLayout {

    private static final double MOST_CODE_MM = 28;
    private static final double LEAST_CODE_MM = 22;
    /** The ribbon's strip, a title of two lines, and the blank edge. */
    private static final double ABOVE_CODE_MM = 35;

    private final SheetSettings settings;
    private final Words words;
    private final Figures figures;
    private final ClothWords clothWords;
    private final ThreadWords threadWords;
    private final TagSheets sheets;
    private final double footMm;
    private final double codeMm;

    private TagLayout(Reckoning reckoning, SheetSettings settings) {
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.figures = new Figures(settings.units(), words);
        this.clothWords = new ClothWords(words, figures);
        this.threadWords = new ThreadWords(words, settings.units());
        this.footMm = footMm(reckoning.basket(), settings);
        Box least = settings.type().leastTag();
        this.sheets = TagSheets.of(settings.paper(), reckoning.basket().tags(), least.widthMm(), least.heightMm(), footMm);
        this.codeMm = Math.min(MOST_CODE_MM, Math.max(LEAST_CODE_MM, sheets.tagHeightMm() - ABOVE_CODE_MM));
    }

    /** The tags of all pieces that are not finished, for paper on which they {@linkplain #misfit have room}. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return new TagLayout(reckoning, settings).layOut(reckoning);
    }

    /** The problem that a basket's tags have no room on their paper above the foot, if they have none. */
    public static Optional<Problem> misfit(Basket basket, SheetSettings settings, Misfits misfits, Misfits.Cause cause) {
        if (basket.tags().size() instanceof Tags.Usual) {
            return Optional.empty();
        }
        Box least = settings.type().leastTag();
        Tags.Room room = new Tags.Room(least.widthMm(), least.heightMm(), footMm(basket, settings));
        return basket.tags().on(settings.paper(), room).isPresent() ? Optional.empty()
                : Optional.of(misfits.tags(basket.tags(), settings.paper(), room, cause));
    }

    private static double footMm(Basket basket, SheetSettings settings) {
        Words words = SheetWords.in(settings.language());
        double footMm = frames(basket, settings, words).footMm(words.say(note(basket.tags().sides())),
                settings.paper().widthMm() - 2 * Frames.MARGIN_MM);
        // Tags of her own size do not take up all the sheet, and come as near to the foot as they must.
        return Math.max(Tags.FOOT_MM, Frames.LOWEST_MM + footMm + (basket.tags().size() instanceof Tags.Own ? 0 : Frames.CLEAR_MM));
    }

    private static Frames frames(Basket basket, SheetSettings settings, Words words) {
        return new Frames(basket, settings, words, words.say("tag.name"));
    }

    /**
     * Where tags lie on their sheets.
     *
     * @param columns tags side by side
     * @param duplex whether backs have pages of their own
     * @param above whether these have their foot at the top
     * @param slots of the tags of a sheet
     * @param sidesX where they are cut from top to bottom; behind that {@code backX}
     * @param sidesY where they are cut from side to side; behind that {@code backY}
     * @param codeMm the side of a code
     * @param footMm what is left below the tags
     */
    public record Lying(double tagWidthMm, double tagHeightMm, int columns, boolean duplex, boolean above, List<Slot> slots,
                        List<Double> sidesX, List<Double> sidesY, List<Double> backX, List<Double> backY, double codeMm, double footMm) {

        /** The place of one tag. */
        public record Slot(TagPlace front, TagPlace back) { }
    }

    private Lying lying() {
        boolean above = sheets.duplex() && !sheets.turnsUpright();
        List<Lying.Slot> slots = IntStream.range(0, sheets.perSheet()).mapToObj(i -> new Lying.Slot(sheets.front(i), sheets.back(i)))
                .toList();
        return new Lying(sheets.tagWidthMm(), sheets.tagHeightMm(), sheets.columns(), sheets.duplex(), above, slots,
                sheets.sidesXMm(), sheets.sidesYMm(), sheets.sidesXMm().stream().map(x -> sheets.backXMm(x, 0)).toList(),
                sheets.sidesYMm().stream().map(y -> sheets.backYMm(y, 0)).toList(), codeMm, footMm);
    }

    private Sheet layOut(Reckoning reckoning) {
        List<PieceReckoning> unfinished = reckoning.pieces().stream().filter(it -> it.piece().progress().finished().isEmpty()).toList();
        Iterable<TagWords> tags = () -> unfinished.stream()
                .map(it -> words(it, reckoning.threads().piece(it.piece().id()).orElseThrow())).iterator();
        return frames(reckoning.basket(), settings, words).flowing(SheetKind.BAG_TAGS, unfinished.size(), words.say("tag.subject"),
                Map.of("tags", tags, "sheets", lying(), "note", words.say(note(reckoning.basket().tags().sides()))));
    }

    private static String note(Tags.Sides sides) {
        return "tag.note." + Words.word(sides);
    }

    private TagWords words(PieceReckoning reckoned, PieceThreads threads) {
        Piece piece = reckoned.piece();
        PieceSize size = reckoned.cloth().size();
        String chart = words.say("cut-sheet.stitches", piece.stitches().wide(), piece.stitches().high());
        String finished = figures.size(size.across().finishedMm(), size.down().finishedMm());
        String finishedOther = figures.otherSize(size.across().finishedMm(), size.down().finishedMm());
        String cut = figures.cut(size.across().cutMm(), size.down().cutMm());
        String cutOther = figures.swapped().cut(size.across().cutMm(), size.down().cutMm());
        List<List<TagWords.Fact>> facts = new ArrayList<>();
        facts.add(List.of(fact("tag.chart", piece.designer().map(designer -> designer + " · " + chart).orElse(chart))));
        facts.add(List.of(fact("tag.cloth", clothWords.cloth(piece.cloth()))));
        // What stands in brackets is not parted: a line would begin in the middle of a size.
        facts.add(List.of(fact("tag.design", words.say("plan.both", finished, finishedOther.replace(' ', Figures.NO_BREAK)))));
        facts.add(List.of(fact("tag.cut", words.say("plan.both", cut, cutOther.replace(' ', Figures.NO_BREAK)))));
        if (!threads.threads().isEmpty()) {
            List<ThreadNeed> needs = threads.threads().stream().flatMap(total -> total.needs().stream()).toList();
            facts.add(List.of(fact("tag.needle", threadWords.needles(needs) + " · " + threadWords.strands(needs))));
        }
        facts.add(dates(reckoned, figures::day));

        StringJoiner plain = new StringJoiner("\n");
        // A reader of codes runs what begins like a command or an address; words of ours come before hers.
        plain.add(words.say("tag.code"));
        plain.add(piece.title());
        List<List<TagWords.Fact>> shown = List.copyOf(facts);
        facts.set(facts.size() - 1, dates(reckoned, LocalDate::toString));
        facts.forEach(line -> plain.add(Figures.plain(line.stream().map(fact -> fact.label() + " " + fact.value())
                .collect(Collectors.joining(", "))).replace('·', ',').replace(" ,", ",")));

        List<TagWords.Thread> ticks = threads.threads().stream()
                .map(thread -> new TagWords.Thread(Figures.code(thread.code()), ThreadWords.first(thread).name().orElse(""),
                        Swatch.of(ThreadWords.first(thread)))).toList();
        List<TagWords.Sitting> log = piece.progress().log().stream().map(entry ->
                new TagWords.Sitting(figures.day(entry.on(), "date.short-year"),
                entry.hours().isPresent() ? figures.decimal(entry.hours().getAsDouble(), 2) : "",
                entry.stitches().isPresent() || entry.unpicked() > 0 ? Integer.toString(entry.counted()) : "")).toList();
        return new TagWords(piece.title(), shown, ticks, log, plain(plain.toString(), threads.threads().stream().map(ThreadTotal::code)
                .toList()));
    }

    /**
     * The facts with as many thread codes as a code of this size can carry and a telephone can read; where even the facts are too
     * much, as many of them as it can, the title first, below the words every code begins with.
     */
    private String plain(String facts, List<String> threads) {
        int kept = most(threads.size(), number -> threads(facts, threads, number));
        if (kept > 0) {
            return threads(facts, threads, kept);
        }
        String[] lines = facts.split("\n");
        return facts(lines, Math.max(2, most(lines.length, number -> facts(lines, number))));
    }

    private static String facts(String[] lines, int kept) {
        return String.join("\n", Arrays.asList(lines).subList(0, kept));
    }

    private String threads(String facts, List<String> threads, int kept) {
        return facts + threads.stream().limit(kept)
                .collect(Collectors.joining(", ", "\n" + words.say("tag.threads") + " ", kept < threads.size() ? ", ..." : ""));
    }

    /** The most of something that a code carries: halved towards, since each try makes a code. */
    private int most(int all, IntFunction<String> text) {
        int modules = (int) Math.floor(codeMm / TextRuler.LEAST_MODULE_MM) - 2 * TextRuler.QUIET_MODULES;
        int fits = 0;
        for (int over = all + 1, tried = all; over - fits > 1; tried = (fits + over) / 2) {
            if (settings.ruler().codeModules(text.apply(tried)) <= modules) {
                fits = tried;
            } else {
                over = tried;
            }
        }
        return fits;
    }

    private TagWords.Fact fact(String label, String value) {
        return new TagWords.Fact(words.say(label), value);
    }

    private List<TagWords.Fact> dates(PieceReckoning reckoned, Function<LocalDate, String> day) {
        Stream<TagWords.Fact> started = Stream.of(reckoned.piece().progress().started().map(on -> fact("tag.started", day.apply(on)))
                .orElseGet(() -> fact("tag.progress", words.say(reckoned.begun() ? "tag.begun" : "tag.not-started"))));
        return Stream.concat(started, reckoned.piece().goal().by().map(on -> fact("tag.by", day.apply(on))).stream()).toList();
    }

}
