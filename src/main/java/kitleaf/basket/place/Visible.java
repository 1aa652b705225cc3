package kitleaf.basket.place;

/**
 * Tells what of a text is seen in print. Text that was copied brings characters along that are not: words which look alike have to be
 * the same words, or a thread is bought twice, and words of nothing else would leave a label empty.
 */
public final class Visible {

    /**
     * The characters that are not seen even where a face lacks them, first and last of each range in turn: the property
     * Default_Ignorable_Code_Point of Unicode 15.0 (DerivedCoreProperties.txt). Soft hyphen, joiners, fillers, selectors, tags.
     */
    private static final int[] IGNORED = {0xAD, 0xAD, 0x34F, 0x34F, 0x61C, 0x61C, 0x115F, 0x1160, 0x17B4, 0x17B5,
        0x180B, 0x180F, 0x200B, 0x200F,
        0x202A, 0x202E, 0x2060, 0x206F, 0x3164, 0x3164, 0xFE00, 0xFE0F, 0xFEFF, 0xFEFF, 0xFFA0, 0xFFA0, 0xFFF0, 0xFFF8,
        0x1BCA0, 0x1BCA3, 0x1D173, 0x1D17A, 0xE0000, 0xE0FFF};

    /** A letter to Unicode, and a blank to the eye: the Braille pattern without dots. */
    private static final int BRAILLE_BLANK = 0x2800;

    private Visible() { }

    /** A text as it is seen: without what is not, each blank a plain one and none at its ends, in one spelling (Unicode NFC). */
    public static String of(String text) {
        return ascii(text) ? text.strip() : Quote.composed(seen(text)).strip();
    }

    /** Whether no character of a text is seen, or marks alone that have nothing to stand on. */
    public static boolean nothing(String text) {
        return ascii(text) ? text.isBlank() : seen(text).codePoints().noneMatch(Visible::standsAlone);
    }

    private static boolean ascii(String text) {
        // Asked of every value of a basket.
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    private static String seen(String text) {
        StringBuilder seen = new StringBuilder(text.length());
        text.codePoints().filter(c -> !ignored(c)).forEach(c -> seen.appendCodePoint(Character.isSpaceChar(c) ? ' ' : c));
        return seen.toString();
    }

    private static boolean standsAlone(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.SPACE_SEPARATOR, Character.NON_SPACING_MARK, Character.ENCLOSING_MARK,
                Character.COMBINING_SPACING_MARK -> false;
            default -> c != BRAILLE_BLANK;
        };
    }

    private static boolean ignored(int c) {
        for (int i = 0; i < IGNORED.length; i += 2) {
            if (c >= IGNORED[i] && c <= IGNORED[i + 1]) {
                return true;
            }
        }
        return false;
    }
}
