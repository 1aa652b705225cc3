package kitleaf.command;

import java.util.ArrayList;
import java.util.List;
import kitleaf.sheet.SheetKind;
import kitleaf.sizing.Reckoning;

/** What somebody who prints a cloth plan should be told of it. */
final class PlanNotes {

    /** Said when a plan was asked for and there is nothing to plan. */
    static final String NOTHING = "no cloth plan: every piece is begun, finished or cut already, so there is nothing to plan";

    private PlanNotes() { }

    /**
     * Whether time was up, and whether large print was asked for in vain; nothing for other sheets.
     *
     * @param large whether large print was asked for
     */
    static List<String> of(SheetKind kind, Reckoning reckoning, boolean large) {
        List<String> notes = new ArrayList<>();
        if (large && !kind.setLarge()) {
            notes.add("this sheet is not set in large print yet; its words have their ordinary sizes");
        }
        if (kind == SheetKind.CLOTH_PLAN && reckoning.clothPlan().cutShort()) {
            notes.add("time was up before the best plan was found or proved; with more --plan-seconds it may be better");
        }
        return notes;
    }
}
