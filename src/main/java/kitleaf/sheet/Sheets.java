package kitleaf.sheet;

import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.LabelStock;
import kitleaf.basket.Paper;
import kitleaf.basket.place.Problem;
import kitleaf.basket.reader.Misfits;
import kitleaf.sheet.cut.CutSheetLayout;
import kitleaf.sheet.diary.LookBackLayout;
import kitleaf.sheet.diary.PieceListLayout;
import kitleaf.sheet.duplex.DuplexCheckLayout;
import kitleaf.sheet.goal.GoalGridLayout;
import kitleaf.sheet.label.LabelLayout;
import kitleaf.sheet.list.BuyListLayout;
import kitleaf.sheet.list.KitListLayout;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.plan.ClothPlanLayout;
import kitleaf.sheet.tag.TagLayout;
import kitleaf.sizing.Reckoning;

/** Lays out sheets. */
public final class Sheets {

    private static final double LARGE_WIDTH_MM = 148;
    private static final double LARGE_HEIGHT_MM = 200;

    private Sheets() { }

    /** Whether a sheet is worth printing for a basket that did not ask for it: a cloth plan is for those who write of cloth. */
    public static boolean worthwhile(SheetKind kind, Basket basket) {
        return kind != SheetKind.CLOTH_PLAN || basket.clothSupply().told();
    }

    /**
     * Whether paper has room for large print between a page's head and foot, which take some 95 mm of its height: at least as
     * large as A5, upright (found by laying out).
     */
    public static boolean holdLargePrint(Paper paper) {
        return paper.widthMm() >= LARGE_WIDTH_MM && paper.heightMm() >= LARGE_HEIGHT_MM;
    }

    /** What the basket asks of a sheet that has no room for it: labels or tags of a size, goal cards in a grid. */
    public static Optional<Problem> misfit(SheetKind kind, Reckoning reckoning, SheetSettings settings, Misfits misfits,
            Misfits.Cause cause) {
        return switch (kind) {
            case BOBBIN_LABELS -> LabelLayout.misfit(reckoning.basket(), settings, misfits, cause);
            case BAG_TAGS -> TagLayout.misfit(reckoning.basket(), settings, misfits, cause);
            case GOAL_GRID -> GoalGridLayout.misfit(reckoning, settings, misfits, cause);
            default -> Optional.empty();
        };
    }

    /** How many label places a sheet has; 0 where large print leaves no room for one on the basket's plain paper. */
    public static int labelPlaces(Basket basket, SheetSettings settings) {
        return LabelLayout.stock(basket, settings).map(LabelStock::perSheet).orElse(0);
    }

    /** The sheet of one kind for a whole basket, laid out for one paper. */
    public static Sheet layOut(SheetKind kind, Reckoning reckoning, SheetSettings settings) {
        Sheet sheet = switch (kind) {
            case CUT_SHEETS -> CutSheetLayout.layOut(reckoning, settings);
            case CLOTH_PLAN -> ClothPlanLayout.layOut(reckoning, settings);
            case BOBBIN_LABELS -> LabelLayout.layOut(reckoning, settings);
            case KIT_LISTS -> KitListLayout.layOut(reckoning, settings);
            case BAG_TAGS -> TagLayout.layOut(reckoning, settings);
            case GOAL_GRID -> GoalGridLayout.layOut(reckoning, settings);
            case PIECE_LIST -> PieceListLayout.layOut(reckoning, settings);
            case LOOK_BACK -> LookBackLayout.layOut(reckoning, settings);
            case DUPLEX_CHECK -> DuplexCheckLayout.layOut(reckoning, settings);
            case BUY_LIST -> BuyListLayout.layOut(reckoning, settings);
        };
        // Every template and the parts it includes take their sizes from here, and ask here what has room.
        return sheet.with("type", settings.type()).with("ruler", settings.ruler());
    }
}
