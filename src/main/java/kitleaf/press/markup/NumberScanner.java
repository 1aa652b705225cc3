package kitleaf.press.markup;

/**
 * Reads numbers one after another from an attribute, in the grammar of SVG 1.1 (section 8.3.9):
 * {@code 1.5.5} is 1.5 and .5, {@code 1-2} is 1 and -2, commas and white space separate.
 */
public final class NumberScanner {

    /** Ten metres: beyond any paper, and far inside what a PDF number can hold. */
    public static final double MOST = 10_000;

    /** Whole numbers of so many digits are below 2^53. */
    private static final int EXACT_DIGITS = 15;

    /** Exact up to 10^22. */
    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

    private final String text;
    private int at;

    public NumberScanner(String text) {
        this.text = text;
    }

    /** The one number that the whole text is, white space around it allowed. */
    static double whole(String text) throws BadValue {
        long whole = 0;
        int digits = 0;
        int point = -1;
        int sign = text.startsWith("-") ? 1 : 0;
        for (int i = sign; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isDigit(c) && digits < EXACT_DIGITS) {
                whole = whole * 10 + (c - '0');
                digits++;
            } else if (c == '.' && point < 0) {
                point = i;
            } else {
                return scanned(text);
            }
        }
        double number = point < 0 ? whole : whole / TENS[text.length() - point - 1];
        if (digits == 0 || number > MOST) {
            return scanned(text);
        }
        return sign == 1 ? -number : number;
    }

    /** The same, of a number with an exponent, with space around it or wrong: few are. */
    private static double scanned(String text) throws BadValue {
        NumberScanner scanner = new NumberScanner(text.strip());
        double number = scanner.number();
        if (scanner.at != scanner.text.length()) {
            throw new BadValue("value.number", text);
        }
        return number;
    }

    public boolean atEnd() {
        skipSpace();
        return at == text.length();
    }

    /** How many characters have been read. */
    public int position() {
        return at;
    }

    /** The next character, without taking it; only when not at the end. */
    char peek() {
        return text.charAt(at);
    }

    public char take() {
        return text.charAt(at++);
    }

    /** All up to a character, which is not taken, or to the end. */
    String before(char c) {
        int start = at;
        int end = text.indexOf(c, at);
        at = end < 0 ? text.length() : end;
        return text.substring(start, at);
    }

    void skipSpace() {
        while (at < text.length() && isSpace(text.charAt(at))) {
            at++;
        }
    }

    /** Skips white space with at most one comma in it. */
    public void skipSeparator() {
        skipSpace();
        if (at < text.length() && text.charAt(at) == ',') {
            at++;
            skipSpace();
        }
    }

    public boolean atNumber() {
        if (at == text.length()) {
            return false;
        }
        char c = text.charAt(at);
        return isDigit(c) || c == '.' || c == '-' || c == '+';
    }

    public double number() throws BadValue {
        int start = at;
        skipSign();
        int firstDigit = at;
        int digits = skipDigits();
        int point = at;
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits += skipDigits();
        }
        if (digits == 0) {
            throw new BadValue("value.number", text);
        }
        int beforeExponent = at;
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            skipSign();
            if (skipDigits() == 0) {
                at = beforeExponent;
            }
        }
        double number = at == beforeExponent && digits <= EXACT_DIGITS ? plain(start, firstDigit, point)
                : Double.parseDouble(text.substring(start, at));
        if (!(Math.abs(number) <= MOST)) {
            throw new BadValue("value.large", text.substring(start, at));
        }
        return number;
    }

    /**
     * The number of few digits: their whole number and the power of ten are both exact doubles, so that one division rounds
     * once, as it should be (W. D. Clinger, How to read floating point numbers accurately, 1990).
     */
    private double plain(int start, int firstDigit, int point) {
        long whole = 0;
        for (int i = firstDigit; i < at; i++) {
            if (i != point) {
                whole = whole * 10 + (text.charAt(i) - '0');
            }
        }
        double number = point < at ? whole / TENS[at - point - 1] : whole;
        return text.charAt(start) == '-' ? -number : number;
    }

    private void skipSign() {
        if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
            at++;
        }
    }

    private int skipDigits() {
        int start = at;
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
        return at - start;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
    }
}
