package kitleaf.basket;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StashEntry;

/**
 * A stitcher's pieces and her shared settings.
 *
 * @param title what stands on every sheet; the folder's name when she gave none
 * @param language what sheets are written in
 * @param paper what she prints on
 * @param units what she thinks in
 * @param largePrint whether her sheets are set in large print
 * @param printer what her printer does to lengths
 * @param cutStepMm what cut sizes are rounded up to, where she set it
 * @param putUps the ways threads are sold, her own and the built-in ones
 * @param stash thread she has already, in the order she wrote it
 * @param prices what one skein of a put-up costs, by the put-up's name; all in one currency
 * @param labelStock what bobbin labels are printed on, where she said it
 * @param tags how bag tags are made
 * @param clothSupply the cloth she has and can buy
 * @param pace what she says of her pace
 * @param timeOff days without stitching, the earliest first
 * @param goals what she wants of a year, where she said it
 * @param pieces in the order of their IDs
 */
public record Basket(String title, Locale language, Paper paper, Units units, boolean largePrint, Printer printer, OptionalDouble cutStepMm,
                     List<PutUp> putUps, List<StashEntry> stash, Map<String, Price> prices,
                     Optional<LabelStock> labelStock, Tags tags, ClothSupply clothSupply, Pace pace, List<TimeOff> timeOff,
                     Optional<Goals> goals, List<Piece> pieces) {

    /** Copies the lists. */
    public Basket {
        Objects.requireNonNull(title);
        Objects.requireNonNull(language);
        Objects.requireNonNull(paper);
        Objects.requireNonNull(units);
        Objects.requireNonNull(printer);
        Objects.requireNonNull(cutStepMm);
        putUps = List.copyOf(putUps);
        stash = List.copyOf(stash);
        prices = Map.copyOf(prices);
        Objects.requireNonNull(labelStock);
        Objects.requireNonNull(tags);
        Objects.requireNonNull(clothSupply);
        Objects.requireNonNull(pace);
        timeOff = timeOff.stream().sorted(Comparator.comparing(TimeOff::from)).toList();
        Objects.requireNonNull(goals);
        pieces = List.copyOf(pieces);
    }

    /**
     * The same basket printed on other paper or in other units. Labels cut from this basket's paper are cut from the
     * other one, if that has room for them; printed label stock stays what it is.
     */
    public Basket on(Paper otherPaper, Units otherUnits) {
        Optional<LabelStock> otherStock = labelStock.map(stock -> stock.plain() && stock.paper().equals(paper)
                ? LabelStocks.cut(otherPaper, stock.widthMm(), stock.heightMm(), stock.style()).orElse(stock) : stock);
        return new Basket(title, language, otherPaper, otherUnits, largePrint, printer, cutStepMm, putUps, stash, prices, otherStock, tags,
                clothSupply, pace, timeOff, goals, pieces);
    }

    /** The same basket as it was known at the end of a day. */
    public Basket asOf(LocalDate day) {
        return with(pieces.stream().map(piece -> piece.with(piece.progress().asOf(day))).toList());
    }

    /** How many facts are of a later day than this. */
    public long factsAfter(LocalDate day) {
        return pieces.stream().map(Piece::progress).mapToLong(progress -> progress.facts() - progress.asOf(day).facts()).sum();
    }

    /** The same basket with only those of its pieces whose IDs are named. */
    public Basket only(List<String> ids) {
        return with(pieces.stream().filter(piece -> ids.contains(piece.id())).toList());
    }

    /** The same basket with other goals. */
    public Basket wanting(Goals other) {
        return new Basket(title, language, paper, units, largePrint, printer, cutStepMm, putUps, stash, prices, labelStock, tags,
                clothSupply, pace, timeOff, Optional.of(other), pieces);
    }

    private Basket with(List<Piece> others) {
        return new Basket(title, language, paper, units, largePrint, printer, cutStepMm, putUps, stash, prices, labelStock, tags,
                clothSupply, pace, timeOff, goals, others);
    }

    /** The date of the data: the latest day any piece's progress speaks of. */
    public Optional<LocalDate> latest() {
        return pieces.stream().flatMap(piece -> piece.progress().latest().stream()).max(Comparator.naturalOrder());
    }
}
