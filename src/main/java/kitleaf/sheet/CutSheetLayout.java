package kitleaf.sheet;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kitleaf.basket.Basket;
import kitleaf.basket.Cloth;
import kitleaf.basket.Paper;
import kitleaf.basket.Printer;
import kitleaf.basket.Units;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;

/**
 * Lays out the cut sheets: for each piece a page of sizes, drawing, steps and the what-if table, going over to a
 * second and third page where the paper is small, then its corner guide.
 */
final class CutSheetLayout {

    static final double MARGIN_MM = 12;
    private static final double HEADER_MM = 41;
    private static final double GAP_MM = 8;
    /** Check bars, separator and signature. */
    private static final double FOOT_MM = 31;
    private static final double SIZES_MM = 30;
    private static final double LEAST_DRAWING_MM = 60;
    /** Narrower than this, the page is one column. */
    private static final double TWO_COLUMNS_MM = 165;
    private static final double COLUMN_MM = 66;
    static final double ROW_MM = 5.3;

    private final Words words;
    private final Figures figures;
    private final SheetSettings settings;
    private final CutSheetWords phrases;

    private CutSheetLayout(SheetSettings settings) {
        this.words = new Words(settings.language());
        this.figures = new Figures(settings.units());
        this.settings = settings;
        this.phrases = new CutSheetWords(words, figures);
    }

