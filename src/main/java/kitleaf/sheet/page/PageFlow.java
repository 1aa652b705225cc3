package kitleaf.sheet.page;

import java.util.ArrayList;
import java.util.List;

/** Fills pages with rows from top to bottom. */
public final class PageFlow {

    /** Forgives the last bits of adding heights up. */
    private static final double SLACK_MM = 1e-6;

    private PageFlow() { }

    /**
     * A row to be placed.
     *
     * @param content what it shows
     * @param heightMm how high it is
     * @param keepWithNext whether it must not be the last on a page, as a heading must not
     * @param spareMm how much of its height, at its foot, may hang over the end of a page, since it is blank
     */
    public record Row<T>(T content, double heightMm, boolean keepWithNext, double spareMm) {

        /** A row that is wanted whole. */
        public Row(T content, double heightMm, boolean keepWithNext) {
            this(content, heightMm, keepWithNext, 0);
        }
    }

    /**
     * A row in its place.
     *
     * @param content what it shows
     * @param yMm its top
     */
    public record Placed<T>(T content, double yMm) { }

    /**
     * Pages of placed rows; at least one page, and at least one row on each page that is not the only one. A row higher than a
     * page stands alone and runs over.
     *
     * @param firstTopMm where rows start on the first page
     * @param nextTopMm where they start on the others
     * @param bottomMm where they end
     */
    public static <T> List<List<Placed<T>>> pages(List<Row<T>> rows, double firstTopMm, double nextTopMm, double bottomMm) {
        List<List<Placed<T>>> pages = new ArrayList<>();
        List<Placed<T>> page = new ArrayList<>();
        pages.add(page);
        double yMm = firstTopMm;
        for (int i = 0; i < rows.size(); i++) {
            if (!page.isEmpty() && yMm + together(rows, i) > bottomMm + SLACK_MM) {
                page = new ArrayList<>();
                pages.add(page);
                yMm = nextTopMm;
            }
            page.add(new Placed<>(rows.get(i).content(), yMm));
            yMm += rows.get(i).heightMm();
        }
        return pages;
    }

    /** The height of a row and of those it must be kept with, but what the last can spare. */
    private static <T> double together(List<Row<T>> rows, int from) {
        double heightMm = 0;
        for (int i = from; i < rows.size(); i++) {
            heightMm += rows.get(i).heightMm();
            if (!rows.get(i).keepWithNext()) {
                heightMm -= rows.get(i).spareMm();
                break;
            }
        }
        return heightMm;
    }
}
