package kitleaf.sheet.diary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
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
import kitleaf.sizing.StitchTally;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.words.Words;

/** Lays out the list of all pieces: how each stands, where it lies, how far it is. */
public final class PieceListLayout {

    /** What is in hand first, what is laid aside last. */
    private static final List<PieceState> ORDER = List.of(PieceState.BEGUN, PieceState.STITCHED, PieceState.WAITING, PieceState.RESTING,
            PieceState.MADE_UP, PieceState.GIVEN_UP);

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
        Map<PieceState, List<PieceReckoning>> standing = reckoning.pieces().stream().collect(Collectors.groupingBy(PieceReckoning::state));
        List<PieceGroup> groups = ORDER.stream().filter(standing::containsKey).map(state -> group(state, standing.get(state))).toList();
        int pieces = reckoning.pieces().size();
        return new Frames(reckoning.basket(), settings, words, words.say("pieces.name"))
                .flowing(SheetKind.PIECE_LIST, pieces == 0 ? 0 : 1, words.say("pieces.subject"), Map.of("groups", groups,
                        "below", words.say(pieces == 1 ? "pieces.one" : "pieces.many", pieces)));
    }

    private PieceGroup group(PieceState state, List<PieceReckoning> pieces) {
        List<PieceLine> lines = new ArrayList<>();
        pieces.stream().sorted(Comparator.comparing((PieceReckoning it) -> it.piece().title().toLowerCase(settings.language()))
                .thenComparing(it -> it.piece().id())).forEach(piece -> lines.add(line(piece)));
        return new PieceGroup(words.say("pieces.group", words.say("state." + state.name().toLowerCase(Locale.ROOT).replace('_', '-')),
                pieces.size()), lines);
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
