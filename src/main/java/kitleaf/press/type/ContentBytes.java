package kitleaf.press.type;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.Arrays;

/**
 * Page content as it is written, byte by byte, whatever the locale. OpenPDF keeps only two decimals from 1 upwards, so that a dash of
 * 2.4 mm would drift along its line.
 */
public final class ContentBytes {

    /** Five decimals: what is laid end to end or multiplied, such as dashes and type sizes, stays true. */
    private static final int FINE = 100_000;

    /** Three decimals, for what stands by itself: in points, a place is off by less than a five-thousandth of a millimetre. */
    private static final int PLAIN = 1_000;

    /** Below this a number's whole part is an int; no place on a page comes near. */
    private static final double LARGE = 1e9;

    /** A sign, nine digits, a point, six digits and a space, with one to spare. */
    private static final int LONGEST = 19;

    private static final int TEN = 10;

    /** Numbers below this are in a table: dividing digit by digit takes longer than all else on a page. */
    private static final int TABLED = 1_000;
    private static final byte[] DIGITS = threes();

    private byte[] bytes;
    private int length;

    public ContentBytes(int expected) {
        bytes = new byte[expected];
    }

    /** 000 to 999, one after another. */
    private static byte[] threes() {
        byte[] digits = new byte[3 * TABLED];
        for (int number = 0; number < TABLED; number++) {
            digits[3 * number] = (byte) ('0' + number / (TEN * TEN));
            digits[3 * number + 1] = (byte) ('0' + number / TEN % TEN);
            digits[3 * number + 2] = (byte) ('0' + number % TEN);
        }
        return digits;
    }

    public int length() {
        return length;
    }

    /** Forgets what was written from a place on. */
    public void cutTo(int place) {
        length = place;
    }

    /** A single character below 128. */
    public ContentBytes add(char c) {
        room(1);
        bytes[length++] = (byte) c;
        return this;
    }

    /** Characters below 128. */
    public ContentBytes add(String text) {
        int more = text.length();
        room(more);
        for (int i = 0; i < more; i++) {
            bytes[length++] = (byte) text.charAt(i);
        }
        return this;
    }

    public ContentBytes add(byte[] more) {
        room(more.length);
        System.arraycopy(more, 0, bytes, length, more.length);
        length += more.length;
        return this;
    }

    /** A place in points, or a share of 255 for a colour, and a space. */
    public ContentBytes place(double number) {
        return number(number, PLAIN);
    }

    /** A number and a space. */
    public ContentBytes number(double number) {
        return number(number, FINE);
    }

    private ContentBytes number(double number, int one) {
        double size = number;
        if (number < 0) {
            size = -number;
        }
        if (size >= LARGE) {
            return add(number < 0 ? "-" : "").add(Long.toString((long) size)).add(' ');
        }
        int whole = (int) size;
        int rest = (int) ((size - whole) * one + 0.5);
        if (rest == one) {
            whole++;
            rest = 0;
        }
        room(LONGEST);
        if (number < 0 && (whole > 0 || rest > 0)) {
            bytes[length++] = '-';
        }
        whole(whole);
        if (rest != 0) {
            bytes[length++] = '.';
            if (one == PLAIN) {
                digits(rest);
            } else {
                // Five digits are three and two.
                digits(rest / (TEN * TEN));
                digits(rest % (TEN * TEN) * TEN);
                length--;
            }
            while (bytes[length - 1] == '0') {
                length--;
            }
        }
        bytes[length++] = ' ';
        return this;
    }

    private void whole(int number) {
        if (number < TEN) {
            bytes[length++] = (byte) ('0' + number);
        } else if (number < TABLED) {
            int at = 3 * number;
            if (number >= TEN * TEN) {
                bytes[length++] = DIGITS[at];
            }
            bytes[length++] = DIGITS[at + 1];
            bytes[length++] = DIGITS[at + 2];
        } else {
            whole(number / TABLED);
            digits(number % TABLED);
        }
    }

    /** Three digits, noughts before them. */
    private void digits(int number) {
        int at = 3 * number;
        bytes[length] = DIGITS[at];
        bytes[length + 1] = DIGITS[at + 1];
        bytes[length + 2] = DIGITS[at + 2];
        length += 3;
    }

    private void room(int more) {
        if (length + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, length + more));
        }
    }

    byte[] toBytes() {
        return Arrays.copyOf(bytes, length);
    }

    /** Adds a part of it to what a canvas has. */
    public void copyTo(PdfContentByte canvas, int from, int to) {
        canvas.getInternalBuffer().append(bytes, from, to - from);
    }
}
