package kitleaf.press.drawing;

import kitleaf.press.markup.BadValue;

/** A text that no QR code of a level holds. */
final class CodeTooLong extends BadValue {

    private static final long serialVersionUID = 1L;

    CodeTooLong(String text, QrLevel level) {
        super(level == QrLevel.L ? "code.long" : "code.long.level", text.codePointCount(0, text.length()), level.name());
    }
}
