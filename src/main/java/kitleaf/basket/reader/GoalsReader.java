package kitleaf.basket.reader;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import kitleaf.basket.CardGrid;
import kitleaf.basket.Goals;
import kitleaf.basket.InHand;
import kitleaf.basket.Paper;
import kitleaf.basket.form.CardsText;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.MainShareText;
import kitleaf.basket.form.Papers;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.key.Value;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/** Reads what she wants of a year. */
final class GoalsReader {

    static final Keys KEYS = Keys.under("goals", "{year: 2027, choose: 9}");
    private static final Form<String> ID = new TextForm("fog-bell");
    private static final Key<Integer> YEAR = KEYS.must("year", new WholeText(1900, 2199, "2027"));
    private static final Key<Integer> CHOOSE = KEYS.may("choose", new WholeText(1, CardGrid.MOST, "9"));
    private static final Key<Void> PIECES = KEYS.may("pieces", "[breakwater, fog-bell]", Value.list(Value.of(ID)));
    private static final Key<Goals.By> BY = KEYS.may("by", Choice.of("choice.goals-by", Goals.By.class));
    private static final Key<Double> MAIN_SHARE = KEYS.may("main-share", new MainShareText());
    static final Key<CardGrid> CARDS = KEYS.may("cards", new CardsText(), "3 x 3");
    private static final Key<Paper> WALL = KEYS.may("wall", Papers.form(), "A2");
    private static final Key<Integer> SEED = KEYS.may("seed", new WholeText(0, WholeText.MOST, "7"));

    private static final Key<String> FOCUS = KEYS.may("focus", ID);
    private static final Key<String> BESIDE = KEYS.may("beside", ID);

    private final Problems problems;

    GoalsReader(Problems problems) {
        this.problems = problems;
    }

    /** The basket's goals. Whether the pieces they name exist is left to {@link NamedGoals#check}. */
    NamedGoals read(Fields basket) {
        return basket.group(SettingsReader.GOALS, KEYS).map(this::goals).orElse(NamedGoals.NONE);
    }

    private NamedGoals goals(Fields fields) {
        Optional<Integer> year = fields.value(YEAR);
        Optional<Integer> choose = fields.value(CHOOSE);
        Map<String, Place> named = named(fields);
        List<String> pieces = List.copyOf(named.keySet());
        if (fields.has("choose") && fields.has("pieces")) {
            fields.wrong("pieces", Fault.of("goals.choose-and-pieces"));
            return new NamedGoals(Optional.empty(), named);
        }
        Goals.By by = fields.value(BY).orElse(Goals.By.NUMBER);
        double mainShare = fields.value(MAIN_SHARE).orElse(Goals.USUAL_MAIN_SHARE);
        Optional<CardGrid> cards = fields.value(CARDS);
        Optional<Paper> wall = fields.value(WALL);
        OptionalLong seed = fields.value(SEED).map(OptionalLong::of).orElseGet(OptionalLong::empty);
        Optional<String> focus = piece(fields, FOCUS, named);
        Optional<String> beside = piece(fields, BESIDE, named);
        if (focus.isPresent() && focus.equals(beside)) {
            fields.wrong("beside", Fault.of("goals.beside-itself", Quote.bare(focus.get())));
        }
        return new NamedGoals(year.map(y -> new Goals(y, choose.map(OptionalInt::of).orElseGet(OptionalInt::empty),
                pieces, by, mainShare, cards, wall, seed, new InHand(focus, beside))), named);
    }

    private static Optional<String> piece(Fields fields, Key<String> key, Map<String, Place> named) {
        Optional<String> id = fields.value(key);
        id.ifPresent(one -> named.putIfAbsent(one, fields.placeOf(key.name())));
        return id;
    }

    private Map<String, Place> named(Fields fields) {
        Map<String, Place> named = new LinkedHashMap<>();
        Optional<Node> list = fields.node(PIECES);
        if (list.isEmpty()) {
            return named;
        }
        List<Node> items = fields.items(list.get(), PIECES);
        if (list.get() instanceof Node.Sequence && (items.isEmpty() || items.size() > CardGrid.MOST)) {
            fields.wrong("pieces", Fault.of(items.isEmpty() ? "goals.no-pieces" : "goals.many-pieces", items.size(), CardGrid.MOST));
        }
        for (Node item : items) {
            fields.scalar(item, Said.of("thing.entry-of-pieces"), ID).ifPresent(id -> {
                if (named.putIfAbsent(id, item.place()) != null) {
                    problems.add(item.place(), Fault.of("goals.twice", Quote.bare(id)));
                }
            });
        }
        return named;
    }
}
