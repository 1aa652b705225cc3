package kitleaf.basket.edit;

import java.util.List;
import java.util.Objects;

/** No way was seen to change a text by key and leave all else in it as it stands: what she may do by hand instead. */
public final class ByHand extends Exception {

    private static final long serialVersionUID = 1L;

    /** What there is to do. */
    public enum Deed {
        /** Write the text below the keys. */
        WRITE,
        /** Add the text to the list below the keys. */
        ADD,
        /** Write the text in the place of what stands at the keys. */
        WRITE_INSTEAD,
        /** Take out what stands at the keys; there is no text. */
        TAKE_OUT
    }

    private final Deed deed;
    private final transient List<String> keys;
    private final String text;

    ByHand(Deed deed, List<String> keys, String text) {
        super(deed + " " + keys, null, false, false);
        this.deed = deed;
        this.keys = List.copyOf(keys);
        this.text = Objects.requireNonNull(text);
    }

    public Deed deed() {
        return deed;
    }

    /** The keys to go down by, outermost first; none for the top of the file. */
    public List<String> keys() {
        return keys;
    }

    /** What to write, on one line. */
    public String text() {
        return text;
    }
}
