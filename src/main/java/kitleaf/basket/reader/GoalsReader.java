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
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/** Reads what she wants of a year. */
final class GoalsReader {

    private static final List<String> KEYS = List.of("year", "choose", "pieces", "by", "main-share", "cards", "wall", "seed", "focus", "beside");
    private static final String EXAMPLE = "{year: 2027, choose: 9}";
    private static final String PIECES_EXAMPLE = "[breakwater, fog-bell]";
    private static final Form<Integer> YEAR = new WholeText(1900, 2199, "2027");
    private static final Form<Integer> CHOOSE = new WholeText(1, CardGrid.MOST, "9");
    private static final Form<String> ID = new TextForm("fog-bell");
    private static final Form<Goals.By> BY = Choice.of("choice.goals-by", Goals.By.class);
    private static final Form<Integer> SEED = new WholeText(0, WholeText.MOST, "7");

    private final Problems problems;

    GoalsReader(Problems problems) {
        this.problems = problems;
    }

    /** The basket's goals. Whether the pieces they name exist is left to {@link NamedGoals#check}. */
    NamedGoals read(Fields basket) {
        return basket.group("goals", EXAMPLE, KEYS).map(this::goals).orElse(NamedGoals.NONE);
    }

    private NamedGoals goals(Fields fields) {
        Optional<Integer> year = fields.required("year", YEAR);
        Optional<Integer> choose = fields.value("choose", CHOOSE);
        Map<String, Place> named = named(fields);
        List<String> pieces = List.copyOf(named.keySet());
        if (fields.has("choose") && fields.has("pieces")) {
            fields.wrong("pieces", Fault.of("goals.choose-and-pieces"));
            return new NamedGoals(Optional.empty(), named);
        }
        Goals.By by = fields.value("by", BY).orElse(Goals.By.NUMBER);
        double mainShare = fields.value("main-share", new MainShareText()).orElse(Goals.USUAL_MAIN_SHARE);
        Optional<CardGrid> cards = fields.value("cards", new CardsText());
        Optional<Paper> wall = fields.value("wall", Papers.form());
        OptionalLong seed = fields.value("seed", SEED).map(OptionalLong::of).orElseGet(OptionalLong::empty);
        Optional<String> focus = piece(fields, "focus", named);
        Optional<String> beside = piece(fields, "beside", named);
        if (focus.isPresent() && focus.equals(beside)) {
            fields.wrong("beside", Fault.of("goals.beside-itself", Quote.bare(focus.get())));
        }
        return new NamedGoals(year.map(y -> new Goals(y, choose.map(OptionalInt::of).orElseGet(OptionalInt::empty),
                pieces, by, mainShare, cards, wall, seed, new InHand(focus, beside))), named);
    }

    private static Optional<String> piece(Fields fields, String key, Map<String, Place> named) {
        Optional<String> id = fields.value(key, ID);
        id.ifPresent(one -> named.putIfAbsent(one, fields.placeOf(key)));
        return id;
    }

    private Map<String, Place> named(Fields fields) {
        Map<String, Place> named = new LinkedHashMap<>();
        Optional<Node> list = fields.node("pieces", PIECES_EXAMPLE);
        if (list.isEmpty()) {
            return named;
        }
        List<Node> items = fields.items(list.get(), "pieces", PIECES_EXAMPLE);
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
