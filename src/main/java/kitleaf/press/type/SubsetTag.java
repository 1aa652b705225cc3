package kitleaf.press.type;

import java.security.SecureRandom;

/**
 * Gives OpenPDF the six letters before a subset font's name: the same six for one face, always, so
 * that equal markup gives equal bytes. It keeps no state, so documents may be pressed side by side.
 */
final class SubsetTag extends SecureRandom {

    private static final long serialVersionUID = 1L;

    private static final int LETTERS = 26;

    private final int letter;

    SubsetTag(int letter) {
        super(null, null);
        this.letter = letter;
    }

    @Override
    public double nextDouble() {
        return (letter % LETTERS + 0.5) / LETTERS;
    }
}
