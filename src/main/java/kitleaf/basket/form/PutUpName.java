package kitleaf.basket.form;

import java.util.Map;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.basket.thread.PutUp;
import kitleaf.words.NearMiss;
import kitleaf.words.Said;

/**
 * The name of a put-up of the basket.
 *
 * @param putUps all there are, by name
 * @param known whether those are all; false when some could not be read, and then any name is taken
 */
public record PutUpName(Map<String, PutUp> putUps, boolean known) implements Form<String> {

    /** Any name: which there are is the basket's. */
    public static final PutUpName ANY = new PutUpName(Map.of(), false);

    @Override
    public String read(String text) throws Fault {
        String name = new TextForm(example()).read(text);
        if (known && !putUps.containsKey(name)) {
            throw Fault.of(Said.of("skein.unknown", Quote.bare(name)), NearMiss.of(name, putUps.keySet()).map(Advice::meant)
                    .orElseGet(() -> Said.of("skein.add", Advice.on(name, putUps.keySet()))));
        }
        return name;
    }

    @Override
    public String example() {
        return PutUp.COTTON.name();
    }

    @Override
    public JsonShape shape() {
        return new TextForm(example()).shape();
    }
}
