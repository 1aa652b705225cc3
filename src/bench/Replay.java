import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTextArray;
import com.lowagie.text.pdf.PdfWriter;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * OpenPDF alone: draws recorded marks through its own calls, with the same fonts embedded, and nothing else. What Kitleaf
 * is measured against.
 *
 * <p>{@code Replay FONTS FILE.marks FILE.pdf [FILE.marks FILE.pdf]...}; with {@code -} for a PDF it only reads the marks.
 */
final class Replay {

    private static final int FLOATS = 8;

    private final DataInputStream in;
    private final Map<String, BaseFont> fonts;
    private final float[] n = new float[FLOATS];

    private Replay(DataInputStream in, Map<String, BaseFont> fonts) {
        this.in = in;
        this.fonts = fonts;
    }

    public static void main(String[] arguments) throws IOException {
        Map<String, Path> files = new HashMap<>();
        try (var walk = Files.walk(Path.of(arguments[0]))) {
            walk.filter(file -> file.toString().endsWith(".ttf"))
                    .forEach(file -> files.put(file.getFileName().toString().replace(".ttf", ""), file));
        }
        // As Kitleaf does: a font is read once, when it is first used.
        Map<String, BaseFont> fonts = new HashMap<>() {
            private static final long serialVersionUID = 1L;

            @Override
            public BaseFont get(Object name) {
                return computeIfAbsent((String) name, it -> {
                    try {
                        return BaseFont.createFont(it + ".ttf", BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false,
                                Files.readAllBytes(files.get(it)), null);
                    } catch (IOException e) {
                        throw new IllegalStateException(e);
                    }
                });
            }
        };
        for (int i = 1; i < arguments.length; i += 2) {
            try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(Path.of(arguments[i])), 1 << 16))) {
                if (arguments[i + 1].equals("-")) {
                    new Replay(in, fonts).draw(null, null);
                } else {
                    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(arguments[i + 1])), 1 << 16)) {
                        Document document = new Document(new Rectangle(1, 1), 0, 0, 0, 0);
                        PdfWriter writer = PdfWriter.getInstance(document, out);
                        writer.setFullCompression();
                        new Replay(in, fonts).draw(document, writer);
                        document.close();
                    }
                }
            }
        }
    }

    private void draw(Document document, PdfWriter writer) throws IOException {
        PdfContentByte canvas = null;
        while (true) {
            int operator = in.readByte();
            switch (operator) {
                case 127 -> {
                    return;
                }
                case 100 -> {
                    read(2);
                    if (document != null) {
                        document.setPageSize(new Rectangle(n[0], n[1]));
                        if (document.isOpen()) {
                            document.newPage();
                        } else {
                            document.open();
                        }
                        writer.setPageEmpty(false);
                        canvas = writer.getDirectContent();
                    }
                }
                case 101 -> {
                    String name = text();
                    read(1);
                    if (canvas != null) {
                        canvas.setFontAndSize(fonts.get(name), n[0]);
                    }
                }
                case 102 -> {
                    PdfTextArray array = new PdfTextArray();
                    for (int i = in.readShort(); i > 0; i--) {
                        if (in.readBoolean()) {
                            array.add(text());
                        } else {
                            array.add(in.readFloat());
                        }
                    }
                    if (canvas != null) {
                        canvas.showText(array);
                    }
                }
                case 103 -> {
                    float[] dash = new float[in.readShort()];
                    for (int i = 0; i < dash.length; i++) {
                        dash[i] = in.readFloat();
                    }
                    if (canvas != null) {
                        canvas.setLineDash(dash, 0);
                    }
                }
                case 104 -> {
                    StringBuilder literal = new StringBuilder("/Span<</ActualText<FEFF");
                    for (char c : text().toCharArray()) {
                        literal.append(String.format("%04X", (int) c));
                    }
                    if (canvas != null) {
                        canvas.setLiteral(literal.append(">>>BDC\n").toString());
                    }
                }
                case 105 -> {
                    if (canvas != null) {
                        canvas.setLiteral("EMC\n");
                    }
                }
                default -> plain(operator, canvas);
            }
        }
    }

    /** In the recorder's order. */
    private void plain(int operator, PdfContentByte canvas) throws IOException {
        read(switch (operator) {
            case 0, 1 -> 2;
            case 2, 16 -> 6;
            case 7, 8 -> 3;
            case 9, 10, 11, 12, 13 -> 1;
            default -> 0;
        });
        if (canvas == null) {
            return;
        }
        switch (operator) {
            case 0 -> canvas.moveTo(n[0], n[1]);
            case 1 -> canvas.lineTo(n[0], n[1]);
            case 2 -> canvas.curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
            case 3 -> canvas.closePath();
            case 4 -> canvas.fill();
            case 5 -> canvas.stroke();
            case 6 -> canvas.fillStroke();
            case 7 -> canvas.setRGBColorFillF(n[0], n[1], n[2]);
            case 8 -> canvas.setRGBColorStrokeF(n[0], n[1], n[2]);
            case 9 -> canvas.setLineWidth(n[0]);
            case 10 -> canvas.setLineCap((int) n[0]);
            case 11 -> canvas.setLineJoin((int) n[0]);
            case 12 -> canvas.setMiterLimit(n[0]);
            case 13 -> canvas.setTextRenderingMode((int) n[0]);
            case 14 -> canvas.beginText();
            case 15 -> canvas.endText();
            case 16 -> canvas.setTextMatrix(n[0], n[1], n[2], n[3], n[4], n[5]);
            default -> throw new IOException("not a mark: " + operator);
        }
    }

    private void read(int count) throws IOException {
        for (int i = 0; i < count; i++) {
            n[i] = in.readFloat();
        }
    }

    private String text() throws IOException {
        return new String(in.readNBytes(in.readUnsignedShort()), StandardCharsets.UTF_8);
    }
}
