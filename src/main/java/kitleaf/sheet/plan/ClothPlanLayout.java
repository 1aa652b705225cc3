package kitleaf.sheet.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
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
 * Lays out the cloth plan: a first page with all that is cut, bought and left out, then for each cloth its drawing, the
 * steps and what comes off. A basket with nothing to cut has none.
 */
public final class ClothPlanLayout {

    private static final double TOP_MM = 43;
    /** What the heading shrinks titles to. */
    private static final double LEAST_TITLE_PT = 11;
    private static final double GAP_MM = 4;
    private static final double COLUMN_GAP_MM = 12;
    /** From this width on, words stand in two columns. */
    private static final double TWO_COLUMNS_MM = 240;
    /** Kept free below a drawing for the note that explains it. */
    private static final double LEGEND_MM = 14;
    /** Less room than this beside a drawing is left empty. */
    private static final double LEAST_BESIDE_MM = 58;
    /** So many times smaller a drawing may be for the sake of one page. */
    private static final double MOST_SMALLER = 2;
    /** Forgives the last bits of adding heights up. */
    private static final double SLACK_MM = 1e-6;

    private final Reckoning reckoning;
    private final Basket basket;
    private final ClothPlan plan;
    private final SheetSettings settings;
    private final Words words;
    private final PlanWords phrases;
    private final ClothWords clothWords;
    private final double innerMm;
    private final int columns;
    private final double columnMm;
    private final double bottomMm;

    /** A page before it knows its number. */
    private record Draft(String bookmark, String title, String subtitle, PlanDrawing drawing, List<PlanRow> rows) { }

    private ClothPlanLayout(Reckoning reckoning, SheetSettings settings) {
        this.reckoning = reckoning;
        this.basket = reckoning.basket();
        this.plan = reckoning.clothPlan();
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.phrases = new PlanWords(words, settings.units());
        this.clothWords = new ClothWords(words, new Figures(settings.units(), words));
        this.innerMm = settings.paper().widthMm() - 2 * Frames.MARGIN_MM;
        this.columns = innerMm >= TWO_COLUMNS_MM ? 2 : 1;
        this.columnMm = (innerMm - (columns - 1) * COLUMN_GAP_MM) / columns;
        this.bottomMm = settings.paper().heightMm() - Frames.FOOT_MM - 2;
    }

    /** The cloth plan of a basket; no pages where nothing is to be cut. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return reckoning.clothPlan().isEmpty() ? new Sheet(SheetKind.CLOTH_PLAN, 0, Map.of()) : new ClothPlanLayout(reckoning, settings).layOut();
    }

    private Sheet layOut() {
        Frames frames = new Frames(basket, settings, words, words.say("plan.name"));
        return sheet(settings.type().large() ? large(frames) : ordinary(frames));
    }

    private Sheet sheet(List<ClothPlanPage> pages) {
        return new Sheet(SheetKind.CLOTH_PLAN, pages.size(), Map.of(
                "title", basket.title() + ": " + words.say("plan.name"),
                "subject", words.say("plan.subject"),
                "language", settings.language().toLanguageTag(),
                "sizes", PlanType.all(),
                "pages", pages));
    }

    private List<ClothPlanPage> large(Frames frames) {
        LargeClothPlan large = new LargeClothPlan(settings, words, phrases, frames);
        large.words(words.say("plan.title"), true, overviewSubtitle(), overview());
        for (PlannedCloth cloth : plan.cloths()) {
            String title = clothWords.title(cloth, plan.cloths());
            PlanDrawing drawing = large.drawing(title, cloth);
            large.words(title, false, phrases.subtitle(cloth, false), rows(cloth, drawing, innerMm, steps(cloth, cloth.steps(), innerMm)));
        }
        return large.pages();
    }

    private List<ClothPlanPage> ordinary(Frames frames) {
        String title = words.say("plan.title");
        List<PlanRow> overview = overview();
        List<Draft> drafts = new ArrayList<>(flow(title, overviewSubtitle(), null, widthMm -> overview));
        plan.cloths().forEach(cloth -> drafts.addAll(pages(cloth)));
        List<ClothPlanPage> pages = new ArrayList<>();
        for (Draft draft : drafts) {
            pages.add(new ClothPlanPage(frames.of(pages.size() + 1, drafts.size()), draft.bookmark(), draft.title(), draft.subtitle(), draft.drawing(), draft.rows(), null, List.of()));
        }
        return pages;
    }

    /** A place on a page to be filled with rows. */
    private record Area(double xMm, double topMm, double widthMm) { }

