import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PRStream;
import com.lowagie.text.pdf.PRTokeniser;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfContentParser;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfString;
import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes down every mark of a PDF that Kitleaf made, so that {@code Replay} can draw the same with OpenPDF alone. What is not
 * a mark is left out: bookmarks, titles, the page numbers of the file.
 *
 * <p>{@code Record FILE.pdf FILE.marks}; an operator it does not know ends it, so that nothing is left out unseen.
 */
final class Record {

    private static final Pattern MAPPED = Pattern.compile("<([0-9a-f]{4})><[0-9a-f]{4}><([0-9a-f]{4,8})>");

    /** Operators with numbers only, and how many; the replayer has a call for each. */
    static final List<String> PLAIN = List.of("m2", "l2", "c6", "h0", "f0", "S0", "B0", "rg3", "RG3", "w1", "J1", "j1", "M1", "Tr1", "BT0", "ET0", "Tm6");

    /** What OpenPDF writes on every page by itself, around an empty text. */
    private static final Set<String> OWN = Set.of("q", "Q", "Td");

    private final PdfReader reader;
    private final DataOutputStream out;
    private final Map<PdfObject, Map<Integer, String>> unicode = new HashMap<>();

    private Record(PdfReader reader, DataOutputStream out) {
        this.reader = reader;
        this.out = out;
    }

    public static void main(String[] arguments) throws IOException {
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(Path.of(arguments[1])), 1 << 16))) {
            Record record = new Record(new PdfReader(arguments[0]), out);
            for (int page = 1; page <= record.reader.getNumberOfPages(); page++) {
                record.page(page);
            }
            out.writeByte(127);
        }
    }

    private void page(int number) throws IOException {
        Rectangle size = reader.getPageSize(number);
        out.writeByte(100);
        out.writeFloat(size.getWidth());
        out.writeFloat(size.getHeight());
        PdfDictionary fonts = reader.getPageN(number).getAsDict(PdfName.RESOURCES).getAsDict(PdfName.FONT);
        PdfContentParser parser = new PdfContentParser(new PRTokeniser(reader.getPageContent(number)));
        Map<Integer, String> letters = Map.of();
        for (List<PdfObject> call = parser.parse(new ArrayList<>()); !call.isEmpty(); call = parser.parse(new ArrayList<>())) {
            String operator = call.get(call.size() - 1).toString();
            int plain = PLAIN.indexOf(operator + (call.size() - 1));
            if (plain >= 0) {
                out.writeByte(plain);
                for (int i = 0; i < call.size() - 1; i++) {
                    out.writeFloat(((PdfNumber) call.get(i)).floatValue());
                }
            } else if (operator.equals("Tf")) {
                PdfObject font = fonts.get((PdfName) call.get(0));
                letters = unicode.computeIfAbsent(font, this::letters);
                out.writeByte(101);
                String name = ((PdfDictionary) PdfReader.getPdfObject(font)).getAsName(PdfName.BASEFONT).toString();
                text(name.substring(name.indexOf('+') + 1));
                out.writeFloat(((PdfNumber) call.get(1)).floatValue());
            } else if (operator.equals("TJ")) {
                PdfArray array = (PdfArray) call.get(0);
                out.writeByte(102);
                out.writeShort(array.size());
                for (int i = 0; i < array.size(); i++) {
                    PdfObject item = array.getPdfObject(i);
                    out.writeBoolean(item.isString());
                    if (item.isString()) {
                        text(read(((PdfString) item).getBytes(), letters));
                    } else {
                        out.writeFloat(((PdfNumber) item).floatValue());
                    }
                }
            } else if (operator.equals("d")) {
                PdfArray dashes = (PdfArray) call.get(0);
                out.writeByte(103);
                out.writeShort(dashes.size());
                for (int i = 0; i < dashes.size(); i++) {
                    out.writeFloat(dashes.getAsNumber(i).floatValue());
                }
            } else if (operator.equals("BDC")) {
                out.writeByte(104);
                text(((PdfDictionary) call.get(1)).getAsString(new PdfName("ActualText")).toUnicodeString());
            } else if (operator.equals("EMC")) {
                out.writeByte(105);
            } else if (!OWN.contains(operator)) {
                throw new IOException("page " + number + " has an operator that is not recorded: " + call);
            }
        }
    }

    private void text(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeShort(bytes.length);
        out.write(bytes);
    }

    private static String read(byte[] glyphs, Map<Integer, String> letters) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < glyphs.length; i += 2) {
            String letter = letters.get((glyphs[i] & 255) << 8 | glyphs[i + 1] & 255);
            if (letter == null) {
                throw new IOException("a glyph stands for no letter");
            }
            text.append(letter);
        }
        return text.toString();
    }

    private Map<Integer, String> letters(PdfObject font) {
        try {
            PRStream stream = (PRStream) PdfReader.getPdfObject(((PdfDictionary) PdfReader.getPdfObject(font)).get(PdfName.TOUNICODE));
            Matcher mapped = MAPPED.matcher(new String(PdfReader.getStreamBytes(stream), StandardCharsets.ISO_8859_1));
            Map<Integer, String> letters = new HashMap<>();
            while (mapped.find()) {
                StringBuilder letter = new StringBuilder();
                for (int i = 0; i < mapped.group(2).length(); i += 4) {
                    letter.append((char) Integer.parseInt(mapped.group(2).substring(i, i + 4), 16));
                }
                letters.put(Integer.parseInt(mapped.group(1), 16), letter.toString());
            }
            return letters;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
