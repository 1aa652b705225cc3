package kitleaf.sizing.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.thread.StashEntry;

/** One dye lot of one thread in the stash, and what is left of it while it is shared out. */
final class StashLot {

    private final int entry;
    private final Optional<String> lot;
    private double leftSkeins;

    private StashLot(int entry, Optional<String> lot) {
        this.entry = entry;
        this.lot = lot;
    }

    /**
     * The lots of one thread, in the order they stand in the stash. Entries of one named lot are one; an entry whose
     * lot is not known could be of any, so it stands alone.
     */
    static List<StashLot> of(List<StashEntry> stash, String code, String skein) {
        List<StashLot> lots = new ArrayList<>();
        for (int i = 0; i < stash.size(); i++) {
            StashEntry entry = stash.get(i);
            if (entry.code().equals(code) && entry.skein().equals(skein)) {
                StashLot lot = lots.stream().filter(it -> it.lot.isPresent() && it.lot.equals(entry.lot())).findFirst().orElse(null);
                if (lot == null) {
                    lot = new StashLot(i, entry.lot());
                    lots.add(lot);
                }
                lot.leftSkeins += entry.skeins();
            }
        }
        return lots;
    }

    int entry() {
        return entry;
    }

    Optional<String> lot() {
        return lot;
    }

    double leftSkeins() {
        return leftSkeins;
    }

    boolean covers(double skeins) {
        return leftSkeins >= skeins - Edge.SLACK;
    }

    /** Takes up to so much, and says how much it was. */
    double draw(double skeins) {
        double taken = Math.min(skeins, leftSkeins);
        leftSkeins -= taken;
        return taken;
    }
}
