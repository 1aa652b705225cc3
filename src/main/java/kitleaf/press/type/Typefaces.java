package kitleaf.press.type;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import kitleaf.press.markup.Family;
import kitleaf.press.markup.Type;

/**
 * The bundled typefaces. Each font file is read from the class path when it is first needed, and at
 * most once in a process.
 */
public final class Typefaces {

    /** From this weight on the text face's semibold is nearer than its regular (400 and 600). */
    private static final int TEXT_BOLD_FROM = 501;

    /** From this weight on the heading face's bold is nearer than its medium (500 and 700). */
    private static final int HEADING_BOLD_FROM = 601;

    private static final Map<FaceFile, Face> FACES = new ConcurrentHashMap<>();
    private static final Map<List<FaceFile>, FaceChain> CHAINS = new ConcurrentHashMap<>();

    private Typefaces() {
    }

    /**
     * Whether a bundled face can draw the character, so that a sheet will not show a box in its place.
     *
     * @param codePoint a Unicode code point
     */
    public static boolean canDraw(int codePoint) {
        return chain(Family.TEXT, Type.NORMAL).face(codePoint).isPresent();
    }

    /** Reads the typefaces that nearly every sheet is set in, so that they are there when they are needed, and who spells them. */
    public static void read() {
        List.of(FaceFile.TEXT_400, FaceFile.TEXT_600, FaceFile.SYMBOLS_2).forEach(Typefaces::face);
        GlyphCodes.ready();
    }

    static Face face(FaceFile file) {
        return FACES.computeIfAbsent(file, Face::load);
    }

    /** The faces to try, one after another, for a family and weight. */
    static FaceChain chain(Family family, int weight) {
        boolean bold = weight >= (family == Family.HEADING ? HEADING_BOLD_FROM : TEXT_BOLD_FROM);
        FaceFile sans = bold ? FaceFile.SANS_600 : FaceFile.SANS_400;
        FaceFile heading = bold ? FaceFile.HEADING_700 : FaceFile.HEADING_500;
        List<FaceFile> files = switch (family) {
            case TEXT -> List.of(bold ? FaceFile.TEXT_600 : FaceFile.TEXT_400, sans, FaceFile.SYMBOLS_2,
                    FaceFile.SYMBOLS, FaceFile.MATH, heading);
            case HEADING -> List.of(heading, sans, FaceFile.SYMBOLS_2, FaceFile.SYMBOLS, FaceFile.MATH);
            case SYMBOL -> List.of(FaceFile.SYMBOLS_2, FaceFile.SYMBOLS, FaceFile.MATH, sans);
        };
        return CHAINS.computeIfAbsent(files, FaceChain::new);
    }
}
