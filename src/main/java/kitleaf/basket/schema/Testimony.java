package kitleaf.basket.schema;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitleaf.basket.form.Form;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Witness;
import kitleaf.basket.place.Place;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/** All that readers asked of the files they were given. */
final class Testimony implements Witness {

    /**
     * Something with keys, as a reader sees it.
     *
     * @param name what it is called in a schema: {@code thread}
     * @param known the keys it may have, in the reader's order
     * @param met where it was met
     */
    record Group(String name, List<String> known, List<Node.Mapping> met) {
    }

    private final Map<String, Group> groups = new LinkedHashMap<>();
    private final Map<Place, Group> groupAt = new HashMap<>();
    private final Map<Place, List<String>> knownAt = new HashMap<>();
    private final Map<Place, Set<String>> needed = new HashMap<>();
    private final Map<Place, Set<Form<?>>> forms = new HashMap<>();

    @Override
    public void keys(Node.Mapping mapping, Said what, List<String> known) {
        String name = what.equals(Fields.key(last(what))) ? last(what) : what.key().substring(what.key().indexOf('.') + 1);
        Group group = groups.computeIfAbsent(name, n -> new Group(n, List.copyOf(known), new ArrayList<>()));
        if (group.met().stream().noneMatch(other -> other.place().equals(mapping.place()))) {
            group.met().add(mapping);
        }
        groupAt.put(mapping.place(), group);
        knownAt.put(mapping.place(), List.copyOf(known));
    }

    private static String last(Said what) {
        return what.slots().isEmpty() ? "" : String.valueOf(what.slots().get(what.slots().size() - 1));
    }

    @Override
    public void needed(Node.Mapping mapping, String key) {
        needed.computeIfAbsent(mapping.place(), place -> new LinkedHashSet<>()).add(key);
    }

    @Override
    public void form(Place value, Form<?> form) {
        forms.computeIfAbsent(value, place -> new LinkedHashSet<>()).add(form);
    }

    /** The group a mapping was taken for; nothing if its keys are names of her own. */
    Optional<Group> group(Node.Mapping mapping) {
        Optional<Group> group = namesOfHerOwn(mapping) ? Optional.empty() : Optional.ofNullable(groupAt.get(mapping.place()));
        group.filter(g -> !g.known().equals(knownAt.get(mapping.place()))).ifPresent(g -> {
            throw new IllegalStateException("two readers know different keys of " + g.name() + ": " + g.known() + " and "
                    + knownAt.get(mapping.place()));
        });
        return group;
    }

    /** Whether a form was asked of every key of a mapping: then they are no words of ours. */
    boolean namesOfHerOwn(Node.Mapping mapping) {
        return !mapping.entries().isEmpty() && mapping.entries().values().stream().allMatch(entry -> forms.containsKey(entry.key()));
    }

    /** The keys of a group that had to stand wherever it was met. */
    List<String> needed(Group group) {
        return group.known().stream().filter(key -> group.met().stream()
                .allMatch(mapping -> needed.getOrDefault(mapping.place(), Set.of()).contains(key))).toList();
    }

    /** The forms a value, or a key, was asked for. */
    Set<Form<?>> forms(Place value) {
        return forms.getOrDefault(value, Set.of());
    }
}
