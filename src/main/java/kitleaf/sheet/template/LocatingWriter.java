package kitleaf.sheet.template;

import freemarker.core.Environment;
import freemarker.template.TemplateException;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/** Passes on what a template writes, and stops it at one character to learn which line wrote it. */
final class LocatingWriter extends FilterWriter {

    private final long offset;
    private long written;

    LocatingWriter(Writer out, long offset) {
        super(out);
        this.offset = offset;
    }

    @Override
    public void write(char[] buffer, int from, int length) throws IOException {
        if (written + length <= offset) {
            written += length;
            out.write(buffer, from, length);
            return;
        }
        // An exception made while a template runs notes where it is; that is all this one is for.
        TemplateException here = new TemplateException("", Environment.getCurrentEnvironment());
        int lines = 0;
        for (int i = from; i < from + (int) (offset - written); i++) {
            if (buffer[i] == '\n') {
                lines++;
            }
        }
        Integer line = here.getLineNumber();
        throw new Found(here.getTemplateSourceName() + ":" + ((line == null ? 1 : line) + lines));
    }

    @Override
    public void write(int c) throws IOException {
        write(new char[] {(char) c}, 0, 1);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        write(text.substring(from, from + length).toCharArray(), 0, length);
    }

    /** The character was reached. */
    static final class Found extends IOException {

        private static final long serialVersionUID = 1L;

        private final String place;

        private Found(String place) {
            this.place = place;
        }

        String place() {
            return place;
        }
    }
}