    /** Where rows stand on a page without a drawing: its columns. */
    private List<Area> columns(double topMm) {
        List<Area> areas = new ArrayList<>();
        for (int column = 0; column < columns; column++) {
            areas.add(new Area(Frames.MARGIN_MM + column * (columnMm + COLUMN_GAP_MM), topMm, columnMm));
        }
        return areas;
    }

    /** Where rows stand on a page with a drawing: beside it, or below it. */
    private List<Area> around(PlanDrawing drawing) {
        double besideXMm = drawing.rightMm() + GAP_MM;
        double besideMm = Frames.MARGIN_MM + innerMm - besideXMm;
        double belowMm = TOP_MM + drawing.heightMm() + GAP_MM;
        if (besideMm >= LEAST_BESIDE_MM && (bottomMm - TOP_MM) * besideMm > (bottomMm - belowMm) * innerMm) {
            return List.of(new Area(besideXMm, TOP_MM, besideMm));
        }
        return columns(belowMm);
    }

    /** The rows of each width, set once however many pages ask for them. */
    private static DoubleFunction<List<PlanRow>> once(DoubleFunction<List<PlanRow>> rows) {
        Map<Double, List<PlanRow>> known = new HashMap<>();
        return widthMm -> known.computeIfAbsent(widthMm, rows::apply);
    }

    /** Pages with rows in their areas; the rows of each width are alike but for their heights. */
    private List<Draft> flow(String title, String subtitle, PlanDrawing drawing, DoubleFunction<List<PlanRow>> set) {
        DoubleFunction<List<PlanRow>> rowsOf = once(set);
        List<Draft> pages = new ArrayList<>();
        int count = rowsOf.apply(columnMm).size();
        int next = 0;
        while (pages.isEmpty() || next < count) {
            boolean first = pages.isEmpty();
            List<PlanRow> placed = new ArrayList<>();
            for (Area area : first && drawing != null ? around(drawing) : columns(TOP_MM)) {
                List<PlanRow> rows = rowsOf.apply(area.widthMm());
                double yMm = area.topMm();
                // A row higher than its page stands alone and runs over; there is none as long as names have an end.
                while (next < count && (yMm + together(rows, next) <= bottomMm + SLACK_MM || yMm == TOP_MM)) {
                    placed.add(rows.get(next).at(area.xMm(), yMm));
                    yMm += rows.get(next).heightMm();
                    next++;
                }
            }
            pages.add(new Draft(first ? title : "", heading(title, first), subtitle, first ? drawing : null, placed));
        }
        return pages;
    }

    private String heading(String title, boolean first) {
        return first ? title : words.say("kit.continued", title);
    }

    /** The height of a row; of a heading with its notes, up to the first row that is neither. */
    private static double together(List<PlanRow> rows, int at) {
        double heightMm = rows.get(at).heightMm();
        boolean heading = rows.get(at).kind().equals("section");
        for (int next = at + 1; heading && next < rows.size(); next++) {
            heightMm += rows.get(next).heightMm();
            heading = rows.get(next).kind().equals("note") && next == at + 1;
        }
        return heightMm;
    }

