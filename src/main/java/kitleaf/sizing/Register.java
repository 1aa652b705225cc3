package kitleaf.sizing;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import kitleaf.basket.PieceState;

/** All pieces by how they stand: what is in hand first, what is laid aside last; alike ones by title. */
public final class Register {

    private static final List<PieceState> ORDER = List.of(PieceState.BEGUN, PieceState.STITCHED, PieceState.WAITING, PieceState.RESTING,
            PieceState.MADE_UP, PieceState.GIVEN_UP);

    private Register() { }

    /** The pieces of each state there is one of, titles in the order of a language. */
    public static Map<PieceState, List<PieceReckoning>> of(List<PieceReckoning> pieces, Locale language) {
        Map<PieceState, List<PieceReckoning>> standing = pieces.stream()
                .sorted(Comparator.comparing((PieceReckoning it) -> it.piece().title().toLowerCase(language))
                        .thenComparing(it -> it.piece().id()))
                .collect(Collectors.groupingBy(PieceReckoning::state, () -> new EnumMap<>(PieceState.class), Collectors.toList()));
        Map<PieceState, List<PieceReckoning>> ordered = new LinkedHashMap<>();
        ORDER.stream().filter(standing::containsKey).forEach(state -> ordered.put(state, standing.get(state)));
        return ordered;
    }
}
