package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import kitleaf.basket.LabelStock;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.table.TableFinder;
import kitleaf.basket.yaml.YamlTree;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** What holds of every label stock that is read. Lengths are whole tenths of a millimetre, so that fitting is told exactly. */
class LabelStockPropertyTests {

    /** One direction of a sheet, in tenths of a millimetre. */
    record Line(int sheet, int number, int label, int first, int pitch) {

        /** Every label on the sheet and clear of the one before, looked at one by one. */
        boolean fits() {
            for (int i = 0; i < number; i++) {
                int start = first + i * pitch;
                if (start + label > sheet || (i > 0 && start < first + (i - 1) * pitch + label)) {
                    return false;
                }
            }
            return true;
        }
    }

    @Provide
    Arbitrary<Line> lines() {
        return Arbitraries.integers().between(2100, 4000).flatMap(sheet -> Arbitraries.integers().between(1, 4).flatMap(number ->
                Combinators.combine(Arbitraries.integers().between(150, sheet / number - 100), Arbitraries.integers().between(0, sheet / 16),
                        Arbitraries.integers().between(-30, 60)).as((label, first, gap) ->
                                new Line(sheet, number, label, first, Math.max(50, label + gap)))));
    }

    private static String mm(int tenths) {
        return BigDecimal.valueOf(tenths, 1).toPlainString() + " mm";
    }

    private static Optional<LabelStock> read(String text, Problems problems) {
        TableFinder noTables = new TableFinder(Path.of("no-such-folder"), Path.of("no-such-folder"), problems);
        return SourceReader.decode(text.getBytes(StandardCharsets.UTF_8), Path.of("basket.yaml"), problems)
                .map(source -> YamlTree.read(source, problems)).map(read -> read.documents().get(0))
                .flatMap(document -> new SettingsReader(Optional.empty(), noTables, problems).read(document).labelStock());
    }

    @Property
    void stockIsReadExactlyWhenItsLabelsLieOnThePaperAndApart(@ForAll("lines") Line across, @ForAll("lines") Line down) {
        Problems problems = new Problems();
        Optional<LabelStock> stock = read("label-stock: {paper: " + mm(across.sheet()) + " x " + mm(down.sheet())
                + ", columns: " + across.number() + ", rows: " + down.number()
                + ", label: " + mm(across.label()) + " x " + mm(down.label())
                + ", first: " + mm(across.first()) + " x " + mm(down.first())
                + ", pitch: " + mm(across.pitch()) + " x " + mm(down.pitch()) + "}", problems);
        boolean fits = across.fits() && down.fits() && foldable(across.label(), down.label());
        Statistics.collect(fits);
        Statistics.coverage(coverage -> {
            coverage.check(true).percentage(share -> share > 5);
            coverage.check(false).percentage(share -> share > 5);
        });
        assertEquals(fits, stock.isPresent());
        assertEquals(fits, problems.none());
        stock.ifPresent(LabelStockPropertyTests::liesOnItsPaperAndApart);
    }

    @Property
    void cutStockLiesOnItsPaperAndApart(@ForAll("lines") Line across, @ForAll("lines") Line down) {
        Problems problems = new Problems();
        Optional<LabelStock> stock = read("paper: " + mm(across.sheet()) + " x " + mm(down.sheet())
                + "\nlabel-stock: {cut: " + mm(across.label()) + " x " + mm(down.label()) + "}", problems);
        // 10 mm at both sides; 10 mm at the top and 24 mm at the foot.
        boolean fits = across.label() + 200 <= across.sheet() && down.label() + 340 <= down.sheet() && foldable(across.label(), down.label());
        assertEquals(fits, stock.isPresent());
        assertEquals(fits, problems.none());
        stock.ifPresent(LabelStockPropertyTests::liesOnItsPaperAndApart);
    }

    /** Two faces of 20 mm x 12 mm: side by side where the label is at least as wide as high, else one below the other. */
    private static boolean foldable(int width, int height) {
        return width >= height ? width >= 400 && height >= 120 : width >= 200 && height >= 240;
    }

    private static void liesOnItsPaperAndApart(LabelStock stock) {
        lieApart(stock.columns(), stock.firstXMm(), stock.pitchXMm(), stock.widthMm(), stock.paper().widthMm());
        lieApart(stock.rows(), stock.firstYMm(), stock.pitchYMm(), stock.heightMm(), stock.paper().heightMm());
    }

    private static void lieApart(int number, double firstMm, double pitchMm, double labelMm, double sheetMm) {
        double freeMm = 0;
        for (int i = 0; i < number; i++) {
            double startMm = firstMm + i * pitchMm;
            assertTrue(startMm >= freeMm - 1e-6, "starts before the one before it ends");
            freeMm = startMm + labelMm;
            assertTrue(freeMm <= sheetMm + 1e-6, "ends past the paper");
        }
    }
}
