package kitleaf.sizing.plan;

import java.util.List;
import kitleaf.basket.cloth.Cloth;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cloth.PieceSize;

/**
 * A piece that is to be cut, in both ways it may lie on cloth whose warp runs down.
 *
 * @param piece the piece
 * @param asAsked as it asks for
 * @param turned by a quarter from that, warp and weft changed under the design
 */
record Wanted(PieceReckoning piece, Lie asAsked, Lie turned) {

    /**
     * One way to lie.
     *
     * @param size the piece's sizes, reckoned for this way
     * @param warp which way the warp runs under the design
     */
    record Lie(PieceSize size, Cloth.WarpRun warp) {

        /** Its side across the warp. */
        double widthMm() {
            return warp == Cloth.WarpRun.DOWN ? size.across().cutMm() : size.down().cutMm();
        }

        /** Its side along the warp. */
        double heightMm() {
            return warp == Cloth.WarpRun.DOWN ? size.down().cutMm() : size.across().cutMm();
        }

        private Shape shape(Kerf kerf) {
            return new Shape(widthMm() + kerf.besideMm(), heightMm() + kerf.belowMm());
        }
    }

    /**
     * Reckons a piece for both ways.
     *
     * @param stepMm what cut sizes are rounded up to
     */
    static Wanted of(PieceReckoning piece, double stepMm) {
        Cloth cloth = piece.piece().cloth();
        Cloth.WarpRun other = cloth.warp() == Cloth.WarpRun.DOWN ? Cloth.WarpRun.ACROSS : Cloth.WarpRun.DOWN;
        PieceSize turned = PieceSize.of(piece.piece(), cloth.with(other), stepMm);
        return new Wanted(piece, new Lie(piece.cloth().size(), cloth.warp()), new Lie(turned, other));
    }

    Cloth cloth() {
        return piece.piece().cloth();
    }

    /** The ways it may lie, the one it asks for first. */
    List<Lie> lies(boolean turning) {
        return turning ? List.of(asAsked, turned) : List.of(asAsked);
    }

    /** Those ways as shapes, the kerf added. */
    List<Shape> shapes(boolean turning, Kerf kerf) {
        return lies(turning).stream().map(lie -> lie.shape(kerf)).toList();
    }
}
