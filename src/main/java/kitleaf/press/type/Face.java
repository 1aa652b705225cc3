package kitleaf.press.type;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** One font: which characters it has and how wide they are, in ems (multiples of the type size). */
public final class Face {

    private static final double PER_EM = 1000;

    private final BaseFont font;
    private final String name;
    private final double capHeightEm;
    private final double widestDigitEm;

    private Face(BaseFont font, String name) {
        this.font = font;
        this.name = name;
        this.capHeightEm = font.getFontDescriptor(BaseFont.CAPHEIGHT, (float) PER_EM) / PER_EM;
        double widest = 0;
        for (char digit = '0'; digit <= '9'; digit++) {
            widest = Math.max(widest, widthEm(digit));
        }
        this.widestDigitEm = widest;
    }

    /** Reads a bundled font; one that is missing or broken is a fault of the build. */
    static Face load(FaceFile file) {
        try (InputStream in = Face.class.getResourceAsStream(file.resource())) {
            if (in == null) {
                throw new IllegalStateException("font missing from the class path: " + file.resource());
            }
            BaseFont font = BaseFont.createFont(file.faceName() + ".ttf", BaseFont.IDENTITY_H, BaseFont.EMBEDDED,
                    false, in.readAllBytes(), null);
            font.setSecureRandom(new SubsetTag(file.ordinal()));
            return new Face(font, file.faceName());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (DocumentException e) {
            throw new IllegalStateException("font cannot be read: " + file.resource(), e);
        }
    }

    public BaseFont font() {
        return font;
    }

    String name() {
        return name;
    }

    boolean has(int codePoint) {
        return font.charExists(codePoint);
    }

    double widthEm(int codePoint) {
        return font.getWidth(codePoint) / PER_EM;
    }

    double widthEm(String text) {
        return font.getWidth(text) / PER_EM;
    }

    double capHeightEm() {
        return capHeightEm;
    }

    double widestDigitEm() {
        return widestDigitEm;
    }

    /** The glyph's ink: left, bottom, right, top; all 0 for one without ink. */
    Ink ink(int codePoint) {
        int[] box = font.getCharBBox(codePoint);
        return box == null ? new Ink(0, 0, 0, 0)
                : new Ink(box[0] / PER_EM, box[1] / PER_EM, box[2] / PER_EM, box[3] / PER_EM);
    }

    /** The box around a glyph's ink, in ems from its origin. */
    record Ink(double left, double bottom, double right, double top) {
    }
}
