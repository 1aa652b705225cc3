package kitleaf.sheet.tag;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import java.util.function.Function;
import kitleaf.basket.Basket;
import kitleaf.basket.Piece;
import kitleaf.basket.Tags;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.Swatch;
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
import kitleaf.sizing.thread.ThreadReckoning;
import kitleaf.words.Words;

/** Lays out a tag for the bag of each piece that is not finished, and more than one where its threads need it. */
public final class TagLayout {

    private final SheetSettings settings;
    private final Words words;
    private final Figures figures;
    private final ClothWords clothWords;
    private final ThreadWords threadWords;
    private final TagSheets sheets;
    private final TagSetter faces;

    private TagLayout(Reckoning reckoning, SheetSettings settings) {
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.figures = new Figures(settings.units(), words);
        this.clothWords = new ClothWords(words, figures);
        this.threadWords = new ThreadWords(words, settings.units());
        this.sheets = settings.type().large() ? TagSheets.large(settings.paper(), reckoning.basket().tags(), footMm(reckoning.basket(), settings))
                : TagSheets.of(settings.paper(), reckoning.basket().tags());
        this.faces = settings.type().large() ? new LargeTagFaces(sheets.tagWidthMm(), sheets.tagHeightMm(), words, settings.ruler())
                : new TagFaces(sheets.tagWidthMm(), sheets.tagHeightMm(), words, settings.ruler());
    }

    /** The tags of all pieces that are not finished, for paper on which they {@linkplain #fit have room}. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return new TagLayout(reckoning, settings).layOut(reckoning);
    }

    /** Whether the basket's tags have room on its paper; in large print above its higher foot. */
    public static boolean fit(Basket basket, SheetSettings settings) {
        Tags tags = basket.tags();
        int faces = tags.sides() == Tags.Sides.FOLDED ? 2 : 1;
        return tags.fit(settings.paper()) && (!settings.type().large() || !(tags.size() instanceof Tags.Own own)
                || own.heightMm() * faces <= settings.paper().heightMm() - Tags.MARGIN_MM - footMm(basket, settings));
    }

    private static double footMm(Basket basket, SheetSettings settings) {
        PageFrame frame = frames(basket, settings, SheetWords.in(settings.language())).of(0, 0);
        return frame.heightMm() - frame.foot().topMm();
    }

    private static Frames frames(Basket basket, SheetSettings settings, Words words) {
        return new Frames(basket, settings, words, words.say("tag.name")).saying(words.say(note(basket.tags().sides())));
    }

    /** One tag: its piece, which of the piece's tags it is, and its threads. */
    private record Tag(TagWords says, TagSetter.Part part, int index, int count) { }

    private Sheet layOut(Reckoning reckoning) {
        ThreadReckoning threads = reckoning.threads();
        List<Tag> tags = new ArrayList<>();
        for (PieceReckoning piece : reckoning.pieces()) {
            if (piece.piece().progress().finished().isEmpty()) {
                TagWords says = words(piece, threads.piece(piece.piece().id()).orElseThrow());
                List<TagSetter.Part> shared = faces.share(says);
                for (int i = 0; i < shared.size(); i++) {
                    tags.add(new Tag(says, shared.get(i), i, shared.size()));
                }
            }
        }
        Frames frames = frames(reckoning.basket(), settings, words);
        int sheetCount = (tags.size() + sheets.perSheet() - 1) / sheets.perSheet();
        int count = sheetCount * (sheets.duplex() ? 2 : 1);
        List<TagPage> pages = new ArrayList<>();
        for (int sheet = 0; sheet < sheetCount; sheet++) {
            List<Tag> onSheet = tags.subList(sheet * sheets.perSheet(), Math.min(tags.size(), (sheet + 1) * sheets.perSheet()));
            pages.add(fronts(onSheet, frames.of(pages.size() + 1, count)));
            if (sheets.duplex()) {
                pages.add(backs(onSheet, frames.of(pages.size() + 1, count)));
            }
        }
        return new Sheet(SheetKind.BAG_TAGS, pages.size(), Map.of(
                "title", reckoning.basket().title() + ": " + words.say("tag.name"),
                "subject", words.say("tag.subject"),
                "language", settings.language().toLanguageTag(),
                "pages", pages));
    }

