package kitleaf.sizing.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class FrontTests {

    private record Box(double width, double height) {

        boolean fitsInto(Box other) {
            return width <= other.width && height <= other.height;
        }
    }

    private static Front front(List<Box> boxes) {
        Front front = new Front();
        boxes.forEach(box -> front.add(box.width(), box.height()));
        return front;
    }

    private static List<Box> boxes(Front front) {
        return IntStream.range(0, front.size()).mapToObj(at -> new Box(front.width(at), front.height(at))).toList();
    }

    /** Those into which no other fits, each once, by width: what a front has to hold, by looking at every pair. */
    private static List<Box> smallest(Stream<Box> boxes) {
        List<Box> all = boxes.distinct().toList();
        return all.stream().filter(box -> all.stream().noneMatch(other -> !other.equals(box) && other.fitsInto(box)))
                .sorted((one, other) -> Double.compare(one.width(), other.width())).toList();
    }

    /** Sides such as 53 for 5 x 3. */
    private static List<Box> boxes(List<Integer> sides) {
        return sides.stream().map(side -> new Box(1 + side / 10, 1 + side % 10)).toList();
    }

    /** By hand: 5 x 5 goes when 4 x 5 comes, 4 x 5 and 6 x 4 when 4 x 3 does; 4 x 4 and 4 x 3 again are no news. */
    @Test
    void a_smaller_box_makes_larger_ones_needless() {
        Front front = front(List.of(new Box(5, 5), new Box(4, 5), new Box(6, 4), new Box(9, 1), new Box(2, 8)));
        assertEquals(List.of(new Box(2, 8), new Box(4, 5), new Box(6, 4), new Box(9, 1)), boxes(front));
        front.add(4, 3);
        front.add(4, 4);
        front.add(4, 3);
        assertEquals(List.of(new Box(2, 8), new Box(4, 3), new Box(9, 1)), boxes(front));
    }

    /** By hand: each of 1 x 9, 2 x 8 and so on to 9 x 1 is lower than those before it, and none fits into another. */
    @Test
    void a_front_has_room_for_all_that_differ() {
        List<Box> steps = IntStream.rangeClosed(1, 9).mapToObj(side -> new Box(side, 10 - side)).toList();
        assertEquals(steps, boxes(front(steps)));
        assertEquals(List.of(new Box(1, 1)), boxes(front(Stream.concat(steps.stream(), Stream.of(new Box(1, 1))).toList())));
    }

    /** By hand: of 2 x 8, 4 x 3 and 9 x 1, what is at most 4 wide is 3 high at least, and what is at most 2 high is 9 wide. */
    @Test
    void the_least_side_is_that_of_the_boxes_that_still_fit() {
        Front front = front(List.of(new Box(2, 8), new Box(4, 3), new Box(9, 1)));
        assertEquals(3, front.leastHeight(4));
        assertEquals(8, front.leastHeight(3.9));
        assertEquals(Double.POSITIVE_INFINITY, front.leastHeight(1.9));
        assertEquals(9, front.leastWidth(2));
        assertEquals(4, front.leastWidth(3));
        assertEquals(Double.POSITIVE_INFINITY, front.leastWidth(0.9));
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    void a_front_holds_the_boxes_no_other_fits_into(@ForAll @Size(max = 30) List<@IntRange(max = 99) Integer> sides) {
        List<Box> all = boxes(sides);
        Front front = front(all);
        assertEquals(smallest(all.stream()), boxes(front));
        for (double side : DoubleStream.iterate(0.5, it -> it + 0.5).limit(22).toArray()) {
            assertEquals(all.stream().filter(box -> box.width() <= side).mapToDouble(Box::height).min().orElse(Double.POSITIVE_INFINITY),
                    front.leastHeight(side));
            assertEquals(all.stream().filter(box -> box.height() <= side).mapToDouble(Box::width).min().orElse(Double.POSITIVE_INFINITY),
                    front.leastWidth(side));
        }
    }

    /** Two boxes side by side are as wide as both and as high as the higher; one below the other the same, turned. */
    @Property(edgeCases = EdgeCasesMode.NONE)
    void boxes_beside_and_below_are_all_pairs_that_fit(@ForAll @Size(max = 12) List<@IntRange(max = 99) Integer> sides,
                                                       @ForAll @Size(max = 12) List<@IntRange(max = 99) Integer> others,
                                                       @ForAll @IntRange(min = 2, max = 20) int most) {
        Front one = front(boxes(sides));
        Front other = front(boxes(others));
        Front beside = new Front();
        beside.addBeside(one, other, most);
        beside.addBeside(other, one, most);
        Stream<Box> wide = boxes(sides).stream().flatMap(a -> boxes(others).stream()
                .map(b -> new Box(a.width() + b.width(), Math.max(a.height(), b.height()))));
        assertEquals(smallest(wide.filter(box -> box.width() <= most)), boxes(beside));
        Front below = new Front();
        below.addBelow(one, other, most);
        below.addBelow(other, one, most);
        Stream<Box> high = boxes(sides).stream().flatMap(a -> boxes(others).stream()
                .map(b -> new Box(Math.max(a.width(), b.width()), a.height() + b.height())));
        assertEquals(smallest(high.filter(box -> box.height() <= most)), boxes(below));
    }
}
