package kitleaf.basket.place;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Gathers what is wrong, in whatever order it is met. */
public final class Problems {

    /** The most problems told of one file: past this a hostile file only floods the screen. */
    public static final int MOST_PER_FILE = 1000;

    private final List<Problem> found = new ArrayList<>();
    /** A table that several pieces share is read for each; what is wrong in it is told once. */
    private final Set<Problem> told = new HashSet<>();
    private final Map<Path, Integer> perFile = new HashMap<>();

    public void add(Place place, Fault fault) {
        add(place.problem(fault));
    }

    public void add(Path file, Fault fault) {
        add(Problem.of(file, fault));
    }

    /** Takes note of what is to be told of a file though nothing is wrong with it. */
    public void remark(Path file, Fault told) {
        add(Problem.remark(file, told));
    }

    public void add(Problem problem) {
        if (perFile.getOrDefault(problem.file(), 0) >= MOST_PER_FILE || !told.add(problem)) {
            return;
        }
        int number = perFile.merge(problem.file(), 1, Integer::sum);
        if (number < MOST_PER_FILE) {
            found.add(problem);
        } else {
            found.add(Problem.of(problem.file(), Fault.of("file.most-problems", MOST_PER_FILE)));
        }
    }

    /** Whether nothing is wrong. */
    public boolean none() {
        return found.stream().allMatch(Problem::remark);
    }

    /** All that was told, remarks among it. */
    public List<Problem> all() {
        return List.copyOf(found);
    }
}
