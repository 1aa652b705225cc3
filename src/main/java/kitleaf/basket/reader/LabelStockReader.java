package kitleaf.basket.reader;

import java.util.List;
import java.util.Optional;
import kitleaf.basket.LabelStock;
import kitleaf.basket.LabelStocks;
import kitleaf.basket.Paper;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.LengthText;
import kitleaf.basket.form.Papers;
import kitleaf.basket.form.SizeText;
import kitleaf.basket.form.SizeText.Size;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Millimetres;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/** Reads what bobbin labels are printed on: a sheet of labels by its geometry, or plain paper to cut up. */
final class LabelStockReader {

    private static final String CUT = "cut";
    private static final List<String> GEOMETRY = List.of("columns", "rows", "label", "first", "pitch", "shape");

    private static final double LEAST_MM = 5;
    private static final LengthText SIDE = new LengthText(LEAST_MM, Paper.MOST_MM, "label.side", "40 mm");
    private static final Form<Size> LABEL = new SizeText(SIDE, false,
            "size.label", "2 5/8 in x 1 in");
    private static final Form<Size> ROUND_LABEL = new SizeText(SIDE, true, "size.diameter", "40 mm");

    static final Keys KEYS = Keys.under("label-stock", "{cut: 60 mm x 24 mm}");
    private static final Key<Paper> PAPER = KEYS.may("paper", Papers.form(), "letter");
    private static final Key<Integer> COLUMNS = KEYS.may("columns", new WholeText(1, 100, "3"), "3", "4");
    private static final Key<Integer> ROWS = KEYS.may("rows", new WholeText(1, 100, "10"), "10", "6");
    private static final Key<Size> OF_LABEL = KEYS.add(KEYS.may("label", LABEL, LABEL.example(), ROUND_LABEL.example()).or(ROUND_LABEL));
    private static final Key<Size> FIRST = KEYS.may("first", new SizeText(new LengthText(0, Paper.MOST_MM, "label.first", "5 mm"), false,
            "size.first", "3/16 in x 1/2 in"), "3/16 in x 1/2 in", "16 mm x 15 mm");
    private static final Key<Size> PITCH = KEYS.may("pitch",
            new SizeText(new LengthText(LEAST_MM, Paper.MOST_MM, "label.pitch", "70 mm"), false, "size.pitch", "2 3/4 in x 1 in"),
            "2 3/4 in x 1 in", "46 mm x 45 mm");
    private static final Key<LabelStock.Shape> SHAPE = KEYS.may("shape", Choice.of("choice.label-shape", LabelStock.Shape.class));
    private static final Key<LabelStock.Style> STYLE = KEYS.may("style", Choice.of("choice.label-style", LabelStock.Style.class));
    static final Key<Size> CUT_LABEL = KEYS.may(CUT, new SizeText(SIDE, false, "size.two", "60 mm x 24 mm"));

    private final Optional<Paper> usualPaper;
    private final Problems problems;

    /** A reader for a basket printed on some paper; none if that could not be read, and then no fit is judged. */
    LabelStockReader(Optional<Paper> usualPaper, Problems problems) {
        this.usualPaper = usualPaper;
        this.problems = problems;
    }

    /** The stock of a basket, if it names one that can be. */
    Optional<LabelStock> read(Fields basket) {
        return basket.group(SettingsReader.LABEL_STOCK, KEYS).flatMap(fields -> {
            Optional<Paper> paper = fields.meant("paper") ? fields.value(PAPER) : usualPaper;
            return fields.meant(CUT) ? cut(fields, paper) : sheet(fields, paper);
        });
    }

    private Optional<LabelStock> cut(Fields fields, Optional<Paper> paper) {
        for (String key : GEOMETRY) {
            if (fields.has(key)) {
                fields.wrong(key, Fault.of("label.cut-and-printed", key));
            }
        }
        Optional<Size> label = fields.value(CUT_LABEL);
        LabelStock.Style style = fields.value(STYLE).orElse(LabelStock.Style.WRAP);
        return label.filter(size -> roomy(fields, CUT, size, LabelStock.Shape.RECTANGLE, style)).flatMap(size -> paper.flatMap(sheet -> {
            Optional<LabelStock> stock = LabelStocks.cut(sheet, size.acrossMm(), size.downMm(), style);
            if (stock.isEmpty()) {
                tooLarge(fields, "label.too-wide", size.acrossMm(), sheet, LabelStocks.roomAcrossMm(sheet));
                tooLarge(fields, "label.too-high", size.downMm(), sheet, LabelStocks.roomDownMm(sheet));
            }
            return stock;
        }));
    }

