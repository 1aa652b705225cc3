package kitleaf.basket.reader;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import kitleaf.basket.LabelStock;
import kitleaf.basket.Pace;
import kitleaf.basket.Paper;
import kitleaf.basket.Price;
import kitleaf.basket.Printer;
import kitleaf.basket.Tags;
import kitleaf.basket.TimeOff;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.form.LanguageText;
import kitleaf.basket.form.Papers;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StashEntry;

/**
 * What holds for a whole basket.
 *
 * @param title what she called it, if she did
 * @param language hers, else English
 * @param largePrint whether sheets are set in large print
 * @param putUps by name, the built-in ones first
 * @param putUpsKnown whether those are all she has; false when some could not be read
 * @param prices by the put-up's name
 * @param clothOnHandKnown whether the cloth on hand is all she has; false when some could not be read
 * @param timeOff in the order she wrote it
 * @param goals before the pieces they name are known
 */
public record Settings(Optional<String> title, Locale language, Paper paper, Units units, boolean largePrint, Printer printer,
        OptionalDouble cutStepMm, Map<String, PutUp> putUps, boolean putUpsKnown, List<StashEntry> stash, Map<String, Price> prices,
                Optional<LabelStock> labelStock, Tags tags,
                ClothSupply clothSupply, boolean clothOnHandKnown, Pace pace, List<TimeOff> timeOff, NamedGoals goals) {

    /** What holds when nothing is said. */
    public static final Settings USUAL = new Settings(Optional.empty(), Locale.ENGLISH, Papers.USUAL, Units.IN, false, Printer.TRUE,
            OptionalDouble.empty(), Map.of(PutUp.COTTON.name(), PutUp.COTTON), true, List.of(), Map.of(), Optional.empty(), Tags.USUAL,
            ClothSupply.NONE, true, Pace.UNSAID, List.of(), NamedGoals.NONE);

    /** Stands in for settings that could not be read. */
    public static final Settings UNREAD = new Settings(USUAL.title, USUAL.language, USUAL.paper, USUAL.units, USUAL.largePrint,
            USUAL.printer, USUAL.cutStepMm, USUAL.putUps, false, USUAL.stash, USUAL.prices, USUAL.labelStock, USUAL.tags,
            USUAL.clothSupply, false, USUAL.pace, USUAL.timeOff, USUAL.goals);

    /** These, which say nothing of it, in another language; units and paper are those usual where it is spoken. */
    Settings speaking(Locale other) {
        return new Settings(title, other, LanguageText.paper(other), LanguageText.units(other), largePrint, printer, cutStepMm, putUps,
                putUpsKnown, stash, prices, labelStock, tags, clothSupply, clothOnHandKnown, pace, timeOff, goals);
    }

    /** The cloths on hand that pieces may name. */
    KnownCloths clothsOnHand() {
        return new KnownCloths(clothSupply.onHand(), clothOnHandKnown);
    }
}
