package kitleaf.sheet.goal;

import java.util.List;

/** Says a chance the way people say it: as the nearest of a few plain fractions. */
final class ChanceWords {

    private record Said(double chance, String key) { }

    private static final List<Said> SAID = List.of(new Said(0.1, "chance.1-10"), new Said(0.2, "chance.1-5"), new Said(0.25, "chance.1-4"),
            new Said(1 / 3.0, "chance.1-3"), new Said(0.4, "chance.2-5"), new Said(0.5, "chance.1-2"), new Said(0.6, "chance.3-5"),
            new Said(2 / 3.0, "chance.2-3"), new Said(0.75, "chance.3-4"),
            new Said(0.8, "chance.4-5"), new Said(0.9, "chance.9-10"));

    private ChanceWords() { }

    /**
     * The key of the phrase for a chance.
     *
     * @param chance 0 to 1
     */
    static String key(double chance) {
        if (chance < 0.05) {
            return "chance.hardly";
        }
        if (chance > 0.95) {
            return "chance.almost-surely";
        }
        Said nearest = SAID.get(0);
        for (Said said : SAID) {
            if (Math.abs(said.chance() - chance) < Math.abs(nearest.chance() - chance)) {
                nearest = said;
            }
        }
        return nearest.key();
    }
}
