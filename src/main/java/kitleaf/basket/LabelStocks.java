package kitleaf.basket;

import java.util.Optional;

/** Knows how plain paper is parted into labels. */
public final class LabelStocks {

    /** What is left blank at the top and both sides of plain paper, where many printers cannot print. */
    public static final double MARGIN_MM = 10;

    /** What is left below for the check bars and the signature. */
    public static final double FOOT_MM = 24;

    private static final double USUAL_WIDTH_MM = 63;
    private static final double USUAL_HEIGHT_MM = 25;

    private LabelStocks() {
    }

    /**
     * The stock used when the basket names none: plain paper cut into wrap labels of 63 mm x 25 mm. Folded in half
     * a label covers 31.5 mm by 25 mm of each face, so that it does not stand over a bobbin about 34 mm wide
     * (common practice, no source). The size wastes little of the usual sheets: inside its margins it gives
     * 3 columns x 10 rows on A4 and 3 x 9 on letter. Every {@link Paper} holds at least 2 x 4.
     */
    public static LabelStock usual(Paper paper) {
        return cut(paper, USUAL_WIDTH_MM, USUAL_HEIGHT_MM, LabelStock.Style.WRAP).orElseThrow();
    }

    /** Labels cut from plain paper with a foot of {@value #FOOT_MM} mm; nothing if there is no room for one. */
    public static Optional<LabelStock> cut(Paper paper, double widthMm, double heightMm, LabelStock.Style style) {
        return cut(paper, widthMm, heightMm, style, FOOT_MM);
    }

    /**
     * Labels cut from plain paper: edge to edge, as many as margins of {@value #MARGIN_MM} mm and a foot leave room for, centred between
     * the sides and starting below the top margin. Nothing if there is no room for one.
     *
     * @param widthMm of a label, above 0
     * @param heightMm of a label, above 0
     * @param footMm what is left below for the check bars and the signature
     */
    public static Optional<LabelStock> cut(Paper paper, double widthMm, double heightMm, LabelStock.Style style, double footMm) {
        int columns = fitting(roomAcrossMm(paper), widthMm);
        int rows = fitting(paper.heightMm() - MARGIN_MM - footMm, heightMm);
        if (columns < 1 || rows < 1) {
            return Optional.empty();
        }
        double firstXMm = (paper.widthMm() - columns * widthMm) / 2;
        double firstYMm = MARGIN_MM;
        return Optional.of(new LabelStock(paper, columns, rows, widthMm, heightMm, firstXMm, firstYMm, widthMm, heightMm,
                LabelStock.Shape.RECTANGLE, true, style));
    }

    /** How much of a sheet's width the margins leave. */
    public static double roomAcrossMm(Paper paper) {
        return paper.widthMm() - 2 * MARGIN_MM;
    }

    /** How much of its height the margin and the foot leave. */
    public static double roomDownMm(Paper paper) {
        return paper.heightMm() - MARGIN_MM - FOOT_MM;
    }

    private static int fitting(double roomMm, double labelMm) {
        return (int) Math.floor((roomMm + LabelStock.SLACK_MM) / labelMm);
    }
}
