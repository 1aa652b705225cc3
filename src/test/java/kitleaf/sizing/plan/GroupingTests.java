package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Shrink;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.StitchTally;
import kitleaf.sizing.cloth.ClothReckoning;
import org.junit.jupiter.api.Test;

/** Which pieces compete for cloth, and which are alike. */
class GroupingTests {

    private static final ClothSupply SUPPLY = Cloths.supply(
            List.of(Cloths.onHand("Tar", 60, 60, false), Cloths.onHand("Fog", 60, 60, false)),
            List.of(only("Fog", "a"), Cloths.cut("b", 60, 60, "")));

    private static ClothCut only(String cloth, String name) {
        return new ClothCut(name, 60, 60, Cloth.WarpRun.DOWN, false, Optional.empty(), Optional.of(cloth), Optional.empty(),
                Optional.empty());
    }

    private static Piece piece(String id, int side, String cloth) {
        return Cloths.piece(id, side, side, cloth.isEmpty() ? Optional.empty() : Optional.of(cloth));
    }

    private static Piece piece(String id, Cloth.Kind kind, Count count) {
        Cloth cloth = new Cloth(Optional.empty(), kind, count, 1, Shrink.NONE, Cloth.Counted.AFTER,
                Cloth.WarpRun.DOWN, Cloth.Dyeing.NONE, false);
        return Cloths.piece(id, 50, 50, cloth, Progress.NONE);
    }

    private static List<Group> groups(Piece... pieces) {
        return Grouping.of(SUPPLY, Stream.of(pieces)
                .map(piece -> Wanted.of(new PieceReckoning(piece, ClothReckoning.of(piece, 1), StitchTally.of(piece)), 1)).toList());
    }

    private static List<List<List<String>>> ids(List<Group> groups) {
        return groups.stream().map(group -> group.kins().stream()
                .map(kin -> kin.members().stream().map(member -> member.piece().piece().id()).toList()).toList()).toList();
    }

    @Test
    void pieces_that_name_two_cloths_meet_only_through_one_that_names_none() {
        assertEquals(List.of(List.of(List.of("f")), List.of(List.of("t"))), ids(groups(piece("f", 50, "Fog"), piece("t", 50, "Tar"))));
        assertEquals(List.of(List.of(List.of("f"), List.of("t"), List.of("any"))),
                ids(groups(piece("f", 50, "Fog"), piece("t", 50, "Tar"), piece("any", 50, ""))));
    }

    @Test
    void names_are_one_but_for_case_and_spaces() {
        assertEquals(List.of(List.of(List.of("f", "g"))), ids(groups(piece("f", 50, "Fog"), piece("g", 50, " fog"))));
    }

    @Test
    void another_kind_or_count_is_another_group() {
        Count finer = new Count(30, 25.4);
        assertEquals(List.of(List.of(List.of("a", "d")), List.of(List.of("b")), List.of(List.of("c"))), ids(groups(
                piece("a", Cloth.Kind.LINEN, Cloths.FINE), piece("b", Cloth.Kind.EVENWEAVE, Cloths.FINE),
                piece("c", Cloth.Kind.LINEN, finer), piece("d", Cloth.Kind.LINEN, Cloths.FINE))));
    }

    /** Four that meet two by two before one meets them all: the second pair is led by its first, and that by the first of all. */
    @Test
    void a_late_piece_brings_groups_together_in_the_order_of_their_first() {
        assertEquals(List.of(List.of(List.of("f", "f2"), List.of("t", "t2"), List.of("any"))),
                ids(groups(piece("f", 50, "Fog"), piece("t", 50, "Tar"), piece("f2", 50, "Fog"), piece("t2", 50, "Tar"),
                        piece("any", 50, ""))));
    }

    @Test
    void pieces_of_one_size_for_the_same_cloths_are_alike() {
        Group group = groups(piece("small", 40, "Fog"), piece("f", 50, "Fog"), piece("any", 50, ""), piece("g", 50, "Fog")).get(0);
        assertEquals(List.of(List.of("small"), List.of("f", "g"), List.of("any")), ids(List.of(group)).get(0));
        assertEquals(List.of(1, 2, 1), group.numbers());
        // Of the two cloths on hand Fog stands second; of the shop cuts the first is Fog's alone.
        assertEquals(List.of(Set.of(1), Set.of(1), Set.of(0, 1)), group.kins().stream().map(Group.Kin::onHand).toList());
        assertEquals(List.of(Set.of(0, 1), Set.of(0, 1), Set.of(1)), group.kins().stream().map(Group.Kin::shop).toList());
        assertEquals(List.of(Optional.of("fog"), Optional.of("fog"), Optional.empty()), group.kins().stream().map(Group.Kin::name).toList());
    }

    @Test
    void a_group_has_the_cloths_that_serve_one_of_its_pieces() {
        Group tar = groups(piece("t", 50, "Tar")).get(0);
        assertEquals(List.of("Tar"), tar.onHand().stream().map(stock -> stock.onHand().map(ClothOnHand::name).orElseThrow()).toList());
        assertEquals(List.of("b"), tar.shop().stream().map(stock -> stock.cut().map(ClothCut::name).orElseThrow()).toList());
        Group none = groups(piece("c", Cloth.Kind.LINEN, new Count(30, 25.4))).get(0);
        assertEquals(List.of(), none.onHand());
    }
}
