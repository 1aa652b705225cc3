package kitleaf.basket.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.reader.Reading;

/** Judges whether an edited text says what the old one said, and one log entry more. */
final class LogCheck {

    private LogCheck() {
    }

    /**
     * The piece with the entry, if that is all that a second reading finds changed.
     *
     * @param piece the one the entry is for, as it was
     */
    static Optional<Piece> only(LogEntry entry, Piece piece, Basket before, Reading after) {
        Progress p = piece.progress();
        List<LogEntry> log = new ArrayList<>(p.log());
        log.add(entry);
        Piece logged = new Piece(piece.id(), piece.title(), piece.designer(), piece.stitches(), piece.cloth(), piece.finish(),
                piece.margins(), piece.marginsGiven(), piece.threads(), piece.parts(), piece.coverage(),
                new Progress(p.started(), p.finished(), p.done(), log), piece.goal());
        List<Piece> wanted = before.pieces().stream().map(one -> one.equals(piece) ? logged : one).toList();
        return after.basket().map(Basket::pieces).filter(wanted::equals).map(pieces -> logged);
    }
}
