package kitleaf.sizing.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kitleaf.basket.Paper;
import kitleaf.basket.Tags;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TagSheetsTests {

    private static final double SAME = 1e-9;
    private static final Paper A4 = new Paper("A4", 210, 297);

    private static TagSheets sheets(Paper paper, Tags.Size size, Tags.Sides sides) {
        return of(paper, new Tags(size, sides, 0, 0));
    }

    private static TagSheets of(Paper paper, Tags tags) {
        return TagSheets.of(paper, tags, 60, 55, 24);
    }

    /** By hand: A4 has 190 x 263 mm between 10 mm at the top and sides and 24 mm at the foot; a quarter is 95 x 131.5, folded 65.75 high. */
    @Test
    void a_quarter_of_a4_wastes_nothing() {
        TagSheets flat = sheets(A4, Tags.Share.QUARTER, Tags.Sides.LONG_EDGE);
        assertEquals(95, flat.tagWidthMm(), SAME);
        assertEquals(131.5, flat.tagHeightMm(), SAME);
        TagSheets folded = sheets(A4, Tags.Share.QUARTER, Tags.Sides.FOLDED);
        assertEquals(4, folded.perSheet());
        assertEquals(65.75, folded.tagHeightMm(), SAME);
        assertEquals(new TagPlace(105, 10 + 131.5 + 65.75, 95, 65.75, false), folded.front(3));
        assertEquals(new TagPlace(105, 10 + 131.5, 95, 65.75, true), folded.back(3));
    }

    /** By hand: a tag of 70 x 110 mm goes twice into 190 and twice into 263 mm; two of 70 centred start (210 - 140) / 2 = 35 mm in. */
    @Test
    void tags_of_her_own_size_lie_edge_to_edge() {
        TagSheets own = sheets(A4, new Tags.Own(70, 110), Tags.Sides.LONG_EDGE);
        assertEquals(4, own.perSheet());
        assertEquals(new TagPlace(35, 10, 70, 110, false), own.front(0));
        assertEquals(new TagPlace(105, 120, 70, 110, false), own.front(3));
    }

    /** By hand, as above: two columns of 95 mm from 10 mm on, two rows of 131.5. */
    @Test
    void cut_lines_run_at_the_sides_of_all_cells() {
        TagSheets flat = sheets(A4, Tags.Share.QUARTER, Tags.Sides.LONG_EDGE);
        assertEquals(List.of(10.0, 105.0, 200.0), flat.sidesXMm());
        assertEquals(List.of(10.0, 141.5, 273.0), flat.sidesYMm());
        assertTrue(flat.duplex());
        assertFalse(sheets(A4, Tags.Share.QUARTER, Tags.Sides.FOLDED).duplex());
    }

    /** By hand: 95 x 131.5 mm fill A4 twice by twice to the last bit; folded, 70 x 55 are 110 high with the other face, twice into 263. */
    @Test
    void as_many_tags_of_her_own_size_as_there_is_room_for() {
        assertEquals(4, sheets(A4, new Tags.Own(95, 131.5), Tags.Sides.LONG_EDGE).perSheet());
        TagSheets folded = sheets(A4, new Tags.Own(70, 55), Tags.Sides.FOLDED);
        assertEquals(4, folded.perSheet());
        assertEquals(110, folded.cellHeightMm(), SAME);
        assertEquals(55, folded.tagHeightMm(), SAME);
    }

    /** By hand: large print keeps 40 mm at the foot here, so two rows share 247 mm of A4. */
    @Test
    void large_tags_leave_the_foot_they_are_told_of() {
        TagSheets large = TagSheets.of(A4, new Tags(Tags.Share.QUARTER, Tags.Sides.LONG_EDGE, 0, 0), 90, 100, 40);
        assertEquals(4, large.perSheet());
        assertEquals(95, large.tagWidthMm(), SAME);
        assertEquals(123.5, large.tagHeightMm(), SAME);
    }

    /**
     * By hand: A4 has 190 x 263 mm for tags. Folded three below each other, each face is 263 / 6 = 43.8 high, too low; three side by side are
     * 190 / 3 = 63.3 wide and 263 / 4 = 65.75 high. Lying, 277 x 176: two rows folded are 176 / 4 = 44 high, four columns in one row
     * 277 / 4 = 69.25 x 88.
     */
    @ParameterizedTest
    @CsvSource({"210, 297, SIXTH, 3, 2, 63.333, 65.75", "297, 210, QUARTER, 4, 1, 69.25, 88"})
    void a_share_is_divided_the_way_that_makes_tags_large_enough(double width, double height, Tags.Share share, int columns, int rows,
            double tagWidth, double tagHeight) {
        TagSheets sheets = sheets(new Paper("own", width, height), share, Tags.Sides.FOLDED);
        assertEquals(columns, sheets.columns());
        assertEquals(rows, sheets.rows());
        assertEquals(tagWidth, sheets.tagWidthMm(), 0.001);
        assertEquals(tagHeight, sheets.tagHeightMm(), SAME);
    }

    /** By hand: A5 has 128 x 176 mm for tags; two rows folded are 44 high, so that what is not asked for by name is a half, 64 x 88. */
    @Test
    void where_she_says_nothing_tags_are_as_large_as_they_must_be() {
        Paper a5 = new Paper("A5", 148, 210);
        TagSheets usual = of(a5, Tags.USUAL);
        assertEquals(2, usual.perSheet());
        assertEquals(64, usual.tagWidthMm(), SAME);
        assertEquals(88, usual.tagHeightMm(), SAME);
        assertFalse(new Tags(Tags.Share.QUARTER, Tags.Sides.FOLDED, 0, 0).fit(a5));
        assertEquals(4, of(A4, Tags.USUAL).perSheet());
    }

    /**
     * By hand: a sixth is two by three along the longer side, so an upright A4 has two columns of 190 / 2 = 95 mm and a lying one three of
     * (297 - 20) / 3 = 92.333; a square counts as upright.
     */
    @ParameterizedTest
    @CsvSource({"210, 297, 2, 3", "297, 210, 3, 2", "250, 250, 2, 3"})
    void a_sixth_has_its_three_along_the_longer_side(double width, double height, int columns, int rows) {
        TagSheets sixths = sheets(new Paper("own", width, height), Tags.Share.SIXTH, Tags.Sides.LONG_EDGE);
        assertEquals(columns, sixths.columns());
        assertEquals(rows, sixths.rows());
        assertEquals((width - 20) / columns, sixths.tagWidthMm(), SAME);
    }

    /** A square sheet has no longer edge; it turns as an upright one does. */
    @Test
    void a_square_sheet_turns_like_an_upright_one() {
        assertTrue(sheets(new Paper("own", 250, 250), Tags.Share.QUARTER, Tags.Sides.LONG_EDGE).turnsUpright());
    }

    /** A page that turns like a book's is mirrored left to right; one that turns like a pad's, top to bottom, and its text the other way up. */
    @ParameterizedTest
    @CsvSource({"210, 297, LONG_EDGE, true", "210, 297, SHORT_EDGE, false", "297, 210, LONG_EDGE, false", "297, 210, SHORT_EDGE, true"})
    void the_edge_a_sheet_turns_over_depends_on_how_it_lies(double width, double height, Tags.Sides sides, boolean upright) {
        TagSheets sheets = sheets(new Paper("own", width, height), Tags.Share.QUARTER, sides);
        assertEquals(upright, sheets.turnsUpright());
        assertEquals(!upright, sheets.back(0).turned());
    }

    @Property
    void every_back_lies_behind_its_front(@ForAll @DoubleRange(min = 148, max = 450) double width, @ForAll @DoubleRange(min = 210, max = 450) double height,
            @ForAll Tags.Share share, @ForAll @IntRange(max = 1) int edge, @ForAll @DoubleRange(min = -5, max = 5) double right,
            @ForAll @DoubleRange(min = -5, max = 5) double below) {
        Paper paper = new Paper("own", width, height);
        Tags tags = new Tags(share, edge == 0 ? Tags.Sides.LONG_EDGE : Tags.Sides.SHORT_EDGE, right, below);
        Assume.that(tags.fit(paper));
        TagSheets sheets = of(paper, tags);
        for (int i = 0; i < sheets.perSheet(); i++) {
            TagPlace front = sheets.front(i);
            TagPlace back = sheets.back(i);
            double seenX = sheets.turnsUpright() ? width - back.xMm() - back.widthMm() : back.xMm();
            double seenY = sheets.turnsUpright() ? back.yMm() : height - back.yMm() - back.heightMm();
            // The printer adds its shift: what was aimed that much to the other side lands on the front.
            assertEquals(front.xMm(), seenX + right, SAME);
            assertEquals(front.yMm(), seenY + below, SAME);
        }
    }

    @Property
    void tags_stay_on_the_sheet_and_are_never_too_small(@ForAll @DoubleRange(min = 148, max = 450) double width,
            @ForAll @DoubleRange(min = 210, max = 450) double height, @ForAll Tags.Share share, @ForAll Tags.Sides sides, @ForAll boolean lying) {
        Paper paper = lying ? new Paper("own", height, width) : new Paper("own", width, height);
        Tags asked = new Tags(share, sides, 0, 0);
        TagSheets sheets = of(paper, asked.fit(paper) ? asked : new Tags(Tags.USUAL.size(), sides, 0, 0));
        assertTrue(!asked.fit(paper) || sheets.perSheet() == Map.of(Tags.Share.QUARTER, 4, Tags.Share.SIXTH, 6, Tags.Share.EIGHTH, 8).get(share));
        assertTrue(sheets.tagWidthMm() >= Tags.LEAST_WIDTH_MM && sheets.tagHeightMm() >= Tags.LEAST_HEIGHT_MM, sheets.toString());
        TagPlace last = sheets.front(sheets.perSheet() - 1);
        assertTrue(last.xMm() + last.widthMm() <= paper.widthMm() - 10 + SAME);
        assertTrue(last.yMm() + last.heightMm() <= paper.heightMm() - 24 + SAME);
    }
}
