package kitleaf.press.drawing;

import io.nayuki.qrcodegen.QrCode;
import kitleaf.press.markup.BadValue;

/** How much damage to a code can be mended: 7, 15, 25 or 30 % of it, roughly (from memory). */
enum QrLevel {
    L(QrCode.Ecc.LOW), M(QrCode.Ecc.MEDIUM), Q(QrCode.Ecc.QUARTILE), H(QrCode.Ecc.HIGH);

    private final QrCode.Ecc ecc;

    QrLevel(QrCode.Ecc ecc) {
        this.ecc = ecc;
    }

    QrCode.Ecc ecc() {
        return ecc;
    }

    static QrLevel read(String text) throws BadValue {
        for (QrLevel level : values()) {
            if (level.name().equals(text)) {
                return level;
            }
        }
        throw new BadValue("value.level", text);
    }
}
