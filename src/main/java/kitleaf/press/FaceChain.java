package kitleaf.press;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Faces in the order they are asked, and the single glyphs found in them. */
final class FaceChain {

    private static final int FRACTION_SLASH = 0x2044;

    private final List<FaceFile> files;
    private final Map<Integer, Glyph> glyphs = new ConcurrentHashMap<>();

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
