package kitleaf.sheet.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.PieceState;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.plan.PlannedCut;
import kitleaf.sizing.plan.Purchase;
import kitleaf.sizing.plan.Remnant;
import kitleaf.words.Words;

/**
 * Says what the cloth plan says: first all that is cut, bought and left out, then for each cloth its drawing, the steps and what comes
 * off. A basket with nothing to cut has none.
 */
public final class ClothPlanLayout {

    private static final List<String> CAUTIONS = List.of("plan.caution-count", "plan.caution-square", "plan.caution-measure",
            "plan.caution-wash", "plan.caution-blade");

    private final Reckoning reckoning;
    private final Basket basket;
    private final ClothPlan plan;
    private final SheetSettings settings;
    private final Words words;
    private final PlanWords phrases;
    private final Figures figures;
    private final ClothWords clothWords;
    private final Frames frames;

    private ClothPlanLayout(Reckoning reckoning, SheetSettings settings) {
        this.reckoning = reckoning;
        this.basket = reckoning.basket();
        this.plan = reckoning.clothPlan();
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.phrases = new PlanWords(words, settings.units());
        this.figures = new Figures(settings.units(), words);
        this.clothWords = new ClothWords(words, figures);
        this.frames = new Frames(basket, settings, words, words.say("plan.name"));
    }

    /** The cloth plan of a basket; no pages where nothing is to be cut. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return reckoning.clothPlan().isEmpty() ? new Sheet(SheetKind.CLOTH_PLAN, 0, Map.of()) : new ClothPlanLayout(reckoning, settings)
                .layOut();
    }

    private Sheet layOut() {
        List<ClothPlanPage> pages = new ArrayList<>();
        pages.add(overview());
        plan.cloths().forEach(cloth -> pages.add(page(cloth)));
        return frames.flowing(SheetKind.CLOTH_PLAN, pages.size(), words.say("plan.subject"), Map.of("pages", pages));
    }

    private ClothPlanPage page(PlannedCloth cloth) {
        List<PlanDrawing> drawings = PlanDrafting.sizes(cloth, settings.paper().widthMm() - 2 * Frames.MARGIN_MM, settings, phrases);
        PlanLabels discs = new PlanLabels(settings.ruler(), settings.type());
        List<Remnant> left = cloth.remnants();
        return new ClothPlanPage(clothWords.title(cloth, plan.cloths()), phrases.subtitle(cloth), drawings, before(cloth),
                cloth.steps().stream().map(it -> phrases.step(it, cloth, discs.disc(Integer.toString(it.cut().number())))).toList(),
                section("plan.pieces", cloth.cuts(), cut -> PlanRow.item(true, Integer.toString(cut.number()), cut.piece().piece().title(),
                        clothWords.cutSize(cut.widthMm(), cut.heightMm()), below(cut))),
                section("plan.remnants", IntStream.range(0, left.size()).boxed().toList(), i -> PlanRow.item(false, PlanWords.letter(i),
                        words.say(left.get(i).usable() ? "plan.keep" : "plan.scrap"), phrases.leftSize(left.get(i)), "")),
                explained(cloth, drawings));
    }

    private List<String> before(PlannedCloth cloth) {
        return cloth.steps().isEmpty() ? List.of(words.say("plan.no-cut")) : List.of(words.say("plan.before"),
                words.say(cloth.kind() == Cloth.Kind.BLOCK ? "plan.how-block" : "plan.how"));
    }

    /** What is to be known of the drawing in whichever size it comes, and what is proved. */
    private List<PlanRow> explained(PlannedCloth cloth, List<PlanDrawing> sizes) {
        PlanDrawing drawing = sizes.get(0);
        Map<String, Boolean> notes = new LinkedHashMap<>();
        notes.put("plan.legend", drawing.zigzag().isEmpty());
        notes.put("plan.legend-broken", !drawing.zigzag().isEmpty());
        notes.put("plan.selvedge-beyond", cloth.selvedge().isPresent() && drawing.selvedge().isEmpty());
        notes.put("plan.legend-numbers", sizes.stream().anyMatch(PlanDrawing::numbersMissing));
        notes.put("plan.legend-pieces", sizes.stream().anyMatch(PlanDrawing::piecesMissing));
        return Stream.concat(notes.entrySet().stream().filter(Map.Entry::getValue).map(note -> words.say(note.getKey())),
                Stream.of(phrases.kerf(cloth, basket.clothSupply().cutting().frayMm()), phrases.proof(cloth.proof())))
                .map(PlanRow::note).toList();
    }

