package kitleaf.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One page of large print: a head, passages below each other, and the foot every page has.
 *
 * @param frame what every page has
 * @param bookmark the outline entry that starts here; empty for none
 * @param head of the page
 * @param passages in their places
 */
public record LargePage(PageFrame frame, String bookmark, Masthead head, List<Passage> passages) {

    /** Copies the list. */
    public LargePage {
        Objects.requireNonNull(frame);
        Objects.requireNonNull(head);
        passages = List.copyOf(passages);
    }

    /** The same page with its number. */
    public LargePage in(PageFrame numbered) {
        return new LargePage(numbered, bookmark, head, passages);
    }

    /** All pages of a sheet with their numbers. */
    public static List<LargePage> numbered(List<LargePage> pages, Frames frames) {
        List<LargePage> numbered = new ArrayList<>();
        for (LargePage page : pages) {
            numbered.add(page.in(frames.of(numbered.size() + 1, pages.size())));
        }
        return numbered;
    }

    /**
     * The pages some passages take, at least one; not yet numbered.
     *
     * @param continued the title of all pages but the first
     */
    public static List<LargePage> flow(Frames frames, String eyebrow, String title, String continued, String below,
            List<Passage> passages) {
        return flow(frames.of(0, 0), frames.head(eyebrow, title, below, true), frames.head(eyebrow, continued, "", false), title, passages);
    }

    /** The same on pages of any size, under heads that are made already. */
    public static List<LargePage> flow(PageFrame frame, Masthead first, Masthead next, String bookmark, List<Passage> passages) {
        List<LargePage> pages = new ArrayList<>();
        for (List<Passage> page : LargeFlow.pages(passages, first.bottomMm(), next.bottomMm(), frame.foot().topMm())) {
            boolean begins = pages.isEmpty();
            pages.add(new LargePage(frame, begins ? bookmark : "", begins ? first : next, page));
        }
        return pages;
    }
}
