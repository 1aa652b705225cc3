package kitleaf.basket.reader.thread;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.thread.Strands;
import kitleaf.basket.yaml.Node;

/** Reads how many strands a thread is worked with: one number, or one for each kind of its stitches. */
final class StrandsReader {

    /** Says the number for every kind that is not named. */
    private static final String REST = "else";
    static final Form<Integer> NUMBER = new WholeText(1, Strands.MOST, "2");
    static final Keys KEYS = Keys.under("strands", "{cross: 2, back: 1}");
    private static final List<Key<Integer>> NUMBERS = numbers();
    private static final Strands USUAL = Strands.of(2);

    private static final Pattern COMMA = Pattern.compile("[,;]");
    private static final Pattern PART = Pattern.compile("\\s*(\\p{L}[^:=]*?)\\s*[:=]?\\s*([0-9]+)\\s*");

    private final Problems problems;

    StrandsReader(Problems problems) {
        this.problems = problems;
    }

    private static List<Key<Integer>> numbers() {
        List<Key<Integer>> numbers = new ArrayList<>();
        for (StitchKind kind : StitchKind.values()) {
            numbers.add(KEYS.may(kind.word(), NUMBER, switch (kind) {
                case SATIN -> "3";
                case CROSS, QUARTER, THREE_QUARTER, KNOT -> "2";
                default -> "1";
            }));
        }
        numbers.add(KEYS.may(REST, NUMBER));
        StitchReader.OTHER_NAMES.forEach((kind, names) -> KEYS.also(kind, names.toArray(String[]::new)));
        return numbers;
    }

    /**
     * The strands of a thread.
     *
     * @param written what stands under its {@code stitches}
     * @param stitches those that could be read; where none are written it is worked in crosses, as its share is reckoned
     */
    Strands read(Fields thread, Optional<Node> written, List<StitchCount> stitches) {
        Optional<Node> node = thread.node(ThreadReader.STRANDS);
        if (node.isEmpty()) {
            return USUAL;
        }
        if (!(node.get() instanceof Node.Mapping)) {
            return thread.scalar(node.get(), Fields.key("strands"), NUMBER).map(Strands::of).orElse(USUAL);
        }
        return Fields.of(node.get(), KEYS, problems)
                .map(fields -> byKind(fields, thread.meant("stitches"), written, stitches)).orElse(USUAL);
    }

    private Strands byKind(Fields fields, boolean counted, Optional<Node> written, List<StitchCount> stitches) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        NUMBERS.forEach(key -> fields.value(key).ifPresent(number -> numbers.put(key.name(), number)));
        Set<String> there = !counted ? Set.of(StitchKind.CROSS.word())
                : written.filter(Node.Mapping.class::isInstance)
                        .map(node -> ((Node.Mapping) node).entries().keySet().stream().map(StitchReader.KEYS::meant)
                                .collect(Collectors.toSet())).orElse(Set.of());
        // Where a kind is misspelt, or no stitches could be read, it has been told already.
        if (!there.isEmpty() && StitchReader.KIND_WORDS.containsAll(there)) {
            fields.entries().keySet().stream().filter(key -> StitchReader.KIND_WORDS.contains(key) && !there.contains(key))
                    .forEach(key -> fields.wrong(key, Fault.of(counted ? "strands.no-such" : "strands.share", key)));
        }
        List<StitchKind> kinds = !counted ? List.of(StitchKind.CROSS)
                : stitches.stream().filter(one -> one.count() > 0).map(StitchCount::kind).toList();
        Map<StitchKind, Integer> each = new EnumMap<>(StitchKind.class);
        for (StitchKind kind : kinds) {
            String word = kind.word();
            if (!fields.meant(word) && !fields.meant(REST)) {
                problems.add(fields.place(), Fault.of("strands.missing", word));
            }
            each.put(kind, numbers.getOrDefault(word, numbers.getOrDefault(REST, USUAL.usual())));
        }
        return each.isEmpty() ? Strands.of(numbers.getOrDefault(REST, USUAL.usual())) : Strands.of(each, stitches);
    }

    /**
     * The cell of a table as the node a list of threads would have had: {@code cross 2, back 1} by kind, and a number as it is.
     *
     * @param kind the kind that is meant by a word, or the word
     */
    static Node ofCell(Node.Scalar cell, UnaryOperator<String> kind, Problems problems) {
        if (cell.text().length() > TextForm.LONGEST || cell.text().codePoints().noneMatch(Character::isLetter)) {
            return cell;
        }
        Map<String, Node.Entry> kinds = new LinkedHashMap<>();
        for (String part : COMMA.split(cell.text())) {
            Matcher matcher = PART.matcher(part);
            if (!matcher.matches()) {
                problems.add(cell.place(), Fault.of("strands.cell", Quote.bare(part.strip())));
                return new Node.Refused(cell.place());
            }
            String key = kind.apply(matcher.group(1));
            if (kinds.put(key, new Node.Entry(cell.place(), new Node.Scalar(cell.place(), matcher.group(2), true))) != null) {
                problems.add(cell.place(), Fault.of("fields.twice", Quote.bare(key)));
            }
        }
        return new Node.Mapping(cell.place(), kinds);
    }

    /** The cell of such strands: {@code 2}, or each kind of these stitches with its own. */
    static String cell(Strands strands, List<StitchCount> stitches) {
        if (!strands.differ()) {
            return String.valueOf(strands.usual());
        }
        return String.join(", ", stitches.stream().filter(one -> one.count() > 0)
                .map(one -> one.kind().word() + " " + strands.in(one.kind())).toList());
    }
}
