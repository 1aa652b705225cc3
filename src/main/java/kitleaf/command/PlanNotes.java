package kitleaf.command;

import java.util.List;
import kitleaf.sheet.SheetKind;
import kitleaf.sizing.Reckoning;
import kitleaf.words.Said;

/** What somebody who prints a cloth plan should be told of it. */
final class PlanNotes {

    private PlanNotes() { }

    /** Whether time was up; nothing for other sheets. */
    static List<Said> of(SheetKind kind, Reckoning reckoning) {
        return kind == SheetKind.CLOTH_PLAN && reckoning.clothPlan().cutShort() ? List.of(Said.of("plan.cut-short")) : List.of();
    }
}
