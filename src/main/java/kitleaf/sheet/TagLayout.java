package kitleaf.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import kitleaf.basket.Piece;
import kitleaf.basket.Tags;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.sizing.tag.TagPlace;
import kitleaf.sizing.tag.TagSheets;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadReckoning;

/** Lays out a tag for the bag of each piece that is not finished, and more than one where its threads need it. */
final class TagLayout {

    private final SheetSettings settings;
    private final Words words;
    private final Figures figures;
    private final CutSheetWords clothWords;
    private final TagSheets sheets;
    private final TagFaces faces;

    private TagLayout(Reckoning reckoning, SheetSettings settings) {
        this.settings = settings;
        this.words = new Words(settings.language());
        this.figures = new Figures(settings.units());
        this.clothWords = new CutSheetWords(words, figures);
        this.sheets = TagSheets.of(settings.paper(), reckoning.basket().tags());
        this.faces = new TagFaces(sheets.tagWidthMm(), sheets.tagHeightMm(), words, settings.ruler());
    }

    static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return new TagLayout(reckoning, settings).layOut(reckoning);
    }

    /** One tag: its piece, which of the piece's tags it is, and its threads. */
    private record Tag(TagWords says, List<TagWords.Thread> threads, int index, int count) { }

    private Sheet layOut(Reckoning reckoning) {
        ThreadReckoning threads = reckoning.threads();
        List<Tag> tags = new ArrayList<>();
        for (PieceReckoning piece : reckoning.pieces()) {
            if (piece.piece().progress().finished().isEmpty()) {
                TagWords says = words(piece, threads.piece(piece.piece().id()).orElseThrow());
                List<List<TagWords.Thread>> shared = faces.share(says);
                for (int i = 0; i < shared.size(); i++) {
                    tags.add(new Tag(says, shared.get(i), i, shared.size()));
                }
            }
        }
        Frames frames = new Frames(reckoning.basket(), settings, words, words.say("tag.name"));
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
            placed.add(faces.front(tag.says(), tag.threads(), tag.index(), tag.count(), box(sheets.front(i)), sheets.front(i).turned()));
            if (!sheets.duplex()) {
                placed.add(faces.back(tag.says(), tag.threads(), tag.index(), tag.count(), box(sheets.back(i)), sheets.back(i).turned()));
            }
        }
        int rows = (tags.size() + sheets.columns() - 1) / sheets.columns();
        List<Double> sidesY = sheets.sidesYMm().subList(0, rows + 1);
        List<Double> foldsY = sheets.duplex() ? List.of() : sidesY.subList(0, rows).stream().map(y -> y + sheets.tagHeightMm()).toList();
        List<String> begin = tags.stream().filter(tag -> tag.index() == 0).map(tag -> tag.says().title()).toList();
        return new TagPage(frame, false, false, sheets.sidesXMm(), sidesY, foldsY, placed, begin, words.say(note()));
    }

    private TagPage backs(List<Tag> tags, PageFrame frame) {
        List<TagFace> placed = new ArrayList<>();
        for (int i = 0; i < tags.size(); i++) {
            Tag tag = tags.get(i);
            placed.add(faces.back(tag.says(), tag.threads(), tag.index(), tag.count(), box(sheets.back(i)), sheets.back(i).turned()));
        }
        int rows = (tags.size() + sheets.columns() - 1) / sheets.columns();
        return new TagPage(frame, true, !sheets.turnsUpright(), sheets.sidesXMm().stream().map(x -> sheets.backXMm(x, 0)).toList(),
                sheets.sidesYMm().subList(0, rows + 1).stream().map(y -> sheets.backYMm(y, 0)).toList(), List.of(), placed, List.of(), words.say(note()));
    }

    private String note() {
        Tags.Sides sides = sheets.tags().sides();
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
        facts.add(words.say("tag.design", finished, finishedOther));
        facts.add(words.say("tag.cut", cut, cutOther));
        if (!threads.threads().isEmpty()) {
            facts.add(needles(threads));
        }
        facts.add(dates(piece, "d MMMM uuuu"));

        StringJoiner plain = new StringJoiner("\n");
        plain.add(piece.title());
        facts.subList(0, facts.size() - 1).forEach(fact -> plain.add(PlainFigures.plain(fact).replace('·', ',').replace(" ,", ",")));
        plain.add(dates(piece, "uuuu-MM-dd"));

        List<TagWords.Thread> ticks = threads.threads().stream()
                .map(thread -> new TagWords.Thread(thread.code(), Swatch.of(ThreadWords.first(thread)))).toList();
        List<TagWords.Sitting> log = piece.progress().log().stream().map(entry -> new TagWords.Sitting(day(entry.on(), "d MMM uuuu"),
                Figures.decimal(entry.hours(), 2), Integer.toString(entry.stitches()))).toList();
        return new TagWords(piece.title(), facts, ticks, log, plain.toString());
    }

    private String needles(PieceThreads threads) {
        List<ThreadNeed> needs = threads.threads().stream().flatMap(total -> total.needs().stream()).toList();
        String sizes = needs.stream().map(ThreadNeed::needle).distinct().sorted().map(String::valueOf).collect(Collectors.joining("/"));
        List<Integer> strands = needs.stream().map(need -> need.thread().strands()).distinct().sorted().toList();
        String many = strands.equals(List.of(1)) ? words.say("thread.strand")
                : words.say("thread.strands", strands.stream().map(String::valueOf).collect(Collectors.joining("/")));
        return words.say("thread.needle", sizes) + " · " + many;
    }

    private String dates(Piece piece, String pattern) {
        String started = piece.progress().started().map(day -> words.say("tag.started", day(day, pattern))).orElse(words.say("tag.not-started"));
        return started + piece.goal().by().map(day -> ", " + words.say("tag.by", day(day, pattern))).orElse("");
    }

    private String day(LocalDate day, String pattern) {
        return DateTimeFormatter.ofPattern(pattern, settings.language()).format(day);
    }
}
