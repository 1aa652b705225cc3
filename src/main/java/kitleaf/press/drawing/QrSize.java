package kitleaf.press.drawing;

import java.util.OptionalInt;
import kitleaf.press.markup.BadValue;

/** How fine the QR code of a text is, known before it is drawn. */
public final class QrSize {

    private QrSize() {
    }

    /**
     * Modules per side of a text's QR code, without the quiet zone of 4 on each side: 17 + 4 x version
     * (ISO/IEC 18004), so 21 to 177; none where the text is too long for version 40.
     *
     * @param text any text; white space is treated as in the markup's {@code code}
     * @param level {@code L}, {@code M}, {@code Q} or {@code H}
     * @throws IllegalArgumentException if the level is none of these, or there is no text
     */
    public static OptionalInt modules(String text, char level) {
        try {
            return OptionalInt.of(QrSymbol.sized(text, QrLevel.read(String.valueOf(level))).modules());
        } catch (CodeTooLong e) {
            return OptionalInt.empty();
        } catch (BadValue e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }
}
