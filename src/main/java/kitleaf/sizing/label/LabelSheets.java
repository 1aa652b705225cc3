package kitleaf.sizing.label;

import java.util.Iterator;
import java.util.Objects;
import java.util.stream.IntStream;
import kitleaf.basket.LabelStock;

/**
 * The places of so many labels: row by row from the top, each row from the left, one sheet after another. Each place is
 * reckoned when it is asked for and none is kept, so that a hundred thousand labels take no more memory than one.
 *
 * @param stock what they are printed on
 * @param skip places of the first sheet that are used already and left out, 0 to one less than a sheet has
 * @param number labels in all, 0 or more
 */
public record LabelSheets(LabelStock stock, int skip, int number) implements Iterable<LabelPlace> {

    /** Refuses to skip a whole sheet, or less than nothing. */
    public LabelSheets {
        Objects.requireNonNull(stock);
        if (skip < 0 || skip >= stock.perSheet() || number < 0) {
            throw new IllegalArgumentException("skip must be 0 to " + (stock.perSheet() - 1) + " and number 0 or more: " + skip + ", "
                    + number);
        }
    }

    /** The places of {@code number} labels, past the {@code skip} that are used already. */
    public static LabelSheets places(LabelStock stock, int skip, int number) {
        return new LabelSheets(stock, skip, number);
    }

    /**
     * The place of one label. It is reckoned from the first label of the sheet, first + column x pitch and
     * first + row x pitch, never from the label before, so that no error adds up.
     *
     * @param label from 0 to one less than {@code number}
     * @throws IndexOutOfBoundsException if there is no such label
     */
    public LabelPlace place(int label) {
        Objects.checkIndex(label, number);
        long position = (long) skip + label;
        int onSheet = (int) (position % stock.perSheet());
        int column = onSheet % stock.columns();
        int row = onSheet / stock.columns();
        return new LabelPlace(label, (int) (position / stock.perSheet()), column, row,
                stock.firstXMm() + column * stock.pitchXMm(), stock.firstYMm() + row * stock.pitchYMm(),
                stock.widthMm(), stock.heightMm());
    }

    /** Sheets it takes; none for no labels. */
    public int pages() {
        return number == 0 ? 0 : place(number - 1).page() + 1;
    }

    /** All places in the order of the labels, one at a time. */
    @Override
    public Iterator<LabelPlace> iterator() {
        return IntStream.range(0, number).mapToObj(this::place).iterator();
    }
}
