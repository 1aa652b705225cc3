package kitleaf.sheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitleaf.basket.Paper;
import kitleaf.basket.Units;
import kitleaf.basket.reader.BasketReader;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sheet.page.TypeScale;
import kitleaf.sizing.Reckoning;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Far more on one cloth than a page can say. */
class CrowdedPlanTests {

    private static final Paper A4 = new Paper("A4", 210, 297);

    @TempDir
    private Path folder;

    /** Every letter half as wide as high; counts what it is asked. */
    private static final class CountingRuler implements TextRuler {

        private long asked;

        @Override
        public int codeModules(String text) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int lines(String text, String family, int weight, double sizePt, double widthMm) {
            asked++;
            return Math.max(1, (int) Math.ceil(text.length() * sizePt * 0.18 / widthMm));
        }

        @Override
        public double widthMm(String text, String family, int weight, double sizePt) {
            asked++;
            return text.length() * sizePt * 0.18;
        }
    }

    private Reckoning reckoning(int pieces, String flaws) throws IOException {
        Files.writeString(folder.resolve("basket.yaml"),
                "cloth-on-hand: [{name: Sea-mist, kind: linen, count: 36, size: 20 m x 20 m, flaws: [" + flaws + "]}]\n");
        Files.createDirectories(folder.resolve("pieces"));
        Files.writeString(folder.resolve("pieces/all.yaml"), IntStream.range(0, pieces)
                .mapToObj(i -> "piece: Piece " + i + "\nstitches: " + (40 + i % 17) + " x " + (40 + i % 19)
                        + "\ncloth: {name: Sea-mist, over: 2}\n")
                .collect(Collectors.joining("---\n")));
        return Reckoning.of(BasketReader.read(folder, Optional.empty()).basket().orElseThrow());
    }

    private static List<ClothPlanPage> pages(Reckoning reckoning, TypeScale type, TextRuler ruler) {
        SheetSettings settings = new SheetSettings(A4, Units.CM, type, 0, Optional.empty(), Optional.empty(), false,
                Locale.ENGLISH, ruler);
        List<?> pages = (List<?>) ClothPlanLayout.layOut(reckoning, settings).model().get("pages");
        return pages.stream().map(ClothPlanPage.class::cast).toList();
    }

    private static PlanDrawing drawing(List<ClothPlanPage> pages) {
        return pages.stream().flatMap(page -> page.drawings().stream()).findFirst().orElseThrow();
    }

    /** Head and foot of a page take more than 60 mm in any print. */
    private static void onPage(PlanDrawing drawing) {
        assertTrue(drawing.leaders().size() > 0, "some had no room");
        assertTrue(drawing.heightMm() < A4.heightMm() - 60, () -> "higher than a page: " + drawing.heightMm());
        for (PlanLine line : drawing.leaders()) {
            assertTrue(line.y2Mm() < drawing.heightMm(), () -> "runs out of the drawing: " + line);
        }
        for (PlanFigure figure : drawing.figures()) {
            assertTrue(figure.box().bottomMm() < drawing.heightMm(), () -> "runs out of the drawing: " + figure);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void numbers_without_room_stay_on_the_page_and_a_note_tells(boolean large) throws IOException {
        TypeScale type = large ? TypeScale.LARGE : TypeScale.ORDINARY;
        PlanDrawing drawing = drawing(pages(reckoning(300, ""), type, new CountingRuler()));
        onPage(drawing);
        assertTrue(drawing.piecesMissing());
    }

    @Test
    void many_flaws_are_drawn_each_and_stay_on_the_cloth() throws IOException {
        String flaws = IntStream.range(0, 150).mapToObj(i -> "{from-top: " + (100 + i * 130) + " mm, wide: 1 mm}")
                .collect(Collectors.joining(", "));
        List<ClothPlanPage> pages = pages(reckoning(1, flaws), TypeScale.ORDINARY, new CountingRuler());
        onPage(drawing(pages));
        assertEquals(150, drawing(pages).flaws().size());
        assertTrue(drawing(pages).flaws().stream().allMatch(flaw -> flaw.heightMm() > 0
                && flaw.bottomMm() <= drawing(pages).cloth().bottomMm()));
    }

    /** Names of 200 pieces in one paragraph are no help, and those of 2,000 are no page. */
    @Test
    void the_first_page_names_some_pieces_and_how_many_more_there_are() throws IOException {
        List<ClothPlanPage> pages = pages(reckoning(200, ""), TypeScale.ORDINARY, new CountingRuler());
        String below = pages.get(0).first().stream().filter(row -> row.name().equals("Sea-mist"))
                .findFirst().orElseThrow().below();
        assertEquals(40, below.split("Piece ", -1).length - 1);
        assertTrue(below.contains(", 160 more · "), below);
    }

    /** Four times the pieces, four times the words to measure; set anew for every page they were sixteen times. */
    @Test
    void words_are_measured_as_often_as_there_are_pieces() throws IOException {
        CountingRuler few = new CountingRuler();
        CountingRuler many = new CountingRuler();
        pages(reckoning(80, ""), TypeScale.ORDINARY, few);
        pages(reckoning(320, ""), TypeScale.ORDINARY, many);
        assertTrue(few.asked > 1000 && many.asked < 6 * few.asked, () -> few.asked + ", " + many.asked);
    }
}