    private TagPage fronts(List<Tag> tags, PageFrame frame) {
        List<TagFace> placed = new ArrayList<>();
        for (int i = 0; i < tags.size(); i++) {
            Tag tag = tags.get(i);
            placed.add(faces.front(tag.says(), tag.part(), tag.index(), tag.count(), box(sheets.front(i)), sheets.front(i).turned()));
            if (!sheets.duplex()) {
                placed.add(faces.back(tag.says(), tag.part(), tag.index(), tag.count(), box(sheets.back(i)), sheets.back(i).turned()));
            }
        }
        int rows = (tags.size() + sheets.columns() - 1) / sheets.columns();
        List<Double> sidesY = sheets.sidesYMm().subList(0, rows + 1);
        List<Double> foldsY = sheets.duplex() ? List.of() : sidesY.subList(0, rows).stream().map(y -> y + sheets.tagHeightMm()).toList();
        List<String> begin = tags.stream().filter(tag -> tag.index() == 0).map(tag -> tag.says().title()).toList();
        return new TagPage(frame, false, false, sheets.sidesXMm(), sidesY, foldsY, placed, begin, words.say(note(sheets.tags().sides())));
    }

    private TagPage backs(List<Tag> tags, PageFrame frame) {
        List<TagFace> placed = new ArrayList<>();
        for (int i = 0; i < tags.size(); i++) {
            Tag tag = tags.get(i);
            placed.add(faces.back(tag.says(), tag.part(), tag.index(), tag.count(), box(sheets.back(i)), sheets.back(i).turned()));
        }
        int rows = (tags.size() + sheets.columns() - 1) / sheets.columns();
        return new TagPage(frame, true, !sheets.turnsUpright(), sheets.sidesXMm().stream().map(x -> sheets.backXMm(x, 0)).toList(),
                sheets.sidesYMm().subList(0, rows + 1).stream().map(y -> sheets.backYMm(y, 0)).toList(), List.of(), placed, List.of(), words.say(note(sheets.tags().sides())));
    }

    private static String note(Tags.Sides sides) {
        return "tag.note." + sides.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Box box(TagPlace place) {
        return new Box(place.xMm(), place.yMm(), place.widthMm(), place.heightMm());
    }

    private TagWords words(PieceReckoning reckoned, PieceThreads threads) {
        Piece piece = reckoned.piece();
        PieceSize size = reckoned.cloth().size();
        String chart = words.say("cut-sheet.stitches", piece.stitches().wide(), piece.stitches().high());
        String finished = figures.size(size.across().finishedMm(), size.down().finishedMm());
        String finishedOther = figures.otherSize(size.across().finishedMm(), size.down().finishedMm());
        String cut = figures.cut(size.across().cutMm(), size.down().cutMm());
        String cutOther = figures.swapped().cut(size.across().cutMm(), size.down().cutMm());
        List<String> facts = new ArrayList<>();
        facts.add(piece.designer().map(designer -> designer + " · " + chart).orElse(chart));
        facts.add(clothWords.cloth(piece.cloth()));
        // What stands in brackets is not parted: a line would begin in the middle of a size.
        facts.add(words.say("tag.design", finished, finishedOther.replace(' ', Figures.NO_BREAK)));
        facts.add(words.say("tag.cut", cut, cutOther.replace(' ', Figures.NO_BREAK)));
        if (!threads.threads().isEmpty()) {
            facts.add(needles(threads));
        }
        facts.add(dates(reckoned, figures::day));

        StringJoiner plain = new StringJoiner("\n");
        // A reader of codes runs what begins like a command or an address; words of ours come before hers.
        plain.add(words.say("tag.code"));
        plain.add(piece.title());
        facts.subList(0, facts.size() - 1).forEach(fact -> plain.add(Figures.plain(fact).replace('·', ',').replace(" ,", ",")));
        plain.add(dates(reckoned, LocalDate::toString));

        List<TagWords.Thread> ticks = threads.threads().stream()
                .map(thread -> new TagWords.Thread(thread.code(), ThreadWords.first(thread).name().orElse(""), Swatch.of(ThreadWords.first(thread)))).toList();
        List<TagWords.Sitting> log = piece.progress().log().stream().map(entry -> new TagWords.Sitting(figures.day(entry.on(), "date.short-year"),
                figures.decimal(entry.hours(), 2), Integer.toString(entry.stitches()))).toList();
        return new TagWords(piece.title(), facts, ticks, log, plain.toString());
    }

    private String needles(PieceThreads threads) {
        List<ThreadNeed> needs = threads.threads().stream().flatMap(total -> total.needs().stream()).toList();
        return threadWords.needle(needs) + " · " + threadWords.strands(needs);
    }

    private String dates(PieceReckoning reckoned, Function<LocalDate, String> day) {
        String started = reckoned.piece().progress().started().map(on -> words.say("tag.started", day.apply(on)))
                .orElseGet(() -> words.say(reckoned.begun() ? "tag.begun" : "tag.not-started"));
        return started + reckoned.piece().goal().by().map(on -> ", " + words.say("tag.by", day.apply(on))).orElse("");
    }

}
