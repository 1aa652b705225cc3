package kitleaf.press.binding;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/** The PDF's way out: remembers what its stream threw, since OpenPDF hides it in other exceptions. */
public final class PdfSink extends OutputStream {

    private final OutputStream out;
    private IOException failure;

    public PdfSink(OutputStream out) {
        this.out = out;
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        try {
            out.write(bytes, offset, length);
        } catch (IOException e) {
            failure = e;
            throw e;
        }
    }

    @Override
    public void flush() throws IOException {
        try {
            out.flush();
        } catch (IOException e) {
            failure = e;
            throw e;
        }
    }

    public Optional<IOException> failure() {
        return Optional.ofNullable(failure);
    }
}
