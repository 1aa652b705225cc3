package kitleaf.press.type;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Faces in the order they are asked, and the single glyphs found in them. */
final class FaceChain {

    private static final int FRACTION_SLASH = 0x2044;

    /** Latin letters with all their accents lie below. */
    private static final int COMMON = 0x180;

    private final List<FaceFile> files;
    private final Map<Integer, Glyph> glyphs = new ConcurrentHashMap<>();
    /** The same for the letters that most texts are made of, found without a box for the number; a lost write is only made again. */
    private final Glyph[] common = new Glyph[COMMON];

    FaceChain(List<FaceFile> files) {
        this.files = List.copyOf(files);
    }

    /** The first face that has the character. */
    Optional<Face> face(int codePoint) {
        for (FaceFile file : files) {
            Face face = Typefaces.face(file);
            if (face.has(codePoint)) {
                return Optional.of(face);
            }
        }
        return Optional.empty();
    }

    /** The glyph of one character standing alone. */
    Glyph glyph(int codePoint) {
        if (codePoint < COMMON) {
            Glyph glyph = common[codePoint];
            if (glyph == null) {
                glyph = Glyph.of(codePoint, this);
                common[codePoint] = glyph;
            }
            return glyph;
        }
        Glyph known = glyphs.get(codePoint);
        if (known == null) {
            known = Glyph.of(codePoint, this);
            glyphs.put(codePoint, known);
        }
        return known;
    }

    /** The first face that can set a fraction: figures and U+2044. */
    Face fractionFace() {
        return files.stream().map(Typefaces::face)
                .filter(face -> face.has(FRACTION_SLASH) && face.has('0'))
                .findFirst().orElseGet(() -> Typefaces.face(FaceFile.SANS_400));
    }
}
