package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.Goals;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Pace;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Flaw;
import kitleaf.basket.thread.PutUp;
import org.junit.jupiter.api.Test;

/** The basket that newcomers copy holds together. */
class ExampleBasketTests {

    private static Basket example() {
        Reading reading = BasketReader.read(Path.of("examples/harbour"));
        assertEquals(List.of(), reading.problems());
        return reading.basket().orElseThrow();
    }

    /** A thread in its put-up, as pieces and the stash both name it. */
    private record Named(String code, String skein) {
    }

    @Test
    void everyThreadOfTheStashIsCalledForBySomePiece() {
        Basket basket = example();
        Set<Named> called = basket.pieces().stream()
                .flatMap(piece -> Stream.concat(piece.threads().stream(), piece.parts().stream().flatMap(part -> part.threads().stream())))
                .map(thread -> new Named(thread.code(), thread.skein())).collect(Collectors.toSet());
        assertEquals(List.of(), basket.stash().stream().map(entry -> new Named(entry.code(), entry.skein()))
                .filter(entry -> !called.contains(entry)).toList());
        assertFalse(basket.stash().isEmpty());
    }

    @Test
    void everyPutUpHasItsPrice() {
        Basket basket = example();
        assertEquals(basket.putUps().stream().map(PutUp::name).collect(Collectors.toSet()), basket.prices().keySet());
        assertEquals(3, basket.prices().size());
    }

    /** Newcomers see in it all that can be said of cloth: a flaw both ways, a selvedge, turning, an uneven count, cuts with prices. */
    @Test
    void theClothDrawerShowsAllThatCanBeSaidOfCloth() {
        ClothSupply supply = example().clothSupply();
        List<ClothOnHand> cloths = supply.onHand();
        assertEquals(List.of("Sea-mist", "Unbleached", "Chalk", "Foam", "Bolt end", "Old sail"), cloths.stream().map(ClothOnHand::name).toList());
        assertEquals(Set.of(Flaw.Run.DOWN, Flaw.Run.ACROSS),
                cloths.stream().flatMap(cloth -> cloth.flaws().stream()).map(Flaw::run).collect(Collectors.toSet()));
        assertTrue(cloths.stream().anyMatch(cloth -> cloth.selvedge().isPresent() && cloth.turning()));
        assertTrue(cloths.stream().anyMatch(cloth -> !cloth.count().even()));
        assertTrue(supply.cutsGiven() && supply.cuts().stream().allMatch(cut -> cut.price().isPresent()));
    }

    /** The cloth a piece names in the drawer is the cloth it is stitched on, to the thread. */
    @Test
    void piecesCountTheirClothAsTheDrawerDoes() {
        Basket basket = example();
        List<Cloth> named = basket.pieces().stream().map(Piece::cloth).filter(cloth -> cloth.name().isPresent()).toList();
        List<Cloth> drawn = named.stream().filter(cloth -> basket.clothSupply().onHand().stream().anyMatch(other ->
                other.isCalled(cloth.name().get()) && other.kind() == cloth.kind() && other.count().same(cloth.count()))).toList();
        // Sea-mist 2, Unbleached 3, the cones in Chalk 2, Foam, Bolt end and Old sail 1 each; the pin pillow is on another Chalk.
        assertEquals(10, drawn.size());
    }

    @Test
    void theYearIsPlannedFromTheLogs() {
        Basket basket = example();
        assertEquals(new Pace(OptionalDouble.empty(), OptionalDouble.of(9)), basket.pace());
        assertEquals(List.of(2027, 2027), basket.timeOff().stream().map(off -> off.from().getYear()).toList());
        assertEquals(Optional.of(new Goals(2027, OptionalInt.of(9), List.of(), Goals.By.NUMBER, 0.7, Optional.empty(), Optional.empty(),
                OptionalLong.empty())), basket.goals());
    }

    /** Thirty weeks are enough to draw from by chance; sheets carry the latest day as their date. */
    @Test
    void theLogsHoldThirtyWeeksAndEndOnTheDayOfTheData() {
        Basket basket = example();
        Set<String> weeks = basket.pieces().stream().flatMap(piece -> piece.progress().log().stream()).map(LogEntry::on)
                .map(day -> day.get(IsoFields.WEEK_BASED_YEAR) + "-" + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR)).collect(Collectors.toSet());
        assertTrue(weeks.size() >= 30, weeks.toString());
        assertEquals(Optional.of(LocalDate.of(2026, 11, 22)), basket.latest());
    }
}
