package kitleaf.sheet.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kitleaf.basket.Cloth;
import kitleaf.basket.Paper;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.Sheet;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.words.Words;

/**
 * Lays out the cut sheets: for each piece a page of sizes, drawing, steps and the what-if table, going over to
 * further pages where the paper is small, then its corner guide.
 */
public final class CutSheetLayout {

    private static final double GAP_MM = 8;
    private static final double SIZES_MM = 30;
    private static final double LEAST_DRAWING_MM = 55;
    /** Narrower than this, the page is one column. */
    private static final double TWO_COLUMNS_MM = 165;
    private static final double COLUMN_MM = 66;
    private static final double ROW_MM = 5;
    /** From this width on the what-if table gives both units. */
    private static final double WIDE_TABLE_MM = 140;
    /** The steps' share of the width where the table stands beside them. */
    private static final double STEPS_SHARE = 0.43;
    /** Where content starts on pages without sizes. */
    private static final double NEXT_PAGE_MM = Frames.HEADER_MM + 3;
    /** Forgives the last bits of adding heights up. */
    private static final double FLOW_SLACK_MM = 1e-6;

    private final Words words;
    private final Figures figures;
    private final SheetSettings settings;
    private final CutSheetWords phrases;

    private CutSheetLayout(SheetSettings settings) {
        this.words = SheetWords.in(settings.language());
        this.figures = new Figures(settings.units(), words);
        this.settings = settings;
        this.phrases = new CutSheetWords(words, figures);
    }

    /** The cut sheets of all pieces, each with its corner guide behind it. */
    public static Sheet layOut(Reckoning reckoning, SheetSettings settings) {
        return new CutSheetLayout(settings).layOut(reckoning);
    }

    private Sheet layOut(Reckoning reckoning) {
        Frames frames = new Frames(reckoning.basket(), settings, words, words.say("cut-sheet.name"));
        List<CutSheetPage> unnumbered = reckoning.pieces().stream().flatMap(piece -> pages(piece, frames).stream()).toList();
        List<CutSheetPage> pages = new ArrayList<>();
        for (CutSheetPage page : unnumbered) {
            pages.add(page.in(frames.of(pages.size() + 1, unnumbered.size())));
        }
        return new Sheet(SheetKind.CUT_SHEETS, pages.size(), Map.of(
                "title", reckoning.basket().title() + ": " + words.say("cut-sheet.name"),
                "subject", words.say("cut-sheet.subject"),
                "language", settings.language().toLanguageTag(),
                "wideTable", WIDE_TABLE_MM,
                "pages", pages));
    }

    private List<CutSheetPage> pages(PieceReckoning reckoned, Frames frames) {
        CutSheetPiece piece = phrases.of(reckoned);
        List<CutSheetPage> pages = new ArrayList<>();
        PageFrame frame = frames.of(0, 0);
        List<GuidePage> guides = new CornerGuideLayout(words, figures, settings, frame).pages(reckoned);
        if (settings.type().large()) {
            pages.addAll(new LargeCutSheet(words, figures, settings, frames).pages(reckoned, piece, guides.get(0)));
        } else {
            pages.addAll(ordinary(reckoned, piece, frame));
        }
        for (GuidePage guide : guides) {
            pages.add(new CutSheetPage(frame, piece, false, List.of(), null, null, guide));
        }
        return pages;
    }

    private List<CutSheetPage> ordinary(PieceReckoning reckoned, CutSheetPiece piece, PageFrame frame) {
        List<CutSheetPage> pages = new ArrayList<>();
        for (List<Block> blocks : flow(piece, reckoned)) {
            boolean first = pages.isEmpty();
            ClothDrawing drawing = blocks.stream().filter(block -> block.kind().equals("drawing")).findFirst()
                    .map(room -> ClothDrawing.of(reckoned.cloth().size(), warpDown(reckoned), room, figures, settings))
                    .orElse(null);
            pages.add(new CutSheetPage(frame, piece, first, blocks, drawing, null, null));
        }
        return pages;
    }

    /** What stands where: all on one page where it fits, else going over in the order of the work. */
    private List<List<Block>> flow(CutSheetPiece piece, PieceReckoning reckoned) {
        Paper paper = settings.paper();
        double innerMm = paper.widthMm() - 2 * Frames.MARGIN_MM;
        double bottomMm = paper.heightMm() - Frames.FOOT_MM - cautions(piece, innerMm);
        List<List<Block>> pages = paper.widthMm() >= TWO_COLUMNS_MM
                ? twoColumns(piece, reckoned, innerMm, bottomMm)
                : oneColumn(piece, innerMm, bottomMm);
        pages.forEach(page -> page.add(new Block("cautions", Frames.MARGIN_MM, bottomMm + 2.5, innerMm, 0)));
        return pages;
    }

