package kitleaf.sizing.cloth;

import java.util.List;
import java.util.Objects;
import kitleaf.basket.Piece;

/**
 * All that is reckoned of one piece's cloth.
 *
 * @param piece what she wrote
 * @param stepMm what cut sizes are rounded up to, in millimetres, above 0
 * @param size its sizes on the cloth it asks for
 * @param parts the sizes of those parts whose chart size is known
 */
public record ClothReckoning(Piece piece, double stepMm, PieceSize size, List<PartSize> parts) {

    /** Copies the list. */
    public ClothReckoning {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(size);
        parts = List.copyOf(parts);
    }

    /** The same chart on common cloths, its own among them, largest first; reckoned when asked for, since one sheet alone shows it. */
    public List<OtherCloth> others() {
        return OtherCloth.table(piece, stepMm);
    }

    /**
     * Reckons one piece's cloth.
     *
     * @param stepMm what cut sizes are rounded up to, in millimetres, above 0
     */
    public static ClothReckoning of(Piece piece, double stepMm) {
        Weave weave = Weave.of(piece.cloth());
        List<PartSize> parts = piece.parts().stream()
                .flatMap(part -> part.stitches().stream().map(chart -> new PartSize(part,
                        chart.wide() * part.over() * weave.acrossPitchMm(),
                        chart.high() * part.over() * weave.downPitchMm())))
                .toList();
        return new ClothReckoning(piece, stepMm, PieceSize.of(piece, piece.cloth(), stepMm), parts);
    }
}
