package kitleaf.press.drawing;

import java.util.ArrayList;
import java.util.List;
import kitleaf.press.binding.Forme;
import kitleaf.press.markup.Plate;
import kitleaf.press.markup.Transform;
import kitleaf.press.type.Compositor;
import kitleaf.press.type.Copy;
import kitleaf.press.type.Counters;
import kitleaf.press.type.SetText;
import kitleaf.press.type.Warnings;

/**
 * Words of a page that say how many pages there are, which is known when all are laid. The page itself goes out before; these are
 * bound last, and the page calls for them.
 */
public final class LateWords {

    private record Text(Copy copy, Transform transform, double x, double y, Counters counters) { }

    private final int page;
    private final Plate plate;
    private final List<Text> texts = new ArrayList<>(1);

    LateWords(int page, Plate plate) {
        this.page = page;
        this.plate = plate;
    }

    void add(Copy copy, Transform transform, double x, double y, Counters counters) {
        texts.add(new Text(copy, transform, x, y, counters));
    }

    public boolean isEmpty() {
        return texts.isEmpty();
    }

    /** Them, as they stand on their page. */
    public Forme lay(int pages, Compositor compositor, Warnings warnings) {
        Forme forme = new Forme(plate, 1 << 8).late();
        Pen pen = new Pen(forme);
        for (Text text : texts) {
            SetText set = compositor.set(text.counters().pages(pages).fill(text.copy()));
            set.warn(page, warnings);
            pen.text(set, text.transform(), text.x(), text.y());
        }
        return forme;
    }
}
