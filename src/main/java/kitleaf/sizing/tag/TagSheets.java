package kitleaf.sizing.tag;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import kitleaf.basket.Paper;
import kitleaf.basket.Tags;

/**
 * The places of tags on sheets of one paper, edge to edge, row by row from the top.
 *
 * <p>A sheet turned over its upright edge puts what is printed at x of the back behind x' = width - x of the front, at the
 * same height; one turned over its level edge puts y behind height - y, and what is to be upright on the tag has to stand on its
 * head on the page.
 *
 * @param paper the sheet
 * @param tags how they are made
 * @param columns tags side by side, 1 or more
 * @param rows tags one below the other, 1 or more
 * @param cellWidthMm of a tag as it lies on the sheet
 * @param cellHeightMm of a tag as it lies on the sheet, unfolded if it is folded
 */
public record TagSheets(Paper paper, Tags tags, int columns, int rows, double cellWidthMm, double cellHeightMm) {

    /** Forgives the last bits of dividing a sheet. */
    private static final double SLACK_MM = 1e-6;
    /** A tag of large print holds some 30 characters a line and ten lines (found by measuring). */
    private static final double LARGE_WIDTH_MM = 90;
    private static final double LARGE_HEIGHT_MM = 100;

    /** Refuses sheets without tags. */
    public TagSheets {
        Objects.requireNonNull(paper);
        Objects.requireNonNull(tags);
        if (columns < 1 || rows < 1 || !(cellWidthMm > 0) || !(cellHeightMm > 0)) {
            throw new IllegalArgumentException("no tags: " + columns + " x " + rows);
        }
    }

    /**
     * The sheets of some paper. Where a share of the sheet would be too small for a tag, larger ones are made.
     *
     * @throws IllegalArgumentException when tags of her own size do not {@linkplain Tags#fit fit}
     */
    public static TagSheets of(Paper paper, Tags tags) {
        return of(paper, tags, Tags.FOOT_MM);
    }

    /** The same above a foot of another height. */
    public static TagSheets of(Paper paper, Tags tags, double footMm) {
        return of(paper, tags, Tags.LEAST_WIDTH_MM, Tags.LEAST_HEIGHT_MM, footMm);
    }

    /**
     * The sheets of large print, whose tags have to be larger and whose foot is higher.
     *
     * @param footMm what is left below for the check bars and the signature
     * @throws IllegalArgumentException when tags of her own size do not fit
     */
    public static TagSheets large(Paper paper, Tags tags, double footMm) {
        return of(paper, tags, LARGE_WIDTH_MM, LARGE_HEIGHT_MM, footMm);
    }

    private static TagSheets of(Paper paper, Tags tags, double leastWidthMm, double leastHeightMm, double footMm) {
        double roomAcrossMm = paper.widthMm() - 2 * Tags.MARGIN_MM;
        double roomDownMm = paper.heightMm() - Tags.MARGIN_MM - footMm;
        int faces = tags.sides() == Tags.Sides.FOLDED ? 2 : 1;
        if (tags.size() instanceof Tags.Own own) {
            return new TagSheets(paper, tags, (int) Math.floor((roomAcrossMm + SLACK_MM) / own.widthMm()),
                    (int) Math.floor((roomDownMm + SLACK_MM) / (own.heightMm() * faces)), own.widthMm(), own.heightMm() * faces);
        }
        Tags.Share share = (Tags.Share) tags.size();
        boolean upright = paper.heightMm() >= paper.widthMm();
        int columns = most(upright ? share.columns() : share.rows(), roomAcrossMm, leastWidthMm);
        int rows = most(upright ? share.rows() : share.columns(), roomDownMm, leastHeightMm * faces);
        return new TagSheets(paper, tags, columns, rows, roomAcrossMm / columns, roomDownMm / rows);
    }

    private static int most(int wanted, double roomMm, double leastMm) {
        return Math.max(1, Math.min(wanted, (int) Math.floor(roomMm / leastMm)));
    }

    /** Tags on a sheet. */
    public int perSheet() {
        return columns * rows;
    }

    /** The width of a finished tag. */
    public double tagWidthMm() {
        return cellWidthMm;
    }

    /** The height of a finished tag. */
    public double tagHeightMm() {
        return tags.sides() == Tags.Sides.FOLDED ? cellHeightMm / 2 : cellHeightMm;
    }

    /** The front of the tag at one position of a sheet, on the page of the fronts. */
    public TagPlace front(int position) {
        double topMm = cellYMm(position) + (tags.sides() == Tags.Sides.FOLDED ? tagHeightMm() : 0);
        return new TagPlace(cellXMm(position), topMm, tagWidthMm(), tagHeightMm(), false);
    }

    /** The back of the tag at one position: above its front when folded, else on the page of the backs. */
    public TagPlace back(int position) {
        if (tags.sides() == Tags.Sides.FOLDED) {
            return new TagPlace(cellXMm(position), cellYMm(position), tagWidthMm(), tagHeightMm(), true);
        }
        return new TagPlace(backXMm(cellXMm(position), tagWidthMm()), backYMm(cellYMm(position), tagHeightMm()),
                tagWidthMm(), tagHeightMm(), !turnsUpright());
    }

    /** Whether fronts and backs are on pages of their own. */
    public boolean duplex() {
        return tags.sides() != Tags.Sides.FOLDED;
    }

    /** Whether the sheet turns over an upright edge, as a book's page does. */
    public boolean turnsUpright() {
        boolean upright = paper.heightMm() >= paper.widthMm();
        return tags.sides() == Tags.Sides.LONG_EDGE ? upright : !upright;
    }

    /**
     * Where something has to start on the page of the backs to lie behind a place of the front.
     *
     * @param frontXMm the left side of that place, seen from the front
     * @param widthMm its width; 0 for a point
     */
    public double backXMm(double frontXMm, double widthMm) {
        double aimedMm = frontXMm - tags.backLiesRightMm();
        return turnsUpright() ? paper.widthMm() - aimedMm - widthMm : aimedMm;
    }

    /** The same, down the page. */
    public double backYMm(double frontYMm, double heightMm) {
        double aimedMm = frontYMm - tags.backLiesBelowMm();
        return turnsUpright() ? aimedMm : paper.heightMm() - aimedMm - heightMm;
    }

    /** The upright sides of all cells, from the left, on the page of the fronts. */
    public List<Double> sidesXMm() {
        return IntStream.rangeClosed(0, columns).mapToObj(i -> firstXMm() + i * cellWidthMm).toList();
    }

    /** Their tops and bottoms, from the top. */
    public List<Double> sidesYMm() {
        return IntStream.rangeClosed(0, rows).mapToObj(i -> Tags.MARGIN_MM + i * cellHeightMm).toList();
    }

    private double firstXMm() {
        return (paper.widthMm() - columns * cellWidthMm) / 2;
    }

    private double cellXMm(int position) {
        return firstXMm() + Objects.checkIndex(position, perSheet()) % columns * cellWidthMm;
    }

    private double cellYMm(int position) {
        return Tags.MARGIN_MM + Objects.checkIndex(position, perSheet()) / columns * cellHeightMm;
    }
}