    private static void tooLarge(Fields fields, String fault, double labelMm, Paper paper, double roomMm) {
        if (labelMm > roomMm + LabelStock.SLACK_MM) {
            Millimetres.Pair told = Millimetres.apart(labelMm, roomMm);
            fields.wrong(CUT, Fault.of(fault, told.first(), Quote.bare(paper.name()), told.second()));
        }
    }

    private static Optional<LabelStock> sheet(Fields fields, Optional<Paper> paper) {
        Optional<LabelStock.Shape> shape = fields.meant("shape") ? fields.value(SHAPE)
                : Optional.of(LabelStock.Shape.RECTANGLE);
        Optional<Integer> columns = fields.required(COLUMNS);
        Optional<Integer> rows = fields.required(ROWS);
        // A shape that could not be read may have been round.
        boolean rectangle = shape.equals(Optional.of(LabelStock.Shape.RECTANGLE));
        Form<Size> size = rectangle ? LABEL : ROUND_LABEL;
        Optional<Size> label = fields.required(OF_LABEL, size, Said.of(rectangle ? "size.label" : "size.diameter", size.example()));
        Optional<Size> first = fields.required(FIRST, FIRST.form(), Said.of("size.first", FIRST.example()));
        Optional<Size> pitch = fields.meant("pitch") ? fields.value(PITCH) : label;
        Optional<LabelStock.Style> style = fields.value(STYLE);
        Optional<Size> shaped = label.flatMap(one -> shape.flatMap(s -> shaped(fields, one, s)));
        boolean styled = styled(fields, shape, style) && shaped.flatMap(one -> shape.map(
                s -> roomy(fields, "label", one, s, style.orElse(usualStyle(s))))).orElse(true);
        if (!styled || shape.isEmpty() || columns.isEmpty() || rows.isEmpty() || shaped.isEmpty() || first.isEmpty() || pitch.isEmpty()
                || paper.isEmpty()) {
            return Optional.empty();
        }
        boolean across = LabelLine.across(columns.get(), shaped.get(), first.get(), pitch.get(), paper.get()).fits(fields, paper.get());
        boolean down = LabelLine.down(rows.get(), shaped.get(), first.get(), pitch.get(), paper.get()).fits(fields, paper.get());
        return across && down ? Optional.of(new LabelStock(paper.get(), columns.get(), rows.get(),
                shaped.get().acrossMm(), shaped.get().downMm(), first.get().acrossMm(), first.get().downMm(),
                pitch.get().acrossMm(), pitch.get().downMm(), shape.get(), false, style.orElse(usualStyle(shape.get()))))
                : Optional.empty();
    }

    private static boolean roomy(Fields fields, String key, Size size, LabelStock.Shape shape, LabelStock.Style style) {
        if (LabelStock.roomy(size.acrossMm(), size.downMm(), shape, style)) {
            return true;
        }
        fields.wrong(key, Fault.of(shape == LabelStock.Shape.ROUND ? "label.small.round"
                : style == LabelStock.Style.FACE ? "label.small.face" : "label.small.wrap"));
        return false;
    }

    private static LabelStock.Style usualStyle(LabelStock.Shape shape) {
        return shape == LabelStock.Shape.ROUND ? LabelStock.Style.FACE : LabelStock.Style.WRAP;
    }

    /** A label's size as its shape has it: a round one may be told in two units and still be one width. */
    private static Optional<Size> shaped(Fields fields, Size size, LabelStock.Shape shape) {
        if (shape != LabelStock.Shape.ROUND) {
            return Optional.of(size);
        }
        if (Math.abs(size.acrossMm() - size.downMm()) > LabelStock.SLACK_MM) {
            Millimetres.Pair told = Millimetres.apart(size.acrossMm(), size.downMm());
            fields.wrong("label", Fault.of("label.not-round", told.first(), told.second()));
            return Optional.empty();
        }
        return Optional.of(new Size(size.acrossMm(), size.acrossMm()));
    }

    private static boolean styled(Fields fields, Optional<LabelStock.Shape> shape, Optional<LabelStock.Style> style) {
        if (shape.equals(Optional.of(LabelStock.Shape.ROUND)) && style.equals(Optional.of(LabelStock.Style.WRAP))) {
            fields.wrong("style", Fault.of("label.round-wrap"));
            return false;
        }
        return true;
    }
}
