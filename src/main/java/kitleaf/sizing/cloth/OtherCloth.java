package kitleaf.sizing.cloth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;

/**
 * A row of the what-if table: the same chart, with the same margins and the same shrink, on one cloth.
 *
 * @param kind how that cloth is woven
 * @param count its threads to the inch
 * @param over threads a stitch spans
 * @param size what the chart comes to on it
 * @param own whether this is the cloth the piece asks for
 */
public record OtherCloth(Cloth.Kind kind, Count count, int over, PieceSize size, boolean own) {

    /** Refuses a missing part. */
    public OtherCloth {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(count);
        Objects.requireNonNull(size);
    }

    /** Cloths commonly sold and how they are commonly worked (common practice, no source). */
    private static final List<Common> COMMON = List.of(
            new Common(Cloth.Kind.LINEN, 28, 2),
            new Common(Cloth.Kind.LINEN, 32, 2),
            new Common(Cloth.Kind.LINEN, 36, 2),
            new Common(Cloth.Kind.LINEN, 40, 2),
            new Common(Cloth.Kind.EVENWEAVE, 25, 1),
            new Common(Cloth.Kind.BLOCK, 14, 1),
            new Common(Cloth.Kind.BLOCK, 16, 1),
            new Common(Cloth.Kind.BLOCK, 18, 1));

    private record Common(Cloth.Kind kind, double perInch, int over) {
        boolean is(Cloth cloth) {
            return kind == cloth.kind() && over == cloth.over() && cloth.count().even()
                    && perInch == cloth.count().warpPerInch();
        }
    }

    /** The common cloths and the piece's own, the largest result first. */
    static List<OtherCloth> table(Piece piece, double stepMm) {
        Cloth own = piece.cloth();
        List<OtherCloth> rows = new ArrayList<>();
        rows.add(row(piece, own, stepMm, true));
        for (Common common : COMMON) {
            if (!common.is(own)) {
                Cloth cloth = new Cloth(Optional.empty(), common.kind(), new Count(common.perInch(), common.perInch()),
                        common.over(), own.shrink(), Cloth.Counted.AFTER, own.warp(), own.dyeing(), false);
                rows.add(row(piece, cloth, stepMm, false));
            }
        }
        // A stable sort: of two cloths that give one size, the piece's own comes first.
        rows.sort(Comparator.comparingDouble((OtherCloth row) -> row.size().across().finishedMm()).reversed());
        return List.copyOf(rows);
    }

    /** Stitches to the inch across. */
    public double stitchesPerInch() {
        return Weave.INCH_MM / size.across().cellMm();
    }

    private static OtherCloth row(Piece piece, Cloth cloth, double stepMm, boolean own) {
        return new OtherCloth(cloth.kind(), cloth.count(), cloth.over(), PieceSize.of(piece, cloth, stepMm), own);
    }
}
