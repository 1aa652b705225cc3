package kitleaf.sizing.plan;

import java.util.List;

/**
 * The plan for one group.
 *
 * @param group the group
 * @param onHand which cloths on hand are opened, and how they are cut
 * @param bought the shop cuts, and how they are cut
 * @param proof what is proved of it
 */
record GroupPlan(Group group, List<Filled> onHand, List<Filled> bought, Proof proof) {

    GroupPlan {
        onHand = List.copyOf(onHand);
        bought = List.copyOf(bought);
    }
}
