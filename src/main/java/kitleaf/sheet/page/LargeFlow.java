package kitleaf.sheet.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Flows passages of large print over pages, so that no sheet ends in a page of a line or two: the pages before take them, set a
 * little closer, or give some of theirs.
 */
public final class LargeFlow {

    private static final double LINE_MM = TypeScale.LARGE.lineMm(TypeScale.LARGE.text());
    /** The pages before are set closer only to save a page that holds less than this: six lines. */
    private static final double SPARSE_MM = 6 * LINE_MM;
    /** What a last page holds at least, if the one before can give it: three lines. */
    private static final double LEAST_MM = 3 * LINE_MM;
    /** How much of the blank between passages may go, so that they still stand apart, and in which steps. */
    private static final double CLOSEST = 0.4;
    private static final int STEPS = 4;

    private LargeFlow() { }

    /**
     * The passages of each page in their places; at least one page.
     *
     * @param firstTopMm where passages start on the first page
     * @param nextTopMm where they start on the others
     * @param bottomMm where they end
     */
    public static List<List<Passage>> pages(List<Passage> passages, double firstTopMm, double nextTopMm, double bottomMm) {
        List<List<Passage>> pages = set(passages, 0, firstTopMm, nextTopMm, bottomMm);
        if (pages.size() > 1 && heightMm(pages.get(pages.size() - 1)) < SPARSE_MM) {
            for (int step = 1; step <= STEPS; step++) {
                List<List<Passage>> closer = set(passages, CLOSEST * step / STEPS, firstTopMm, nextTopMm, bottomMm);
                if (closer.size() < pages.size()) {
                    return closer;
                }
            }
            fillLast(pages, nextTopMm);
        }
        return pages;
    }

    private static List<List<Passage>> set(List<Passage> passages, double closer, double firstTopMm, double nextTopMm, double bottomMm) {
        // Of what is blank below a passage half may hang over a page's end: its rule stands in the middle.
        List<PageFlow.Row<Passage>> rows = passages.stream().map(it -> it.closer(closer))
                .map(it -> new PageFlow.Row<>(it, it.heightMm(), it.keepWithNext(), it.blankMm() / 2)).toList();
        List<List<Passage>> pages = new ArrayList<>();
        PageFlow.pages(rows, firstTopMm, nextTopMm, bottomMm)
                .forEach(page -> pages.add(page.stream().map(placed -> placed.content().at(placed.yMm())).toList()));
        return pages;
    }

    /** Moves passages from the last page but one to a last page that has too little, none away from what it is kept with. */
    private static void fillLast(List<List<Passage>> pages, double topMm) {
        List<Passage> before = pages.get(pages.size() - 2);
        List<Passage> last = pages.get(pages.size() - 1);
        double haveMm = heightMm(last);
        int from = before.size();
        while (from > 0 && (haveMm < LEAST_MM || before.get(from - 1).keepWithNext())) {
            from--;
            haveMm += before.get(from).heightMm();
        }
        if (from > 0) {
            List<Passage> filled = new ArrayList<>();
            double yMm = topMm;
            for (Passage passage : join(before.subList(from, before.size()), last)) {
                filled.add(passage.at(yMm));
                yMm += passage.heightMm();
            }
            pages.set(pages.size() - 2, before.subList(0, from));
            pages.set(pages.size() - 1, filled);
        }
    }

    private static List<Passage> join(List<Passage> first, List<Passage> then) {
        List<Passage> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }

    private static double heightMm(List<Passage> page) {
        Passage last = page.get(page.size() - 1);
        return last.yMm() + last.heightMm() - last.blankMm() - page.get(0).yMm();
    }
}
