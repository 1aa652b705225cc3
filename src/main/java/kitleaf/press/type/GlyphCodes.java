package kitleaf.press.type;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.ByteBuffer;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTextArray;
import com.lowagie.text.pdf.PdfWriter;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * How a document's fonts spell characters. A character has the same code in every document, so OpenPDF is asked once for each, on a
 * canvas that belongs to no document; the document itself must only hear which characters are new in it, to embed their glyphs.
 */
public final class GlyphCodes {

    /** What OpenPDF writes round a string: {@code [(} before it, {@code )]TJ} and a line's end after it. */
    private static final int BEFORE = 2;
    private static final int AFTER = 5;

    private static final PdfContentByte ASIDE = aside();

    /** Characters in a face. */
    public record Spelled(Face face, String text) { }

    private final Map<Face, Map<String, byte[]>> known = new HashMap<>();
    private List<Spelled> fresh = List.of();
    private Face face;
    private Map<String, byte[]> ofFace = Map.of();

    /** Makes the canvas: OpenPDF's first document takes as long as a page. */
    static void ready() {
        Objects.requireNonNull(ASIDE);
    }

    /** The characters as they stand between the brackets of a PDF string in this face. */
    byte[] of(Face wanted, String text) {
        if (face != wanted) {
            face = wanted;
            ofFace = known.computeIfAbsent(wanted, it -> new HashMap<>());
        }
        byte[] codes = ofFace.get(text);
        if (codes == null) {
            codes = ask(wanted, text);
            ofFace.put(text, codes);
            if (fresh.isEmpty()) {
                fresh = new ArrayList<>();
            }
            fresh.add(new Spelled(wanted, text));
        }
        return codes;
    }

    /** What has been asked for the first time since this was last asked, in order. */
    public List<Spelled> takeFresh() {
        List<Spelled> taken = fresh;
        fresh = List.of();
        return taken;
    }

    private static byte[] ask(Face face, String text) {
        synchronized (ASIDE) {
            byte[] all = show(face, text, ASIDE);
            if (all.length < BEFORE + AFTER || all[0] != '[' || all[1] != '(' || all[all.length - AFTER] != ')') {
                throw new IllegalStateException("OpenPDF writes text otherwise than it did");
            }
            return Arrays.copyOfRange(all, BEFORE, all.length - AFTER);
        }
    }

    /** What a canvas that belongs to no page writes for characters; its document embeds their glyphs. */
    public static byte[] show(Face face, String text, PdfContentByte aside) {
        ByteBuffer written = aside.getInternalBuffer();
        aside.setFontAndSize(face.font(), 1);
        written.reset();
        aside.showText(new PdfTextArray(text));
        byte[] all = written.toByteArray();
        written.reset();
        return all;
    }

    private static PdfContentByte aside() {
        try {
            Document nowhere = new Document();
            PdfWriter writer = PdfWriter.getInstance(nowhere, OutputStream.nullOutputStream());
            nowhere.open();
            return new PdfContentByte(writer);
        } catch (DocumentException e) {
            throw new IllegalStateException(e);
        }
    }
}
