package kitleaf.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.Paper;
import kitleaf.basket.place.Problem;
import kitleaf.basket.reader.Misfits;
import kitleaf.command.printing.PageSettings;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.sheet.Sheets;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sizing.Reckoning;

/**
 * Judges whether sheets have room for what the basket asks of them. What has none is a problem in its file, whoever makes it so: the file
 * alone, or options of the command line, which are then named.
 *
 * @param source where the basket was read
 * @param large whether large print was asked for on the command line
 * @param asOf the day the year is looked at from
 */
record RoomCheck(BasketSource source, boolean large, Optional<LocalDate> asOf) {

    /** Refuses what has no room on sheets of some kinds. */
    void refuse(Reckoning reckoning, List<SheetKind> kinds) {
        List<Problem> problems = kinds.stream().flatMap(kind -> problem(kind, reckoning).stream()).sorted(Problem.BY_PLACE).toList();
        if (!problems.isEmpty()) {
            throw Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> BasketSource.text(problems, voice));
        }
    }

    private Optional<Problem> problem(SheetKind kind, Reckoning reckoning) {
        Paper paper = reckoning.basket().paper();
        return misfit(kind, reckoning, paper, large).isEmpty() ? Optional.empty()
                : Stream.of(misfit(kind, reckoning, source.ownPaper(), false), misfit(kind, reckoning, paper, false),
                        misfit(kind, reckoning, source.ownPaper(), large), misfit(kind, reckoning, paper, large))
                .flatMap(Optional::stream).findFirst();
    }

    /** With some options of those there are, which are the cause where the file alone does not do it. */
    private Optional<Problem> misfit(SheetKind kind, Reckoning reckoning, Paper paper, boolean asked) {
        Basket basket = reckoning.basket();
        List<String> options = new ArrayList<>();
        if (!paper.equals(source.ownPaper())) {
            options.add("--paper " + paper.name());
        }
        if (asked && !basket.largePrint()) {
            options.add("--large");
        }
        boolean inLarge = asked || basket.largePrint();
        return Sheets.misfit(kind, reckoning, PageSettings.of(basket, inLarge, 0, asOf, Optional.empty(), false).on(paper),
                source.misfits(),
                new Misfits.Cause(inLarge, options));
    }
}
