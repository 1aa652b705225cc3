package kitleaf.press.flow;

import java.util.ArrayList;
import java.util.List;
import kitleaf.press.markup.BadValue;
import kitleaf.press.markup.Presentation;

/**
 * How wide a column of a row or a grid is: {@code 34} millimetres, {@code 30%} of the whole, {@code auto} as wide as what stands in it, or
 * {@code *} and {@code 2*}, a share of what the others leave.
 */
record ColumnWidth(Kind kind, double number) {

    enum Kind { MILLIMETRES, SHARE, CONTENT, REST }

    /** The sum of widths is trusted to a millionth of a millimetre. */
    static final double SLACK_MM = 1e-6;

    /** What a column has at least where there is no room, so that something can be set in it. */
    private static final double LEAST_MM = 1;

    static final ColumnWidth CONTENT = new ColumnWidth(Kind.CONTENT, 0);

    /** Widths of columns side by side. */
    record Shared(double[] widthsMm, boolean whole) { }

    static ColumnWidth read(String text) throws BadValue {
        if (text.equals("auto")) {
            return CONTENT;
        }
        if (text.endsWith("*")) {
            return new ColumnWidth(Kind.REST, text.length() == 1 ? 1 : Presentation.notNegative(text.substring(0, text.length() - 1)));
        }
        boolean share = text.endsWith("%");
        double number = Presentation.notNegative(share ? text.substring(0, text.length() - 1) : text);
        return share ? new ColumnWidth(Kind.SHARE, number / 100) : new ColumnWidth(Kind.MILLIMETRES, number);
    }

    /** Several with blanks between. */
    static List<ColumnWidth> list(String text) throws BadValue {
        List<ColumnWidth> widths = new ArrayList<>();
        for (String word : text.strip().split("\\s+")) {
            widths.add(read(word));
        }
        return widths;
    }

    /** Shares a width among columns; those as wide as their content, told for them alone, give way where there is too little. */
    static Shared share(List<ColumnWidth> columns, double[] contentMm, double widthMm, double gapMm) {
        double[] widths = new double[columns.size()];
        double leftMm = widthMm - gapMm * Math.max(0, columns.size() - 1);
        double contentsMm = 0;
        double parts = 0;
        for (int i = 0; i < widths.length; i++) {
            ColumnWidth column = columns.get(i);
            switch (column.kind) {
                case MILLIMETRES -> widths[i] = column.number;
                case SHARE -> widths[i] = column.number * widthMm;
                case CONTENT -> widths[i] = contentMm[i];
                case REST -> parts += column.number;
            }
            leftMm -= widths[i];
            contentsMm += column.kind == Kind.CONTENT ? widths[i] : 0;
        }
        boolean whole = leftMm >= -SLACK_MM && (parts == 0 || leftMm >= LEAST_MM);
        double lessMm = parts == 0 ? Math.max(0, -leftMm) : Math.max(0, LEAST_MM - leftMm);
        for (int i = 0; i < widths.length; i++) {
            if (columns.get(i).kind == Kind.REST) {
                widths[i] = Math.max(LEAST_MM, leftMm * columns.get(i).number / parts);
            } else if (columns.get(i).kind == Kind.CONTENT && !whole) {
                widths[i] = Math.max(LEAST_MM, widths[i] - lessMm * widths[i] / contentsMm);
            }
        }
        return new Shared(widths, whole);
    }
}