    /** A cloth's pages: as few as can be where that does not make the drawing much smaller, and the drawing as large as it then can be. */
    private List<Draft> pages(PlannedCloth cloth) {
        List<CutStep> steps = cloth.steps();
        DoubleFunction<List<PlanRow>> below = once(widthMm -> steps(cloth, steps, widthMm));
        PlanDrawing largest = drawing(cloth, 1);
        List<Draft> fewest = pages(cloth, largest, below);
        for (PlanDrawing smaller = largest; fewest.size() > 1 && smaller.one() <= MOST_SMALLER * largest.one(); smaller = drawing(cloth, smaller.one() + 0.1)) {
            List<Draft> pages = pages(cloth, smaller, below);
            if (smaller.leaders().size() > largest.leaders().size() || smaller.numbersMissing() && !largest.numbersMissing()) {
                break;
            }
            if (pages.size() < fewest.size()) {
                fewest = pages;
            }
        }
        return fewest;
    }

    private PlanDrawing drawing(PlannedCloth cloth, double atLeast) {
        return PlanDrafting.of(cloth, new Box(Frames.MARGIN_MM, TOP_MM, innerMm, bottomMm - TOP_MM - LEGEND_MM), atLeast, settings, words, phrases);
    }

    private List<Draft> pages(PlannedCloth cloth, PlanDrawing drawing, DoubleFunction<List<PlanRow>> below) {
        String title = clothWords.title(cloth, plan.cloths());
        // A long title that names shop cut and cloth gives the cloth's name to the line below.
        boolean tooLong = cloth.bought() && settings.ruler().widthMm(heading(title, false), "heading", 500, LEAST_TITLE_PT) > innerMm;
        return flow(tooLong ? cloth.name() : title, phrases.subtitle(cloth, tooLong), drawing, widthMm -> rows(cloth, drawing, widthMm, below.apply(widthMm)));
    }

    /** What explains a drawing, and then the rest. */
    private List<PlanRow> rows(PlannedCloth cloth, PlanDrawing drawing, double widthMm, List<PlanRow> rest) {
        PlanRows rows = new PlanRows(settings.ruler(), widthMm);
        rows.note(words.say(drawing.zigzag().isEmpty() ? "plan.legend" : "plan.legend-broken", drawing.scale()));
        if (cloth.selvedge().isPresent() && drawing.selvedge().isEmpty()) {
            rows.note(words.say("plan.selvedge-beyond"));
        }
        if (drawing.numbersMissing()) {
            rows.note(words.say("plan.legend-numbers"));
        }
        if (drawing.piecesMissing()) {
            rows.note(words.say("plan.legend-pieces"));
        }
        if (drawing.flawsMissing()) {
            rows.note(words.say("plan.legend-flaws"));
        }
        return Stream.concat(rows.rows().stream(), rest.stream()).toList();
    }

