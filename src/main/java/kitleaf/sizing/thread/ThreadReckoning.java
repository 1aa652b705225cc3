package kitleaf.sizing.thread;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.thread.PutUp;

/**
 * All that is reckoned of a basket's threads.
 *
 * @param pieces the threads of each piece, finished ones too, in the basket's order
 * @param buyList what unfinished pieces still need, what the stash gives and what to buy
 */
public record ThreadReckoning(List<PieceThreads> pieces, BuyList buyList) {

    /** Copies the list. */
    public ThreadReckoning {
        pieces = List.copyOf(pieces);
        Objects.requireNonNull(buyList);
    }

    /**
     * Reckons the threads of a basket. A piece's own figures are for the whole piece. In the buy list, where a piece has
     * a figure of what is done or a log, its needs are scaled by the stitches left over all its stitches, as if each
     * thread were used up evenly; what is left on its bobbins counts only if it stands in the stash.
     *
     * @throws IllegalArgumentException when a thread comes in a put-up the basket does not have, or prices are in
     *         more than one currency
     */
    public static ThreadReckoning of(Basket basket) {
        List<PieceThreads> pieces = eachPiece(basket).toList();
        return new ThreadReckoning(pieces, BuyListing.of(basket, pieces));
    }

    /**
     * The threads of each piece, finished ones too, in the basket's order: reckoned one at a time and kept by nobody, for those
     * who need no buy list.
     *
     * @throws IllegalArgumentException when a thread comes in a put-up the basket does not have
     */
    public static Stream<PieceThreads> eachPiece(Basket basket) {
        Map<String, PutUp> putUps = basket.putUps().stream().collect(Collectors.toMap(PutUp::name, putUp -> putUp));
        return basket.pieces().stream().map(piece -> PieceThreads.of(piece, putUps));
    }

    /** How many threads the pieces have that are not finished, each once a piece: so many labels there are. */
    public static long unfinished(Basket basket) {
        return basket.pieces().stream().filter(piece -> piece.progress().finished().isEmpty()).mapToLong(PieceThreads::number).sum();
    }

    /** The threads of the piece with this ID. */
    public Optional<PieceThreads> piece(String id) {
        return pieces.stream().filter(piece -> piece.piece().id().equals(id)).findFirst();
    }

    /**
     * Whose share of what.
     *
     * @param piece its ID
     * @param code of the thread
     * @param skein the name of its put-up
     */
    public record ShareOf(String piece, String code, String skein) {

        /** A piece's share of one of its threads. */
        public static ShareOf of(String piece, ThreadTotal thread) {
            return new ShareOf(piece, thread.code(), thread.putUp().name());
        }
    }

    /** What every piece gets of every thread; nothing for finished pieces and for needs that are not known. */
    public Map<ShareOf, StashShare> shares() {
        return buyList.lines().stream().flatMap(line -> line.shares().stream()
                        .map(share -> Map.entry(new ShareOf(share.piece(), line.code(), line.putUp().name()), share)))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }
}