    static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return new CutSheetLayout(settings).layOut(reckoning);
    }

    private Sheet layOut(Reckoning reckoning) {
        List<CutSheetPage> unnumbered = reckoning.pieces().stream().flatMap(piece -> pages(piece, reckoning.basket()).stream()).toList();
        List<CutSheetPage> pages = new ArrayList<>();
        for (CutSheetPage page : unnumbered) {
            pages.add(new CutSheetPage(frame(reckoning.basket(), pages.size() + 1, unnumbered.size()), page.piece(),
                    page.first(), page.blocks(), page.drawing(), page.guide()));
        }
        return new Sheet(SheetKind.CUT_SHEETS, pages.size(), Map.of(
                "title", reckoning.basket().title() + ": " + words.say("cut-sheet.name"),
                "subject", words.say("cut-sheet.subject"),
                "language", settings.language().toLanguageTag(),
                "lines", new LinesFunction(settings.ruler()),
                "pages", pages));
    }

    private List<CutSheetPage> pages(PieceReckoning reckoned, Basket basket) {
        CutSheetPiece piece = phrases.of(reckoned);
        List<CutSheetPage> pages = new ArrayList<>();
        PageFrame frame = frame(basket, 0, 0);
        for (List<Block> blocks : flow(piece)) {
            boolean first = pages.isEmpty();
            ClothDrawing drawing = blocks.stream().filter(block -> block.kind().equals("drawing")).findFirst()
                    .map(room -> ClothDrawing.of(reckoned.cloth().size(),
                            reckoned.piece().cloth().warp() == Cloth.WarpRun.DOWN, room, figures))
                    .orElse(null);
            pages.add(new CutSheetPage(frame, piece, first, blocks, drawing, null));
        }
        for (GuidePage guide : new CornerGuideLayout(words, figures, phrases).pages(reckoned, settings.paper(), basket.printer())) {
            pages.add(new CutSheetPage(frame, piece, false, List.of(), null, guide));
        }
        return pages;
    }

    /** What stands where: everything on one page where it fits, else the table, then the steps go over. */
    private List<List<Block>> flow(CutSheetPiece piece) {
        Paper paper = settings.paper();
        double innerMm = paper.widthMm() - 2 * MARGIN_MM;
        double bottomMm = paper.heightMm() - FOOT_MM - cautions(piece, innerMm);
        double topMm = HEADER_MM + SIZES_MM;
        boolean twoColumns = paper.widthMm() >= TWO_COLUMNS_MM;
        double columnMm = twoColumns ? COLUMN_MM : innerMm;
        double steps = steps(piece, columnMm);
        double counts = counts(piece, columnMm);
        double table = table(piece);
        List<List<Block>> pages = new ArrayList<>();
        List<Block> page = new ArrayList<>(List.of(new Block("sizes", MARGIN_MM, HEADER_MM, innerMm, SIZES_MM)));
        pages.add(page);

        double columnXMm = paper.widthMm() - MARGIN_MM - COLUMN_MM;
        double column = counts + GAP_MM + steps;
        if (twoColumns && topMm + column + GAP_MM + table <= bottomMm) {
            double tableYMm = bottomMm - table;
            page.add(new Block("drawing", MARGIN_MM, topMm, columnXMm - MARGIN_MM - GAP_MM, tableYMm - GAP_MM - topMm));
            page.add(new Block("counts", columnXMm, topMm, COLUMN_MM, counts));
            page.add(new Block("steps", columnXMm, topMm + counts + GAP_MM, COLUMN_MM, steps));
            page.add(new Block("table", MARGIN_MM, tableYMm, innerMm, table));
            page.add(cautionsBlock(piece, bottomMm, innerMm));
            return pages;
        }
        List<Block> rest = new ArrayList<>();
        if (twoColumns && topMm + counts <= bottomMm) {
            page.add(new Block("drawing", MARGIN_MM, topMm, columnXMm - MARGIN_MM - GAP_MM, bottomMm - topMm));
            page.add(new Block("counts", columnXMm, topMm, COLUMN_MM, counts));
            if (topMm + column <= bottomMm) {
                page.add(new Block("steps", columnXMm, topMm + counts + GAP_MM, COLUMN_MM, steps));
            } else {
                rest.add(new Block("steps", MARGIN_MM, 0, innerMm, steps(piece, innerMm)));
            }
        } else if (bottomMm - topMm >= LEAST_DRAWING_MM) {
            page.add(new Block("drawing", MARGIN_MM, topMm, innerMm, bottomMm - topMm));
            rest.add(new Block("counts", MARGIN_MM, 0, innerMm, counts(piece, innerMm)));
            rest.add(new Block("steps", MARGIN_MM, 0, innerMm, steps(piece, innerMm)));
        } else {
            rest.add(new Block("drawing", MARGIN_MM, 0, innerMm, bottomMm - HEADER_MM));
            rest.add(new Block("counts", MARGIN_MM, 0, innerMm, counts(piece, innerMm)));
            rest.add(new Block("steps", MARGIN_MM, 0, innerMm, steps(piece, innerMm)));
        }
        page.add(cautionsBlock(piece, bottomMm, innerMm));
        rest.add(new Block("table", MARGIN_MM, 0, innerMm, table));

        double yMm = bottomMm;
        for (Block block : rest) {
            if (yMm + block.heightMm() > bottomMm) {
                page = new ArrayList<>();
                pages.add(page);
                page.add(cautionsBlock(piece, bottomMm, innerMm));
                yMm = HEADER_MM + 2;
            }
            page.add(new Block(block.kind(), block.xMm(), yMm, block.widthMm(), block.heightMm()));
            yMm += block.heightMm() + GAP_MM;
        }
        return pages;
    }

    private static Block cautionsBlock(CutSheetPiece piece, double bottomMm, double innerMm) {
        return new Block("cautions", MARGIN_MM, bottomMm + 2.5, innerMm, 0);
    }

    private double cautions(CutSheetPiece piece, double widthMm) {
        return 4 + 3.4 * settings.ruler().lines(String.join(" ", piece.cautions()), "text", 400, 7.5, widthMm);
    }

    private double counts(CutSheetPiece piece, double widthMm) {
        return 8 + 5.6 * piece.counts().size()
                + 2 + 4.2 * lines(piece.centre(), 8.5, widthMm)
                + 11 + 4.2 * lines(piece.square(), 9, widthMm);
    }

    private double steps(CutSheetPiece piece, double widthMm) {
        return 6 + piece.steps().stream().mapToDouble(step -> 1.2 + 4.2 * lines(step, 9, widthMm - 6)).sum();
    }

    private int lines(String text, double sizePt, double widthMm) {
        return settings.ruler().lines(text, "text", 400, sizePt, widthMm);
    }

    private static double table(CutSheetPiece piece) {
        return 17 + ROW_MM * piece.others().size();
    }

    private PageFrame frame(Basket basket, int number, int count) {
        Printer printer = basket.printer();
        String date = basket.latest()
                .map(day -> words.say("signature.data", DateTimeFormatter.ofPattern("d MMMM uuuu", settings.language()).format(day)))
                .orElse("");
        String correction = printer.equals(Printer.TRUE) ? ""
                : words.say("bars.corrected", millimetres(printer.measuredAcrossMm()), millimetres(printer.measuredDownMm()));
        return new PageFrame(settings.paper().widthMm(), settings.paper().heightMm(), number, count, basket.title(),
                words.say("cut-sheet.name"), date, correction, settings.units() == Units.IN);
    }

    private static String millimetres(double mm) {
        return Figures.decimal(mm, 2) + Figures.NO_BREAK + "mm";
    }
}
