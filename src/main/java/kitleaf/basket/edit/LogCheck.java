package kitleaf.basket.edit;

import java.util.List;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.Piece;
import kitleaf.basket.reader.Reading;

/** Judges whether an edited text says what the old one said, and the news. */
final class LogCheck {

    private LogCheck() {
    }

    /**
     * The piece with the news, if that is all that a second reading finds changed.
     *
     * @param piece the one the news are of, as it was
     */
    static Optional<Piece> only(News news, Piece piece, Basket before, Reading after) {
        Piece told = piece.with(news.in(piece.progress()));
        List<Piece> wanted = before.pieces().stream().map(one -> one.equals(piece) ? told : one).toList();
        return after.basket().map(Basket::pieces).filter(wanted::equals).map(pieces -> told);
    }
}
