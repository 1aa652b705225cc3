package kitleaf.command;

import java.util.List;
import kitleaf.sheet.SheetKind;
import kitleaf.sizing.Reckoning;

/** What somebody who prints a cloth plan should be told of it. */
final class PlanNotes {

    /** Said when a plan was asked for and there is nothing to plan. */
    static final String NOTHING = "no cloth plan: every piece is begun, finished or cut already, so there is nothing to plan";

    private PlanNotes() { }

    /** Whether time was up; nothing for other sheets. */
    static List<String> of(SheetKind kind, Reckoning reckoning) {
        return kind == SheetKind.CLOTH_PLAN && reckoning.clothPlan().cutShort()
                ? List.of("time was up before the best plan was found or proved; with more --plan-seconds it may be better") : List.of();
    }
}
