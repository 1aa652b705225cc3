package kitleaf.sheet.diary;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.Piece;
import kitleaf.basket.PieceState;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.Register;
import kitleaf.sizing.StitchTally;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.words.Words;

/** Lays out the list of all pieces: how each stands, where it lies, how far it is. */
public final class PieceListLayout {

    private final Reckoning reckoning;
    private final SheetSettings settings;
    private final Words words;
    private final Figures figures;
    private final ClothWords clothWords;

    private PieceListLayout(Reckoning reckoning, SheetSettings settings) {
        this.reckoning = reckoning;
        this.settings = settings;
        this.words = SheetWords.in(settings.language());
        this.figures = new Figures(settings.units(), words);
        this.clothWords = new ClothWords(words, figures);
    }

    /** The list of all pieces of a basket; no pages where there are none. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return new PieceListLayout(reckoning, settings).layOut();
    }

    private Sheet layOut() {
        List<PieceGroup> groups = Register.of(reckoning.pieces(), settings.language()).entrySet().stream()
                .map(group -> group(group.getKey(), group.getValue())).toList();
        int pieces = reckoning.pieces().size();
        return new Frames(reckoning.basket(), settings, words, words.say("pieces.name"))
                .flowing(SheetKind.PIECE_LIST, pieces == 0 ? 0 : 1, words.say("pieces.subject"), Map.of("groups", groups,
                        "below", words.say(pieces == 1 ? "pieces.one" : "pieces.many", pieces)));
    }

    private PieceGroup group(PieceState state, List<PieceReckoning> pieces) {
        return new PieceGroup(words.say("pieces.group", words.say("state." + state.name().toLowerCase(Locale.ROOT).replace('_', '-')),
                pieces.size()), pieces.stream().map(this::line).toList());
    }

    private PieceLine line(PieceReckoning reckoned) {
        Piece piece = reckoned.piece();
        PieceSize size = reckoned.cloth().size();
        StitchTally tally = reckoned.tally();
        String kept = Stream.of(piece.keeping().source(), piece.keeping().bag()).flatMap(Optional::stream)
                .collect(Collectors.joining(" · "));
        return new PieceLine(piece.title(), piece.designer().orElse(""), kept,
                clothWords.worked(piece.cloth().kind(), piece.cloth().count(), piece.cloth().over()),
                figures.size(size.across().finishedMm(), size.down().finishedMm()),
                tally.total() == 0 ? 0 : (double) tally.done() / tally.total(), figures.percent(Integer.toString(tally.percentDone())),
                tally.left() == 0 ? "" : figures.grouped(tally.left()), day(piece.progress().started()), day(piece.progress().touched()));
    }

    private String day(Optional<LocalDate> day) {
        return day.map(it -> figures.day(it, "date.short-year")).orElse("");
    }
}
