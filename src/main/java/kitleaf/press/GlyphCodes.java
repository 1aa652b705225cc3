package kitleaf.press;

import com.lowagie.text.pdf.ByteBuffer;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTextArray;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * How a document's fonts spell characters. OpenPDF is asked once for each, on a canvas that belongs to no page: that also puts the
 * character's glyph into the font that is embedded.
 */
final class GlyphCodes {

    /** What OpenPDF writes round a string: {@code [(} before it, {@code )]TJ} and a line's end after it. */
    private static final int BEFORE = 2;
    private static final int AFTER = 5;

    private final PdfContentByte aside;
    private final Map<Face, Map<String, byte[]>> known = new HashMap<>();
    private Face face;
    private Map<String, byte[]> ofFace = Map.of();

    GlyphCodes(PdfContentByte aside) {
        this.aside = aside;
    }

    /** The characters as they stand between the brackets of a PDF string in this face. */
    byte[] of(Face wanted, String text) {
        if (face != wanted) {
            face = wanted;
            ofFace = known.computeIfAbsent(wanted, it -> new HashMap<>());
        }
        byte[] codes = ofFace.get(text);
        if (codes == null) {
            codes = ask(text);
            ofFace.put(text, codes);
        }
        return codes;
    }

    private byte[] ask(String text) {
        ByteBuffer written = aside.getInternalBuffer();
        aside.setFontAndSize(face.font(), 1);
        written.reset();
        aside.showText(new PdfTextArray(text));
        byte[] all = written.toByteArray();
        written.reset();
        if (all.length < BEFORE + AFTER || all[0] != '[' || all[1] != '(' || all[all.length - AFTER] != ')') {
            throw new IllegalStateException("OpenPDF writes text otherwise than it did");
        }
        return Arrays.copyOfRange(all, BEFORE, all.length - AFTER);
    }
}
