package kitleaf.command;

import java.util.List;
import java.util.Optional;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.words.Said;

/** What somebody who prints a cloth plan, or buys by it, should be told of it. */
final class PlanNotes {

    private PlanNotes() { }

    /**
     * Whether the search was ended; nothing for sheets without a plan, and told once.
     *
     * @param kinds all sheets that are printed
     */
    static List<Said> of(SheetKind kind, List<SheetKind> kinds, Reckoning reckoning) {
        boolean teller = kind == (kinds.contains(SheetKind.CLOTH_PLAN) ? SheetKind.CLOTH_PLAN : SheetKind.BUY_LIST);
        // Who asks for a plan gets one, whatever the basket tells.
        boolean cutShort = teller && (kind == SheetKind.CLOTH_PLAN ? Optional.of(reckoning.clothPlan()) : reckoning.clothPlanToldOf())
                .filter(ClothPlan::cutShort).isPresent();
        return cutShort ? List.of(Said.of("plan.cut-short")) : List.of();
    }
}
