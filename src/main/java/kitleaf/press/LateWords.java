package kitleaf.press;

import java.util.ArrayList;
import java.util.List;

/**
 * Words of a page that say how many pages there are, which is known when all are laid. The page itself goes out before; these are
 * bound last, and the page calls for them.
 */
final class LateWords {

    private record Text(List<Span> spans, Style style, double widthPt, int most, Transform transform, double x, double y,
            Counters counters) { }

    private final int page;
    private final Plate plate;
    private final List<Text> texts = new ArrayList<>(1);

    LateWords(int page, Plate plate) {
        this.page = page;
        this.plate = plate;
    }

    void add(List<Span> spans, Style style, double widthPt, int most, Transform transform, double x, double y, Counters counters) {
        texts.add(new Text(spans, style, widthPt, most, transform, x, y, counters));
    }

    boolean isEmpty() {
        return texts.isEmpty();
    }

    /** Them, as they stand on their page. */
    Forme lay(int pages, Compositor compositor, Warnings warnings) {
        Forme forme = new Forme(plate, 1 << 8).late();
        Pen pen = new Pen(forme);
        for (Text text : texts) {
            SetText set = compositor.set(new Copy(text.counters().pages(pages).fill(text.spans()), text.style(), text.widthPt(),
                    text.most()));
            set.warn(page, warnings);
            pen.text(set, text.transform(), text.x(), text.y());
        }
        return forme;
    }
}