    /** A heading with a row for each thing; nothing where there are none. */
    private <T> List<PlanRow> section(String key, Collection<T> things, Function<T, PlanRow> row) {
        return things.isEmpty() ? List.of() : Stream.concat(Stream.of(PlanRow.section(words.say(key))), things.stream().map(row)).toList();
    }

    private String below(PlannedCut cut) {
        String lies = phrases.lies(cut, false);
        return lies.isEmpty() ? words.say("plan.upright") : lies;
    }

    private String overviewSubtitle() {
        int pieces = plan.cloths().stream().mapToInt(cloth -> cloth.cuts().size()).sum();
        int cloths = plan.cloths().size();
        return words.say("plan.subtitle", words.say(pieces == 1 ? "plan.piece" : "plan.number-pieces", pieces),
                words.say(cloths == 1 ? "plan.cloth" : "plan.number-cloths", cloths));
    }

    private ClothPlanPage overview() {
        Stream<List<PlanRow>> cut = Stream.of(buy(),
                section("plan.cloths", plan.cloths(), cloth -> PlanRow.item(false, "", clothWords.title(cloth, plan.cloths()),
                        clothWords.size(cloth), words.say("plan.for", clothWords.weave(cloth.kind(), cloth.count()),
                        phrases.first(cloth.cuts().stream().map(it -> it.piece().piece().title()).toList()), phrases.left(cloth)))),
                section("plan.unplaced", plan.unplaced(), piece -> PlanRow.item(false, "", piece.piece().title(),
                        clothWords.cutSize(piece.cloth().size().across().cutMm(), piece.cloth().size().down().cutMm()),
                        phrases.unplaced(piece.piece().cloth()))));
        Stream<List<PlanRow>> whole = Stream.of(
                section("plan.untouched", plan.untouched(), cloth -> PlanRow.item(false, "", cloth.name(),
                        clothWords.size(cloth.widthMm(), cloth.heightMm()), clothWords.weave(cloth.kind(), cloth.count()))),
                section("plan.near", plan.nearMisses(), miss -> PlanRow.note(phrases.nearMiss(miss))),
                section("plan.left-out", leftOut().entrySet(), why -> PlanRow.note(words.say(why.getKey(),
                        phrases.first(why.getValue())))));
        return new ClothPlanPage(words.say("plan.title"), overviewSubtitle(), List.of(), List.of(), List.of(),
                cut.flatMap(List::stream).toList(), whole.flatMap(List::stream).toList(),
                section("plan.cautions", CAUTIONS, caution -> PlanRow.caution(words.say(caution))));
    }

    private List<PlanRow> buy() {
        List<PlanRow> rows = new ArrayList<>();
        rows.add(PlanRow.section(words.say("plan.buy")));
        if (plan.buy().isEmpty()) {
            rows.add(PlanRow.note(words.say(plan.unplaced().isEmpty() ? "plan.buy-nothing" : "plan.buy-none")));
            return rows;
        }
        for (Purchase purchase : plan.buy()) {
            rows.add(PlanRow.item(true, "", words.say("plan.times", purchase.number(), Figures.unbroken(purchase.cut().name())),
                    purchase.cost().map(figures::money).orElse(""), phrases.purchaseBelow(purchase)));
        }
        plan.cost().ifPresent(cost -> {
            rows.add(PlanRow.sum(words.say("buy.total"), figures.money(cost)));
            List<String> unpriced = plan.buy().stream().filter(it -> it.cost().isEmpty()).map(it -> it.cut().name()).distinct().toList();
            if (!unpriced.isEmpty()) {
                rows.add(PlanRow.note(words.say("plan.no-price", Figures.unbroken(figures.list(unpriced)))));
            }
        });
        ClothSupply supply = basket.clothSupply();
        if (!supply.cutsGiven()) {
            String cuts = figures.list(supply.cuts().stream().map(ClothCut::name).toList());
            rows.add(PlanRow.note(words.say("plan.usual-cuts", Figures.unbroken(cuts))));
        }
        return rows;
    }

    /** The pieces that are not planned, by why; in the order of the words for that. */
    private Map<String, List<String>> leftOut() {
        return reckoning.pieces().stream().filter(it -> !it.wantsCloth()).collect(Collectors.groupingBy(
                it -> it.state() == PieceState.MADE_UP ? "plan.left-out-finished" : !it.cutAlready() ? "plan.left-out-laid-aside"
                        : it.piece().cloth().cut() ? "plan.left-out-cut" : "plan.left-out-begun", TreeMap::new,
                Collectors.mapping(it -> it.piece().title(), Collectors.toList())));
    }
}
