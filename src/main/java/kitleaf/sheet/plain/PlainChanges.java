package kitleaf.sheet.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.sizing.thread.BuyLine;

/** What became of the figures between two reckonings of a basket, in one line. */
public final class PlainChanges {

    /** More than this in one line nobody reads. */
    private static final int MOST = 4;

    private final PlainWords words;

    /** Changes in words of this language. */
    public PlainChanges(Locale language) {
        this.words = new PlainWords(language, 1);
    }

    /**
     * The pieces and sheets that came or went and the figures that differ, as they would be shown; says so if there are none.
     *
     * @param sheetsBefore the files that were printed of the reckoning before
     * @param sheetsAfter those that are printed now
     */
    public String between(Reckoning before, Reckoning after, List<String> sheetsBefore, List<String> sheetsAfter) {
        Map<String, PieceReckoning> old = byId(before);
        Map<String, PieceReckoning> now = byId(after);
        List<String> changes = new ArrayList<>();
        now.keySet().stream().filter(id -> !old.containsKey(id)).forEach(id -> changes.add(words.say("change.came", id)));
        old.keySet().stream().filter(id -> !now.containsKey(id)).forEach(id -> changes.add(words.say("change.gone", id)));
        Figures figures = words.figures(after.basket().units());
        now.forEach((id, piece) -> Optional.ofNullable(old.get(id)).flatMap(was -> change(was, piece, figures))
                .ifPresent(change -> changes.add(id + " " + change)));
        long buy = buy(after);
        if (buy != buy(before)) {
            changes.add(words.say(buy == 1 ? "change.buy.one" : "change.buy.many", buy, buy(before)));
        }
        sheetsAfter.stream().filter(sheet -> !sheetsBefore.contains(sheet)).forEach(sheet -> changes.add(words.say("change.came", sheet)));
        sheetsBefore.stream().filter(sheet -> !sheetsAfter.contains(sheet)).forEach(sheet -> changes.add(words.say("change.gone", sheet)));
        boolean asMuch = before.basket().goals().isPresent() == after.basket().goals().isPresent();
        if (asMuch && !before.basket().goals().equals(after.basket().goals())) {
            changes.add(words.say("change.goals"));
        }
        if (changes.isEmpty()) {
            return words.say("change.none");
        }
        String shown = String.join("; ", changes.subList(0, Math.min(MOST, changes.size())));
        return Figures.plain(changes.size() > MOST ? words.say("change.more", shown, changes.size() - MOST) : shown);
    }

    /** The first figure that differs, in the order they matter: a cut is cut once. */
    private Optional<String> change(PieceReckoning was, PieceReckoning now, Figures figures) {
        PieceSize before = was.cloth().size();
        PieceSize after = now.cloth().size();
        String cutBefore = figures.cut(before.across().cutMm(), before.down().cutMm());
        String cut = figures.cut(after.across().cutMm(), after.down().cutMm());
        String designBefore = figures.size(before.across().finishedMm(), before.down().finishedMm());
        String design = figures.size(after.across().finishedMm(), after.down().finishedMm());
        if (!cut.equals(cutBefore)) {
            return Optional.of(words.say("change.cut", cut, cutBefore));
        }
        if (!design.equals(designBefore)) {
            return Optional.of(words.say("change.design", design, designBefore));
        }
        return now.tally().left() == was.tally().left() ? Optional.empty()
                : Optional.of(words.say("change.stitches", now.tally().left(), was.tally().left()));
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
