package kitleaf.press.markup;

/**
 * A flat colour, or none.
 *
 * @param rgb red, green and blue in 8 bits each, or -1 for none
 */
public record Paint(int rgb) {

    public static final Paint NONE = new Paint(-1);
    static final Paint BLACK = new Paint(0);

    public boolean isNone() {
        return rgb < 0;
    }

    /** Reads {@code none}, {@code #rgb} or {@code #rrggbb}. */
    public static Paint read(String text) throws BadValue {
        if (text.equals("none")) {
            return NONE;
        }
        int length = text.length();
        if ((length == 4 || length == 7) && text.charAt(0) == '#') {
            int rgb = 0;
            for (int i = 1; i < length; i++) {
                int digit = text.charAt(i) < 128 ? Character.digit(text.charAt(i), 16) : -1;
                if (digit < 0) {
                    throw notAColour(text);
                }
                rgb = rgb << 4 | digit;
                if (length == 4) {
                    rgb = rgb << 4 | digit;
                }
            }
            return new Paint(rgb);
        }
        throw notAColour(text);
    }

    private static BadValue notAColour(String text) {
        return new BadValue("value.colour", text);
    }
}
