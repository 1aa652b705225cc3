package kitleaf.sheet.label;

import java.util.List;
import java.util.stream.IntStream;
import kitleaf.basket.LabelStock;
import kitleaf.sheet.page.Box;
import kitleaf.sizing.label.CutLines;
import kitleaf.sizing.label.LabelSheets;

/**
 * Where labels lie on their sheets.
 *
 * @param columns labels side by side
 * @param skip places of the first sheet that are used already
 * @param faceWidthMm of a face: half a label where it is folded round a bobbin, else all of it
 * @param faceHeightMm of a face
 * @param upright whether a label is folded along an upright line in its middle
 * @param level whether it is folded along a level one; then its back stands on its head, above its front
 * @param round whether labels are round
 * @param plain whether this is plain paper, with cut lines and a foot
 * @param labels the places of a sheet
 * @param cutsX where plain paper is cut from top to bottom
 * @param cutsY where it is cut from side to side
 * @param footMm what is left below the labels
 */
public record Lying(int columns, int skip, double faceWidthMm, double faceHeightMm, boolean upright, boolean level, boolean round,
        boolean plain, List<Box> labels, List<Double> cutsX, List<Double> cutsY, double footMm) {

    /** The places of labels of a stock. */
    static Lying of(LabelStock stock, int skip, double footMm) {
        boolean folded = stock.shape() != LabelStock.Shape.ROUND && stock.style() == LabelStock.Style.WRAP;
        boolean upright = folded && stock.widthMm() >= stock.heightMm();
        LabelSheets sheet = LabelSheets.places(stock, 0, stock.perSheet());
        CutLines cuts = CutLines.of(stock);
        boolean level = folded && !upright;
        List<Box> labels = IntStream.range(0, stock.perSheet()).mapToObj(sheet::place)
                .map(at -> new Box(at.xMm(), at.yMm(), at.widthMm(), at.heightMm())).toList();
        return new Lying(stock.columns(), skip, stock.widthMm() / (upright ? 2 : 1), stock.heightMm() / (level ? 2 : 1), upright, level,
                stock.shape() == LabelStock.Shape.ROUND, stock.plain(), labels, cuts.xMm(), cuts.yMm(), footMm);
    }
}
