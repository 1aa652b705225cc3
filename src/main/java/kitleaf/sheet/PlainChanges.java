package kitleaf.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.sizing.thread.BuyLine;

/** What became of the figures between two reckonings of a basket, in one line. */
public final class PlainChanges {

    /** More than this in one line nobody reads. */
    private static final int MOST = 4;

    private PlainChanges() { }

    /** The pieces that came or went and the figures that differ, as they would be shown; says so if there are none. */
    public static String between(Reckoning before, Reckoning after) {
        Map<String, PieceReckoning> old = byId(before);
        Map<String, PieceReckoning> now = byId(after);
        List<String> changes = new ArrayList<>();
        now.keySet().stream().filter(id -> !old.containsKey(id)).forEach(id -> changes.add(id + " came"));
        old.keySet().stream().filter(id -> !now.containsKey(id)).forEach(id -> changes.add(id + " is gone"));
        Figures figures = new Figures(after.basket().units());
        now.forEach((id, piece) -> Optional.ofNullable(old.get(id)).flatMap(was -> change(was, piece, figures)).ifPresent(change -> changes.add(id + " " + change)));
        long buy = buy(after);
        if (buy != buy(before)) {
            changes.add("to buy " + buy + (buy == 1 ? " skein" : " skeins") + ", was " + buy(before));
        }
        if (changes.isEmpty()) {
            return "no figure changed";
        }
        String shown = String.join("; ", changes.subList(0, Math.min(MOST, changes.size())));
        return PlainFigures.plain(changes.size() > MOST ? shown + "; and " + (changes.size() - MOST) + " more" : shown);
    }

    /** The first figure that differs, in the order they matter: a cut is cut once. */
    private static Optional<String> change(PieceReckoning was, PieceReckoning now, Figures figures) {
        PieceSize before = was.cloth().size();
        PieceSize after = now.cloth().size();
        String cutBefore = figures.cut(before.across().cutMm(), before.down().cutMm());
        String cut = figures.cut(after.across().cutMm(), after.down().cutMm());
        String designBefore = figures.size(before.across().finishedMm(), before.down().finishedMm());
        String design = figures.size(after.across().finishedMm(), after.down().finishedMm());
        if (!cut.equals(cutBefore)) {
            return Optional.of("cut " + cut + ", was " + cutBefore);
        }
        if (!design.equals(designBefore)) {
            return Optional.of("design " + design + ", was " + designBefore);
        }
        return now.tally().left() == was.tally().left() ? Optional.empty()
                : Optional.of(now.tally().left() + " stitches left, was " + was.tally().left());
    }

    private static long buy(Reckoning reckoning) {
        return reckoning.threads().buyList().lines().stream().mapToLong(BuyLine::buy).sum();
    }

    private static Map<String, PieceReckoning> byId(Reckoning reckoning) {
        Map<String, PieceReckoning> pieces = new LinkedHashMap<>();
        reckoning.pieces().forEach(piece -> pieces.put(piece.piece().id(), piece));
        return pieces;
    }
}
