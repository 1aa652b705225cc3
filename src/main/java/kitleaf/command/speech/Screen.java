package kitleaf.command.speech;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import kitleaf.words.Shown;

/**
 * The one way to standard output and standard error. Whatever is said through it, no sign in it steers a terminal: it is shown by
 * its number, in the very form that JSON has for it. Line ends are kept, and sentences keep theirs out of what strangers wrote
 * (see {@link kitleaf.words.Words#spoken}).
 */
public final class Screen extends PrintWriter {

    private final PrintWriter exact;

    /** YAML and paths are UTF-8 wherever they come from; so is what is said about them. */
    public Screen(OutputStream stream) {
        this(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
    }

    private Screen(Writer stream) {
        super(new Plain(stream), true);
        exact = new PrintWriter(stream, true);
    }

    /** What leads past this, for tables that are read in again, help on a terminal, and a line that is written over. */
    public static PrintWriter exact(PrintWriter out) {
        return out instanceof Screen screen ? screen.exact : out;
    }

    /** What is written onto it is kept, to be said when all of it is known. */
    public static PrintWriter onto(StringWriter whole) {
        return new PrintWriter(whole);
    }

    private static final class Plain extends FilterWriter {

        private boolean returned;

        private Plain(Writer to) {
            super(to);
        }

        @Override
        public void write(int c) throws IOException {
            write(Character.toString((char) c), 0, 1);
        }

        @Override
        public void write(char[] text, int from, int length) throws IOException {
            write(new String(text, from, length), 0, length);
        }

        @Override
        public void write(String text, int from, int length) throws IOException {
            StringBuilder plain = new StringBuilder(length);
            for (int i = from; i < from + length; i++) {
                char c = text.charAt(i);
                if (returned) {
                    plain.append(c == '\n' ? "\r" : Shown.number('\r'));
                }
                returned = c == '\r';
                if (c == '\n' || !Shown.steers(c)) {
                    plain.append(c);
                } else if (!returned) {
                    plain.append(Shown.number(c));
                }
            }
            out.append(plain);
        }
    }
}
