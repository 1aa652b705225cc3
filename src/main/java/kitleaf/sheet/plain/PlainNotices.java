package kitleaf.sheet.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.Count;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.thread.ThreadWarning;
import kitleaf.sizing.year.YearReckoning;
import kitleaf.words.Words;

/** What the sheets of a basket warn of, in a sentence each: nothing in it is wrong, and something may be other than was meant. */
public final class PlainNotices {

    private final PlainWords words;
    private final Words sheetWords;
    private final Figures figures;

    private PlainNotices(Units units, Locale language) {
        this.words = new PlainWords(language, 1);
        this.sheetWords = SheetWords.in(language);
        this.figures = new Figures(units, sheetWords);
    }

    /** All of them, pieces by their IDs; none where there is nothing to know. */
    public static List<String> of(Reckoning reckoning, Optional<YearReckoning> year, Locale language) {
        PlainNotices notices = new PlainNotices(reckoning.basket().units(), language);
        List<String> all = new ArrayList<>();
        reckoning.pieces().forEach(piece -> notices.progress(piece).ifPresent(all::add));
        reckoning.pieces().forEach(piece -> notices.cloth(piece, reckoning.basket().clothSupply().onHand()).ifPresent(all::add));
        reckoning.clothPlanToldOf().ifPresent(plan -> notices.plan(plan, reckoning.basket().clothSupply().onHand()).forEach(all::add));
        notices.threads(reckoning.threads().buyList().warnings(), all);
        year.ifPresent(goals -> notices.year(goals, all));
        return all.stream().map(Figures::plain).toList();
    }

    /** Her own figure is taken, even where the log has more. */
    private Optional<String> progress(PieceReckoning piece) {
        long logged = piece.piece().progress().log().stream().mapToLong(LogEntry::counted).sum();
        boolean passedOver = piece.piece().progress().done().isPresent() && piece.piece().progress().last().isEmpty()
                && piece.piece().progress().readings().isEmpty()
                && logged > piece.tally().done();
        return passedOver ? Optional.of(words.say("notice.log-more", id(piece), logged, piece.tally().done())) : Optional.empty();
    }

    /** A cloth of one name has one weave, unless another lies elsewhere. */
    private Optional<String> cloth(PieceReckoning piece, List<ClothOnHand> onHand) {
        Cloth asked = piece.piece().cloth();
        List<ClothOnHand> named = named(asked, onHand).toList();
        return named.stream().anyMatch(cloth -> serves(cloth, asked)) ? Optional.empty()
                : named.stream().findFirst().map(cloth -> words.say("notice.weave", id(piece),
                        weave(asked.kind(), asked.count()), cloth.name(), weave(cloth.kind(), cloth.count())));
    }

    private static Stream<ClothOnHand> named(Cloth asked, List<ClothOnHand> onHand) {
        return onHand.stream().filter(cloth -> asked.name().filter(cloth::isCalled).isPresent());
    }

    private static boolean serves(ClothOnHand cloth, Cloth asked) {
        return cloth.kind() == asked.kind() && cloth.count().same(asked.count());
    }

    private String weave(Cloth.Kind kind, Count count) {
        // Counts that differ by little must not read alike.
        String warp = figures.decimal(count.warpPerInch(), 3);
        return sheetWords.say("kind." + Words.word(kind)) + " "
                + (count.even() ? warp : warp + " x " + figures.decimal(count.weftPerInch(), 3));
    }

    private List<String> plan(ClothPlan plan, List<ClothOnHand> onHand) {
        List<String> notices = new ArrayList<>();
        plan.cloths().stream().filter(PlannedCloth::bought).flatMap(cloth -> cloth.cuts().stream()).forEach(cut -> {
            Cloth asked = cut.piece().piece().cloth();
            named(asked, onHand).filter(cloth -> serves(cloth, asked)).findFirst()
                    .ifPresent(cloth -> notices.add(words.say("notice.no-room", id(cut.piece()), cloth.name())));
        });
        plan.unplaced().forEach(piece -> notices.add(words.say("notice.unplaced", id(piece),
                figures.cut(piece.cloth().size().across().cutMm(), piece.cloth().size().down().cutMm()))));
        return notices;
    }

    /** One sentence for all threads of which the same is to be said. */
    private void threads(List<ThreadWarning> warnings, List<String> all) {
        Map<ThreadWarning, List<String>> codes = new LinkedHashMap<>();
        warnings.forEach(warning -> codes.computeIfAbsent(new ThreadWarning(warning.kind(), "", warning.skein(), warning.pieces()),
                one -> new ArrayList<>()).add(warning.code()));
        codes.forEach((warning, threads) -> all.add(words.of("thread-warning", warning.kind(), String.join(", ", threads), warning.skein(),
                String.join(", ", warning.pieces()))));
    }

    private void year(YearReckoning year, List<String> all) {
        year.warnings().forEach(warning -> {
            String figure = warning.figure().isPresent() ? ": " + figures.decimal(warning.figure().getAsDouble(), 1) : "";
            String what = words.of("warning", warning.kind()) + figure;
            all.add(warning.pieces().isEmpty() ? words.say("notice.year", year.year(), what)
                    : words.say("notice.year-of", year.year(), what, String.join(", ", warning.pieces())));
        });
    }

    private static String id(PieceReckoning piece) {
        return piece.piece().id();
    }
}
