package kitleaf.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.Cloth;
import kitleaf.basket.ClothCut;
import kitleaf.basket.ClothOnHand;
import kitleaf.basket.ClothSupply;
import kitleaf.basket.Piece;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TypeScale;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.CutStep;
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

    /** So much of its pages a drawing may be made smaller for the sake of the words on the same page. */
    private static final double SMALLEST_SHARE = 0.5;
    /** What a row of words takes, in lines of small type: near enough to tell whether a page holds all. */
    private static final double LINES_A_ROW = 3.2;
    /** A scale as wide as one may become. */
    private static final double WIDEST_SCALE = 888;
    /** See the template: a sign with the gap before its words, how high it is, what stands between two, and below them and the drawing. */
    private static final double SIGN_MM = 12;
    private static final double SIGN_HIGH_MM = 6.2;
    private static final double APART_MM = 8;
    private static final double GAP_MM = 3;

    private final Reckoning reckoning;
    private final Basket basket;
    private final ClothPlan plan;
    private final SheetSettings settings;
    private final Words words;
    private final PlanWords phrases;
    private final ClothWords clothWords;
    private final Frames frames;
    private final double innerMm;

    private ClothPlanLayout(Reckoning reckoning, SheetSettings settings) {
        this.reckoning = reckoning;
        this.basket = reckoning.basket();
        this.plan = reckoning.clothPlan();
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.phrases = new PlanWords(words, settings.units());
        this.clothWords = new ClothWords(words, new Figures(settings.units(), words));
        this.frames = new Frames(basket, settings, words, words.say("plan.name"));
        this.innerMm = settings.paper().widthMm() - 2 * Frames.MARGIN_MM;
    }

    /** The cloth plan of a basket; no pages where nothing is to be cut. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return reckoning.clothPlan().isEmpty() ? new Sheet(SheetKind.CLOTH_PLAN, 0, Map.of()) : new ClothPlanLayout(reckoning, settings)
                .layOut();
    }

    private Sheet layOut() {
        List<ClothPlanPage> pages = new ArrayList<>();
        pages.add(new ClothPlanPage(words.say("plan.title"), overviewSubtitle(), null, List.of(), "", overview()));
        plan.cloths().forEach(cloth -> pages.add(page(cloth)));
        return frames.flowing(SheetKind.CLOTH_PLAN, pages.size(), words.say("plan.subject"), Map.of("pages", pages));
    }

    private ClothPlanPage page(PlannedCloth cloth) {
        String title = clothWords.title(cloth, plan.cloths());
        String below = phrases.subtitle(cloth);
        boolean worded = PlanMarks.of(settings.type()).words();
        List<PlanRow> steps = steps(cloth);
        double roomMm = frames.roomMm(title, below) - GAP_MM;
        double wordsMm = steps.size() * LINES_A_ROW * settings.type().lineMm(settings.type().small());
        double underMm = worded ? lineMm(words.say("plan.legend-broken", phrases.scale(new PlanScale(WIDEST_SCALE))))
                : keysMm(keys(cloth, true)) + lineMm(caption(cloth, phrases.scale(new PlanScale(WIDEST_SCALE))));
        // All on one page, or the drawing as large as a page lets it be.
        double highMm = roomMm - underMm - wordsMm >= SMALLEST_SHARE * roomMm ? roomMm - underMm - wordsMm : roomMm - underMm;
        PlanDrawing drawing = PlanDrafting.of(cloth, new Box(0, 0, innerMm, highMm), settings, words, phrases);
        return new ClothPlanPage(title, below, drawing, worded ? List.of() : keys(cloth, !drawing.selvedge().isEmpty()),
                worded ? "" : caption(cloth, drawing.scale()), Stream.concat(explained(cloth, drawing).stream(), steps.stream()).toList());
    }

    private double lineMm(String said) {
        TypeScale type = settings.type();
        return settings.ruler().lines(said, "text", 400, type.small(), innerMm) * type.lineMm(type.small()) + GAP_MM;
    }

    private String caption(PlannedCloth cloth, String scale) {
        return clothWords.size(cloth) + " · " + words.say("plan.scale", scale);
    }

    private List<PlanKey> keys(PlannedCloth cloth, boolean selvedge) {
        List<PlanKey> keys = new ArrayList<>();
        keys.add(new PlanKey(cloth.warp() == Cloth.WarpRun.DOWN ? "warp-down" : "warp-across", words.say("guide.warp")));
        if (selvedge && cloth.selvedge().isPresent()) {
            keys.add(new PlanKey("selvedge", words.say("plan.selvedge")));
        }
        if (!cloth.flaws().isEmpty()) {
            keys.add(new PlanKey("flaw", words.say("plan.flaw")));
        }
        if (!cloth.edgeCuts().isEmpty()) {
            keys.add(new PlanKey("cut", words.say("plan.cut-beside", 1)));
        }
        return keys;
    }

    /** How high the signs come out, in as many equal columns as there is room for. */
    private double keysMm(List<PlanKey> keys) {
        TypeScale type = settings.type();
        double widestMm = SIGN_MM + keys.stream()
                .mapToDouble(key -> settings.ruler().widthMm(key.words(), "text", 400, type.table())).max().orElse(0);
        int across = Math.max(1, (int) ((innerMm + APART_MM) / (widestMm + APART_MM)));
        return Math.ceil((double) keys.size() / across) * Math.max(SIGN_HIGH_MM, type.lineMm(type.table()));
    }

    /** What explains a drawing. */
    private List<PlanRow> explained(PlannedCloth cloth, PlanDrawing drawing) {
        List<PlanRow> rows = new ArrayList<>();
        rows.add(PlanRow.note(words.say(drawing.zigzag().isEmpty() ? "plan.legend" : "plan.legend-broken", drawing.scale())));
        if (cloth.selvedge().isPresent() && drawing.selvedge().isEmpty()) {
            rows.add(PlanRow.note(words.say("plan.selvedge-beyond")));
        }
        if (drawing.numbersMissing()) {
            rows.add(PlanRow.note(words.say("plan.legend-numbers")));
        }
        if (drawing.piecesMissing()) {
            rows.add(PlanRow.note(words.say("plan.legend-pieces")));
        }
        if (drawing.flawsMissing()) {
            rows.add(PlanRow.note(words.say("plan.legend-flaws")));
        }
        return rows;
    }

    /** How to cut a cloth, what comes off and what is left. */
    private List<PlanRow> steps(PlannedCloth cloth) {
        List<CutStep> steps = cloth.steps();
        List<PlanRow> rows = new ArrayList<>();
        rows.add(PlanRow.section(words.say("plan.steps")));
        rows.add(PlanRow.note(words.say("plan.before", phrases.kerf(cloth, basket.clothSupply().cutting().frayMm()))));
        if (steps.isEmpty()) {
            rows.add(PlanRow.note(words.say("plan.no-cut")));
        }
        for (CutStep step : steps) {
            rows.add(PlanRow.step(Integer.toString(step.cut().number()), phrases.step(step, cloth), phrases.where(step.cut())));
        }
        rows.add(PlanRow.section(words.say("plan.pieces")));
        for (PlannedCut cut : cloth.cuts()) {
            rows.add(PlanRow.item(true, Integer.toString(cut.number()), cut.piece().piece().title(), clothWords.cutSize(cut.widthMm(),
                    cut.heightMm()), below(cut)));
        }
        if (!cloth.remnants().isEmpty()) {
            rows.add(PlanRow.section(words.say("plan.remnants")));
            for (int i = 0; i < cloth.remnants().size(); i++) {
                Remnant left = cloth.remnants().get(i);
                rows.add(PlanRow.item(false, PlanWords.letter(i), words.say(left.usable() ? "plan.keep" : "plan.scrap"),
                        phrases.leftSize(left), ""));
            }
        }
        rows.add(PlanRow.note(phrases.proof(cloth.proof())));
        return rows;
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

    private List<PlanRow> overview() {
        List<PlanRow> rows = new ArrayList<>();
        buy(rows);
        if (!plan.cloths().isEmpty()) {
            rows.add(PlanRow.section(words.say("plan.cloths")));
            for (PlannedCloth cloth : plan.cloths()) {
                String pieces = phrases.first(cloth.cuts().stream().map(cut -> cut.piece().piece().title()).toList());
                rows.add(PlanRow.item(false, "", clothWords.title(cloth, plan.cloths()), clothWords.size(cloth),
                        words.say("plan.for", clothWords.weave(cloth.kind(), cloth.count()), pieces, phrases.left(cloth))));
            }
        }
        if (!plan.unplaced().isEmpty()) {
            rows.add(PlanRow.section(words.say("plan.unplaced")));
            for (PieceReckoning piece : plan.unplaced()) {
                rows.add(PlanRow.item(false, "", piece.piece().title(), phrases.needed(piece.cloth().size()),
                        words.say("plan.unplaced-below",
                        clothWords.cloth(piece.piece().cloth().name(), piece.piece().cloth().kind(), piece.piece().cloth().count()),
                        words.say(piece.piece().cloth().warp() == Cloth.WarpRun.DOWN ? "plan.warp-down" : "plan.warp-across"))));
            }
        }
        if (!plan.untouched().isEmpty()) {
            rows.add(PlanRow.section(words.say("plan.untouched")));
            for (ClothOnHand cloth : plan.untouched()) {
                rows.add(PlanRow.item(false, "", cloth.name(), clothWords.size(cloth.widthMm(), cloth.heightMm()),
                        clothWords.weave(cloth.kind(), cloth.count())));
            }
        }
        if (!plan.nearMisses().isEmpty()) {
            rows.add(PlanRow.section(words.say("plan.near")));
            plan.nearMisses().forEach(miss -> rows.add(PlanRow.note(phrases.nearMiss(miss))));
        }
        leftOut(rows);
        rows.add(PlanRow.section(words.say("plan.cautions")));
        Stream.of("plan.caution-count", "plan.caution-square", "plan.caution-measure", "plan.caution-wash", "plan.caution-blade")
                .forEach(key -> rows.add(PlanRow.note(words.say(key))));
        return rows;
    }

    private void buy(List<PlanRow> rows) {
        rows.add(PlanRow.section(words.say("plan.buy")));
        if (plan.buy().isEmpty()) {
            rows.add(PlanRow.note(words.say(plan.unplaced().isEmpty() ? "plan.buy-nothing" : "plan.buy-none")));
            return;
        }
        for (Purchase purchase : plan.buy()) {
            rows.add(PlanRow.item(true, "", phrases.purchase(purchase), purchase.cost().map(phrases::money).orElse(""),
                    phrases.purchaseBelow(purchase)));
        }
        plan.cost().ifPresent(cost -> {
            rows.add(PlanRow.sum(words.say("buy.total"), phrases.money(cost)));
            List<String> unpriced = plan.buy().stream().filter(it -> it.cost().isEmpty()).map(it -> it.cut().name()).distinct().toList();
            if (!unpriced.isEmpty()) {
                rows.add(PlanRow.note(words.say("plan.no-price", phrases.list(unpriced))));
            }
        });
        ClothSupply supply = basket.clothSupply();
        if (!supply.cutsGiven()) {
            rows.add(PlanRow.note(words.say("plan.usual-cuts", phrases.list(supply.cuts().stream().map(ClothCut::name).toList()))));
        }
    }

    /** Names the pieces that are not planned, and why. */
    private void leftOut(List<PlanRow> rows) {
        List<Piece> out = reckoning.pieces().stream().filter(PieceReckoning::cutAlready).map(PieceReckoning::piece).toList();
        if (out.isEmpty()) {
            return;
        }
        rows.add(PlanRow.section(words.say("plan.left-out")));
        Map<Boolean, List<Piece>> finished = out.stream().collect(Collectors.partitioningBy(piece -> piece.progress().finished()
                .isPresent()));
        Map<Boolean, List<Piece>> cut = finished.get(false).stream().collect(Collectors.partitioningBy(piece -> piece.cloth().cut()));
        leftOut(rows, "plan.left-out-begun", cut.get(false));
        leftOut(rows, "plan.left-out-cut", cut.get(true));
        leftOut(rows, "plan.left-out-finished", finished.get(true));
    }

    private void leftOut(List<PlanRow> rows, String key, List<Piece> pieces) {
        if (!pieces.isEmpty()) {
            rows.add(PlanRow.note(words.say(key, phrases.first(pieces.stream().map(Piece::title).toList()))));
        }
    }
}
