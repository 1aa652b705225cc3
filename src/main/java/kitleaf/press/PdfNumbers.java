package kitleaf.press;

/**
 * Writes numbers into page content with up to five decimals, whatever the locale. OpenPDF keeps only
 * two decimals from 1 upwards, so that a dash of 2.4 mm would drift along its line.
 */
final class PdfNumbers {

    private static final long ONE = 100_000;

    private PdfNumbers() {
    }

    /** Appends the number and a space. */
    static StringBuilder append(StringBuilder out, double number) {
        long scaled = Math.round(number * ONE);
        if (scaled < 0) {
            out.append('-');
            scaled = -scaled;
        }
        out.append(scaled / ONE);
        long rest = scaled % ONE;
        if (rest != 0) {
            out.append('.');
            for (long digit = ONE / 10; rest != 0; digit /= 10) {
                out.append((char) ('0' + rest / digit));
                rest %= digit;
            }
        }
        return out.append(' ');
    }
}
