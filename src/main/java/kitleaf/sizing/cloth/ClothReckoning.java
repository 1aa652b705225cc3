package kitleaf.sizing.cloth;

import java.util.List;
import java.util.Objects;
import kitleaf.basket.Piece;

/**
 * All that is reckoned of one piece's cloth.
 *
 * @param size its sizes on the cloth it asks for
 * @param parts the sizes of those parts whose chart size is known
 * @param others the same chart on common cloths, its own among them, largest first
 */
public record ClothReckoning(PieceSize size, List<PartSize> parts, List<OtherCloth> others) {

    /** Copies the lists. */
    public ClothReckoning {
        Objects.requireNonNull(size);
        parts = List.copyOf(parts);
        others = List.copyOf(others);
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
        return new ClothReckoning(
                PieceSize.of(piece.stitches(), piece.cloth(), piece.margins(), stepMm),
                parts,
                OtherCloth.table(piece.stitches(), piece.cloth(), piece.margins(), stepMm));
    }
}
