package kitleaf.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import kitleaf.basket.Cloth;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.LargePage;
import kitleaf.sheet.page.Masthead;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.Passage;
import kitleaf.sheet.page.Passages;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TypeScale;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.words.Words;

/**
 * Gathers the pages of a cloth plan in large print: all words flow down pages of their own, so that each cloth's drawing has a
 * page to itself, with numbers and letters alone in it.
 */
final class LargeClothPlan {

    private static final double SIGN_MM = 10;
    private static final double ARROW_DOWN_MM = 2.5;
    private static final double CUT_MM = 5;
    private static final double SIGN_GAP_MM = 2;
    /** Between two signs on one line. */
    private static final double APART_MM = 8;
    /** From line to line of them. */
    private static final double KEYS_MM = 8;
    private static final double GAP_MM = 3;
    private static final double WIDEST_SCALE = 888;

    private final SheetSettings settings;
    private final Words words;
    private final PlanWords phrases;
    private final ClothWords clothWords;
    private final Frames frames;
    private final Passages set;
    private final double innerMm;
    private final List<Draft> drafts = new ArrayList<>();

    /** A page before it knows its number. */
    private record Draft(LargePage page, PlanDrawing drawing, List<PlanKey> keys) { }

    LargeClothPlan(SheetSettings settings, Words words, PlanWords phrases, Frames frames) {
        this.settings = settings;
        this.words = words;
        this.phrases = phrases;
        this.clothWords = new ClothWords(words, new Figures(settings.units(), words));
        this.frames = frames;
        this.innerMm = settings.paper().widthMm() - 2 * Frames.MARGIN_MM;
        this.set = new Passages(settings.type(), settings.ruler(), Frames.MARGIN_MM, innerMm);
    }

    /** Adds pages with all that some rows say. */
    void words(String title, boolean begins, String below, List<PlanRow> rows) {
        List<Passage> passages = rows.stream().flatMap(row -> passages(row).stream()).toList();
        String continued = words.say("kit.continued", title);
        Masthead first = frames.head(words.say("plan.eyebrow"), begins ? title : continued, below, true);
        Masthead next = frames.head(words.say("plan.eyebrow"), continued, "", false);
        LargePage.flow(frames.of(0, 0), first, next, begins ? title : "", passages).forEach(page -> drafts.add(new Draft(page, null, List.of())));
    }

    private List<Passage> passages(PlanRow row) {
        return switch (row.kind()) {
            case "section" -> List.of(set.section(row.name()));
            case "note" -> set.paragraph(row.name(), set.text());
            case "sum" -> List.of(set.pair(row.name(), row.right()));
            default -> set.marked(row.tick(), row.mark(), row.name(), row.right(), row.below(), row.kind().equals("step") ? set.text() : set.bold());
        };
    }

    /** Adds the page of a cloth's drawing, as large as the page lets it be. */
    PlanDrawing drawing(String title, PlannedCloth cloth) {
        Masthead head = frames.head(words.say("plan.eyebrow"), title, "", true);
        PageFrame frame = frames.of(0, 0);
        double keysMm = keysBottom(keys(cloth, true, 0));
        // As wide as the scale's words may become.
        double captionMm = height(caption(cloth, phrases.scale(new PlanScale(WIDEST_SCALE))));
        Box room = new Box(Frames.MARGIN_MM, head.bottomMm(), innerMm, frame.foot().topMm() - head.bottomMm() - keysMm - GAP_MM - captionMm);
        PlanDrawing drawing = PlanDrafting.of(cloth, room, 1, settings, words, phrases);
        double keysTopMm = room.yMm() + drawing.heightMm() + GAP_MM;
        List<PlanKey> keys = keys(cloth, !drawing.selvedge().isEmpty(), keysTopMm);
        List<Passage> caption = new ArrayList<>();
        double yMm = keysBottom(keys);
        for (Passage passage : caption(cloth, drawing.scale())) {
            caption.add(passage.at(yMm));
            yMm += passage.heightMm();
        }
        drafts.add(new Draft(new LargePage(frame, title, head, caption), drawing, keys));
        return drawing;
    }

    private List<Passage> caption(PlannedCloth cloth, String scale) {
        return set.paragraph(clothWords.size(cloth) + " · " + words.say("plan.scale", scale), set.small());
    }

    private static double height(List<Passage> passages) {
        return passages.stream().mapToDouble(Passage::heightMm).sum();
    }

    /** The signs below a drawing, on as many lines as they take. */
    private List<PlanKey> keys(PlannedCloth cloth, boolean selvedge, double topMm) {
        List<PlanKey> keys = new ArrayList<>();
        boolean down = cloth.warp() == Cloth.WarpRun.DOWN;
        add(keys, down ? "warp-down" : "warp-across", down ? ARROW_DOWN_MM : SIGN_MM, words.say("guide.warp"), topMm);
        if (selvedge && cloth.selvedge().isPresent()) {
            add(keys, "selvedge", SIGN_MM, words.say("plan.selvedge"), topMm);
        }
        if (!cloth.flaws().isEmpty()) {
            add(keys, "flaw", SIGN_MM, words.say("plan.flaw"), topMm);
        }
        if (!cloth.edgeCuts().isEmpty()) {
            add(keys, "cut", CUT_MM, words.say("plan.cut-beside", 1), topMm);
        }
        return keys;
    }

    private void add(List<PlanKey> keys, String kind, double signMm, String said, double topMm) {
        double xMm = Frames.MARGIN_MM;
        double yMm = topMm + TypeScale.mm(settings.type().table());
        if (!keys.isEmpty()) {
            PlanKey last = keys.get(keys.size() - 1);
            xMm = last.wordsXMm() + width(last.words()) + APART_MM;
            yMm = last.yMm();
            if (xMm + signMm + SIGN_GAP_MM + width(said) > Frames.MARGIN_MM + innerMm) {
                xMm = Frames.MARGIN_MM;
                yMm += KEYS_MM;
            }
        }
        keys.add(new PlanKey(kind, xMm, xMm + signMm + SIGN_GAP_MM, yMm, said));
    }

    private double width(String said) {
        return settings.ruler().widthMm(said, "text", 400, settings.type().table());
    }

    private double keysBottom(List<PlanKey> keys) {
        return keys.get(keys.size() - 1).yMm() + KEYS_MM - TypeScale.mm(settings.type().table());
    }

    /** All pages so far, numbered. */
    List<ClothPlanPage> pages() {
        List<ClothPlanPage> pages = new ArrayList<>();
        for (Draft draft : drafts) {
            LargePage page = draft.page().in(frames.of(pages.size() + 1, drafts.size()));
            pages.add(new ClothPlanPage(page.frame(), page.bookmark(), page.head().title(), page.head().below(), draft.drawing(), List.of(), page, draft.keys()));
        }
        return pages;
    }
}