    private List<List<Block>> twoColumns(CutSheetPiece piece, PieceReckoning reckoned, double innerMm, double bottomMm) {
        double topMm = Frames.HEADER_MM + SIZES_MM;
        double countsXMm = Frames.MARGIN_MM + innerMm - COLUMN_MM;
        double drawingWidthMm = innerMm - COLUMN_MM - GAP_MM;
        double counts = counts(piece, COLUMN_MM);
        double square = square(piece, COLUMN_MM);
        double upper = Math.max(counts + GAP_MM + square, LEAST_DRAWING_MM);
        double stepsWidthMm = innerMm * STEPS_SHARE;
        double tableXMm = Frames.MARGIN_MM + stepsWidthMm + 2 * GAP_MM;
        double tableWidthMm = innerMm - stepsWidthMm - 2 * GAP_MM;
        double lower = Math.max(steps(piece, stepsWidthMm), table(piece, tableWidthMm));
        if (topMm + upper > bottomMm) {
            return oneColumn(piece, innerMm, bottomMm);
        }
        boolean onePage = topMm + upper + GAP_MM + lower <= bottomMm;
        double roomMm = bottomMm - topMm - (onePage ? GAP_MM + lower : 0);
        double wholeMm = ClothDrawing.heightMm(reckoned.cloth().size(), warpDown(reckoned), drawingWidthMm, figures, settings);
        double drawingMm = Math.max(upper, Math.min(roomMm, wholeMm));
        List<List<Block>> pages = new ArrayList<>();
        pages.add(new ArrayList<>(List.of(
                new Block("sizes", Frames.MARGIN_MM, Frames.HEADER_MM, innerMm, SIZES_MM),
                new Block("drawing", Frames.MARGIN_MM, topMm, drawingWidthMm, drawingMm),
                new Block("counts", countsXMm, topMm, COLUMN_MM, counts),
                new Block("square", countsXMm, topMm + counts + GAP_MM, COLUMN_MM, square))));
        if (!onePage) {
            pages.add(new ArrayList<>());
        }
        double lowerYMm = onePage ? topMm + drawingMm + GAP_MM : NEXT_PAGE_MM;
        pages.get(pages.size() - 1).addAll(List.of(
                new Block("steps", Frames.MARGIN_MM, lowerYMm, stepsWidthMm, lower),
                new Block("table", tableXMm, lowerYMm, tableWidthMm, lower)));
        return pages;
    }

    private List<List<Block>> oneColumn(CutSheetPiece piece, double innerMm, double bottomMm) {
        double topMm = Frames.HEADER_MM + SIZES_MM;
        boolean drawingFirst = bottomMm - topMm >= LEAST_DRAWING_MM;
        List<Block> flowing = List.of(
                new Block("drawing", Frames.MARGIN_MM, 0, innerMm, bottomMm - (drawingFirst ? topMm : NEXT_PAGE_MM)),
                new Block("counts", Frames.MARGIN_MM, 0, innerMm, counts(piece, innerMm)),
                new Block("square", Frames.MARGIN_MM, 0, innerMm, square(piece, innerMm)),
                new Block("steps", Frames.MARGIN_MM, 0, innerMm, steps(piece, innerMm)),
                new Block("table", Frames.MARGIN_MM, 0, innerMm, table(piece, innerMm)));
        List<List<Block>> pages = new ArrayList<>();
        pages.add(new ArrayList<>(List.of(new Block("sizes", Frames.MARGIN_MM, Frames.HEADER_MM, innerMm, SIZES_MM))));
        double yMm = topMm;
        for (Block block : flowing) {
            if (yMm + block.heightMm() > bottomMm + FLOW_SLACK_MM) {
                pages.add(new ArrayList<>());
                yMm = NEXT_PAGE_MM;
            }
            pages.get(pages.size() - 1).add(new Block(block.kind(), block.xMm(), yMm, block.widthMm(), block.heightMm()));
            yMm += block.heightMm() + GAP_MM;
        }
        return pages;
    }

    static boolean warpDown(PieceReckoning reckoned) {
        return reckoned.piece().cloth().warp() == Cloth.WarpRun.DOWN;
    }

    private double cautions(CutSheetPiece piece, double widthMm) {
        return 5.5 + 3.4 * settings.ruler().lines(String.join(" ", piece.cautions()), "text", 400, settings.type().small(), widthMm);
    }

    private double counts(CutSheetPiece piece, double widthMm) {
        return 10 + 5.6 * piece.counts().size() + 4.2 * lines(piece.centre(), settings.type().note(), widthMm);
    }

    private double square(CutSheetPiece piece, double widthMm) {
        return 7 + 4.2 * lines(piece.square(), settings.type().body(), widthMm);
    }

    private double steps(CutSheetPiece piece, double widthMm) {
        return 6 + piece.steps().stream().mapToDouble(step -> 1.2 + 4.2 * lines(step, settings.type().body(), widthMm - 6)).sum();
    }

    private int lines(String text, double sizePt, double widthMm) {
        return settings.ruler().lines(text, "text", 400, sizePt, widthMm);
    }

    /** A wide table has its note beside its heading, a narrow one below its rows. */
    private static double table(CutSheetPiece piece, double widthMm) {
        return (widthMm >= WIDE_TABLE_MM ? 13 : 17) + ROW_MM * piece.others().size();
    }
}
