package kitleaf.sizing.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitleaf.sizing.cutting.Shape;

/**
 * Pieces that are alike to the knife: of one size, and to be cut from the same cloths.
 *
 * @param members the pieces, in the basket's order, 1 or more
 * @param name the cloth's name they ask for, in small letters, if they ask for one
 * @param onHand which of the group's cloths on hand they may be cut from
 * @param shop which of the group's shop cuts they may be cut from
 */
record Kin(List<Wanted> members, Optional<String> name, Set<Integer> onHand, Set<Integer> shop) {

    Kin {
        members = List.copyOf(members);
        onHand = Set.copyOf(onHand);
        shop = Set.copyOf(shop);
    }

    int number() {
        return members.size();
    }

    List<Shape> shapes(boolean turning, Kerf kerf) {
        return members.get(0).shapes(turning, kerf);
    }
}