    /** How to cut a cloth, what comes off and what is left. */
    private List<PlanRow> steps(PlannedCloth cloth, List<CutStep> steps, double widthMm) {
        PlanRows rows = new PlanRows(settings.ruler(), widthMm);
        rows.section(words.say("plan.steps"));
        rows.note(words.say("plan.before", phrases.kerf(cloth, basket.clothSupply().cutting().frayMm())));
        if (steps.isEmpty()) {
            rows.note(words.say("plan.no-cut"));
        }
        for (CutStep step : steps) {
            rows.step(Integer.toString(step.cut().number()), phrases.step(step, cloth), phrases.where(step.cut()));
        }
        rows.section(words.say("plan.pieces"));
        for (PlannedCut cut : cloth.cuts()) {
            rows.item(true, Integer.toString(cut.number()), cut.piece().piece().title(), clothWords.cutSize(cut.widthMm(),
                    cut.heightMm()), below(cut));
        }
        if (!cloth.remnants().isEmpty()) {
            rows.section(words.say("plan.remnants"));
            for (int i = 0; i < cloth.remnants().size(); i++) {
                Remnant left = cloth.remnants().get(i);
                rows.item(false, PlanWords.letter(i), words.say(left.usable() ? "plan.keep" : "plan.scrap"), phrases.leftSize(left), "");
            }
        }
        rows.note(phrases.proof(cloth.proof()));
        return rows.rows();
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
        PlanRows rows = new PlanRows(settings.ruler(), columnMm);
        buy(rows);
        if (!plan.cloths().isEmpty()) {
            rows.section(words.say("plan.cloths"));
            for (PlannedCloth cloth : plan.cloths()) {
                String pieces = phrases.first(cloth.cuts().stream().map(cut -> cut.piece().piece().title()).toList());
                rows.item(false, "", clothWords.title(cloth, plan.cloths()), clothWords.size(cloth),
                        words.say("plan.for", clothWords.weave(cloth.kind(), cloth.count()), pieces, phrases.left(cloth)));
            }
        }
        if (!plan.unplaced().isEmpty()) {
            rows.section(words.say("plan.unplaced"));
            for (PieceReckoning piece : plan.unplaced()) {
                rows.item(false, "", piece.piece().title(), phrases.needed(piece.cloth().size()), words.say("plan.unplaced-below",
                        clothWords.cloth(piece.piece().cloth().name(), piece.piece().cloth().kind(), piece.piece().cloth().count()),
                        words.say(piece.piece().cloth().warp() == Cloth.WarpRun.DOWN ? "plan.warp-down" : "plan.warp-across")));
            }
        }
        if (!plan.untouched().isEmpty()) {
            rows.section(words.say("plan.untouched"));
            for (ClothOnHand cloth : plan.untouched()) {
                rows.item(false, "", cloth.name(), clothWords.size(cloth.widthMm(), cloth.heightMm()), clothWords.weave(cloth.kind(), cloth.count()));
            }
        }
        if (!plan.nearMisses().isEmpty()) {
            rows.section(words.say("plan.near"));
            plan.nearMisses().forEach(miss -> rows.note(phrases.nearMiss(miss)));
        }
        leftOut(rows);
        rows.section(words.say("plan.cautions"));
        Stream.of("plan.caution-count", "plan.caution-square", "plan.caution-measure", "plan.caution-wash", "plan.caution-blade")
                .forEach(key -> rows.note(words.say(key)));
        return rows.rows();
    }

    private void buy(PlanRows rows) {
        rows.section(words.say("plan.buy"));
        if (plan.buy().isEmpty()) {
            rows.note(words.say(plan.unplaced().isEmpty() ? "plan.buy-nothing" : "plan.buy-none"));
            return;
        }
        for (Purchase purchase : plan.buy()) {
            rows.item(true, "", phrases.purchase(purchase), purchase.cost().map(phrases::money).orElse(""), phrases.purchaseBelow(purchase));
        }
        plan.cost().ifPresent(cost -> {
            rows.sum(words.say("buy.total"), phrases.money(cost));
            List<String> unpriced = plan.buy().stream().filter(it -> it.cost().isEmpty()).map(it -> it.cut().name()).distinct().toList();
            if (!unpriced.isEmpty()) {
                rows.note(words.say("plan.no-price", phrases.list(unpriced)));
            }
        });
        ClothSupply supply = basket.clothSupply();
        if (!supply.cutsGiven()) {
            rows.note(words.say("plan.usual-cuts", phrases.list(supply.cuts().stream().map(ClothCut::name).toList())));
        }
    }

    /** Names the pieces that are not planned, and why. */
    private void leftOut(PlanRows rows) {
        List<Piece> out = reckoning.pieces().stream().filter(PieceReckoning::cutAlready).map(PieceReckoning::piece).toList();
        if (out.isEmpty()) {
            return;
        }
        rows.section(words.say("plan.left-out"));
        Map<Boolean, List<Piece>> finished = out.stream().collect(Collectors.partitioningBy(piece -> piece.progress().finished().isPresent()));
        Map<Boolean, List<Piece>> cut = finished.get(false).stream().collect(Collectors.partitioningBy(piece -> piece.cloth().cut()));
        leftOut(rows, "plan.left-out-begun", cut.get(false));
        leftOut(rows, "plan.left-out-cut", cut.get(true));
        leftOut(rows, "plan.left-out-finished", finished.get(true));
    }

    private void leftOut(PlanRows rows, String key, List<Piece> pieces) {
        if (!pieces.isEmpty()) {
            rows.note(words.say(key, phrases.first(pieces.stream().map(Piece::title).toList())));
        }
    }
}
