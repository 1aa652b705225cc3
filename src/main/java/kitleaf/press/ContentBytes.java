package kitleaf.press;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.Arrays;

/**
 * Page content as it is written, byte by byte, whatever the locale. OpenPDF keeps only two decimals from 1 upwards, so that a dash of
 * 2.4 mm would drift along its line.
 */
final class ContentBytes {

    /** Five decimals: what is laid end to end or multiplied, such as dashes and type sizes, stays true. */
    private static final int FINE = 100_000;

    /** Three decimals, for what stands by itself: in points, a place is off by less than a five-thousandth of a millimetre. */
    private static final int PLAIN = 1_000;

    /** Below this a number's whole part is an int; no place on a page comes near. */
    private static final double LARGE = 1e9;

    private byte[] bytes;
    private int length;

    ContentBytes(int expected) {
        bytes = new byte[expected];
    }

    int length() {
        return length;
    }

    /** Forgets what was written from a place on. */
    void cutTo(int place) {
        length = place;
    }

    /** A single character below 128. */
    ContentBytes add(char c) {
        if (length == bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * length);
        }
        bytes[length++] = (byte) c;
        return this;
    }

    /** Characters below 128. */
    ContentBytes add(String text) {
        for (int i = 0; i < text.length(); i++) {
            add(text.charAt(i));
        }
        return this;
    }

    ContentBytes add(byte[] more) {
        while (length + more.length > bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * bytes.length);
        }
        System.arraycopy(more, 0, bytes, length, more.length);
        length += more.length;
        return this;
    }

    /** A place in points, or a share of 255 for a colour, and a space. */
    ContentBytes place(double number) {
        return number(number, PLAIN);
    }

    /** A number and a space. */
    ContentBytes number(double number) {
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
        if (number < 0 && (whole > 0 || rest > 0)) {
            add('-');
        }
        whole(whole);
        if (rest != 0) {
            add('.');
            for (int digit = one / 10; rest != 0; digit /= 10) {
                add((char) ('0' + rest / digit));
                rest %= digit;
            }
        }
        return add(' ');
    }

    private void whole(int number) {
        if (number >= 10) {
            whole(number / 10);
        }
        add((char) ('0' + number % 10));
    }

    byte[] toBytes() {
        return Arrays.copyOf(bytes, length);
    }

    /** Adds a part of it to what a canvas has. */
    void copyTo(PdfContentByte canvas, int from, int to) {
        canvas.getInternalBuffer().append(bytes, from, to - from);
    }
}
