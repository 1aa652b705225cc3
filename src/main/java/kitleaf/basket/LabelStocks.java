package kitleaf.basket;

import java.util.Optional;

/** Knows how plain paper is parted into labels. */
public final class LabelStocks {

    /** What is left blank along each edge of plain paper, where many printers cannot print. */
    static final double MARGIN_MM = 10;

    private static final double USUAL_WIDTH_MM = 63;
    private static final double USUAL_HEIGHT_MM = 25;

    private LabelStocks() {
    }

    /**
     * The stock used when the basket names none: plain paper cut into wrap labels of 63 mm x 25 mm. Folded in half
     * a label covers 31.5 mm by 25 mm of each face, so that it does not stand over a bobbin about 34 mm wide
     * (common practice, no source). The size wastes little of the usual sheets: inside margins of 10 mm it gives
     * 3 columns x 11 rows on A4 and 3 x 10 on letter. Every {@link Paper} holds at least 2 x 5.
     */
    public static LabelStock usual(Paper paper) {
        return cut(paper, USUAL_WIDTH_MM, USUAL_HEIGHT_MM, LabelStock.Style.WRAP).orElseThrow();
    }

    /**
     * Labels cut from plain paper: edge to edge, as many as margins of {@value #MARGIN_MM} mm leave room for, the whole
     * centred on the sheet. Nothing if there is no room for one.
     *
     * @param widthMm of a label, above 0
     * @param heightMm of a label, above 0
     */
    static Optional<LabelStock> cut(Paper paper, double widthMm, double heightMm, LabelStock.Style style) {
        int columns = fitting(paper.widthMm(), widthMm);
        int rows = fitting(paper.heightMm(), heightMm);
        if (columns < 1 || rows < 1) {
            return Optional.empty();
        }
        double firstXMm = (paper.widthMm() - columns * widthMm) / 2;
        double firstYMm = (paper.heightMm() - rows * heightMm) / 2;
        return Optional.of(new LabelStock(paper, columns, rows, widthMm, heightMm, firstXMm, firstYMm, widthMm, heightMm,
                LabelStock.Shape.RECTANGLE, true, style));
    }

    /** How much of a sheet's side the margins leave. */
    static double roomMm(double sheetMm) {
        return sheetMm - 2 * MARGIN_MM;
    }

    private static int fitting(double sheetMm, double labelMm) {
        return (int) Math.floor((roomMm(sheetMm) + LabelStock.SLACK_MM) / labelMm);
    }
}
