package kitleaf.sizing.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.Goal;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.reader.BasketReader;
import org.junit.jupiter.api.Test;

/** Counting threads must not disagree with reckoning them: the pages of labels are laid out by the one and filled by the other. */
class ThreadNumberTests {

    /** By hand: K1 and K2 of the piece, K1 again and K3 of its part, and K1 dyed, which is another thread. */
    @Test
    void a_code_in_a_put_up_counts_once_in_a_piece_and_its_parts() {
        Part verse = new Part("Verse", 1, Optional.empty(), List.of(Skeins.crosses("K1", "cotton", 1, 10), Skeins.crosses("K3", "cotton", 1, 10),
                Skeins.crosses("K1", "dyed", 1, 10)));
        Piece piece = Skeins.piece("bell", List.of(Skeins.crosses("K1", "cotton", 2, 10), Skeins.crosses("K2", "cotton", 2, 10)), List.of(verse),
                Optional.empty(), Progress.NONE, Goal.NONE);
        assertEquals(4, PieceThreads.number(piece));
        assertEquals(4, PieceThreads.of(piece, Map.of("dyed", Skeins.DYED)).threads().size());
    }

    @Test
    void finished_pieces_count_for_nothing_and_the_rest_as_they_are_reckoned() {
        Basket basket = BasketReader.read(Path.of("examples/harbour")).basket().orElseThrow();
        long reckoned = ThreadReckoning.eachPiece(basket).filter(piece -> piece.piece().progress().finished().isEmpty())
                .mapToLong(piece -> piece.threads().size()).sum();
        assertEquals(reckoned, ThreadReckoning.unfinished(basket));
        Piece first = basket.pieces().get(0);
        Progress done = new Progress(Optional.empty(), Optional.of(LocalDate.parse("2026-01-01")), Optional.empty(), List.of());
        Piece finished = new Piece(first.id(), first.title(), first.designer(), first.stitches(), first.cloth(), first.finish(), first.margins(),
                first.marginsGiven(), first.threads(), first.parts(), first.coverage(), done, first.goal());
        assertEquals(0, ThreadReckoning.unfinished(Skeins.basket(List.of(finished))));
    }
}
