package kitleaf.basket.reader;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.CardGrid;
import kitleaf.basket.Paper;
import kitleaf.basket.Tags;
import kitleaf.basket.key.Key;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Millimetres;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Spot;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/** Makes problems of what {@code basket.yaml} asks of sheets that have no room for it, which shows only when these are laid out. */
public final class Misfits {

    /** What a basket without a file of settings says of its sheets. */
    static final Misfits NONE = new Misfits(Map.of());

    /** Where the value of a key stands. */
    private final Map<Key<?>, Spot> spots;

    private Misfits(Map<Key<?>, Spot> spots) {
        this.spots = spots;
    }

    /** Those of the settings in a document. */
    static Misfits in(Node document) {
        Map<Key<?>, Spot> spots = new HashMap<>();
        Map.of(SettingsReader.TAGS, TagsReader.SIZE, SettingsReader.GOALS, GoalsReader.CARDS,
                SettingsReader.LABEL_STOCK, LabelStockReader.CUT_LABEL).forEach((group, key) -> under(document, group)
                .flatMap(in -> under(in, key)).ifPresent(value -> spots.put(key, value.place().spot())));
        return new Misfits(spots);
    }

    private static Optional<Node> under(Node node, Key<?> key) {
        return node instanceof Node.Mapping mapping ? Optional.ofNullable(mapping.entries().get(key.name())).map(Node.Entry::value)
                : Optional.empty();
    }

    /**
     * What besides the file makes the sheets what they are.
     *
     * @param large whether they are in large print
     * @param options of the command line without which there would be room; empty where the file alone says all
     */
    public record Cause(boolean large, List<String> options) {

        static final Cause FILE = new Cause(false, List.of());

        /** Copies the list. */
        public Cause {
            options = List.copyOf(options);
        }

        Object said() {
            return options.isEmpty() ? large ? Said.of("misfit.large") : ""
                    : Said.of(large ? "misfit.large-by" : "misfit.by", String.join(" ", options));
        }

        Object without() {
            return options.isEmpty() ? "" : Said.of("misfit.without", String.join(" ", options));
        }
    }

    /** The problem that tags do not fit their paper, with the largest share that does. */
    public Problem tags(Tags tags, Paper paper, Tags.Room room, Cause cause) {
        return spots.get(TagsReader.SIZE).problem(fault(tags, paper, room, cause));
    }

    static Fault fault(Tags tags, Paper paper, Tags.Room room, Cause cause) {
        String name = Quote.bare(paper.name());
        if (!(tags.size() instanceof Tags.Share share)) {
            return Fault.of(tags.sides() == Tags.Sides.FOLDED ? "tag.large.unfolded" : "tag.large", name, cause.said(), cause.without());
        }
        String other = Stream.of(Tags.Share.SIXTH, Tags.Share.QUARTER).filter(it -> new Tags(it, tags.sides(), 0, 0).on(paper, room)
                .isPresent()).findFirst().map(Tags.Share::word).orElse("");
        return Fault.of(other.isEmpty() ? "tag.share.none" : "tag.share", share.word(), name, cause.said(), Math.round(room.widthMm()),
                Math.round(room.heightMm()), other, cause.without());
    }

    /**
     * The problem that labels to be cut are higher than what their paper has above the foot of large print.
     *
     * @param roomMm what it has there
     */
    public Problem labels(double heightMm, Paper paper, double roomMm, Cause cause) {
        Millimetres.Pair told = Millimetres.apart(heightMm, roomMm);
        return spots.get(LabelStockReader.CUT_LABEL).problem(Fault.of("label.large", told.first(), Quote.bare(paper.name()), cause.said(),
                told.second(), cause.without()));
    }

    /**
     * The problem that goal cards have no room on their wall.
     *
     * @param fit the grids that would
     */
    public Problem cards(CardGrid cards, Paper wall, List<CardGrid> fit, Cause cause) {
        int most = fit.stream().mapToInt(CardGrid::number).max().orElse(0);
        String others = fit.stream().filter(it -> it.number() == most).sorted(Comparator.comparingInt(CardGrid::columns).reversed())
                .map(it -> it.columns() + " x " + it.rows()).collect(Collectors.joining(", "));
        return spots.get(GoalsReader.CARDS).problem(Fault.of(most == 0 ? "goals.no-room.none" : "goals.no-room",
                cards.columns() + " x " + cards.rows(), Quote.bare(wall.name()), cause.said(), others, cause.without()));
    }
}
