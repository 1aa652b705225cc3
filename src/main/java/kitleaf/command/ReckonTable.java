package kitleaf.command;

import java.io.PrintWriter;
import kitleaf.sheet.PlainFigures;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;

/** Writes a reckoning for reading on a screen 80 columns wide. */
final class ReckonTable {

    private ReckonTable() { }

    static void write(Reckoning reckoning, PrintWriter out) {
        PlainFigures figures = new PlainFigures(reckoning.basket().units());
        boolean one = reckoning.pieces().size() == 1;
        out.println(reckoning.basket().title() + (one ? "" : ": " + reckoning.pieces().size() + " pieces"));
        for (PieceReckoning piece : reckoning.pieces()) {
            out.println();
            figures.piece(piece).forEach(out::println);
            if (one) {
                out.println();
                figures.others(piece).forEach(out::println);
            }
        }
    }
}
