package kitleaf.sizing.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The published instances in the test resources; the head of each file names its source. */
final class PublishedCuts {

    private PublishedCuts() {
    }

    /** Rows by their first column, without comments and headings. */
    private static Map<String, List<String[]>> rows(String file) {
        try (InputStream in = Objects.requireNonNull(PublishedCuts.class.getResourceAsStream(file), file)) {
            Map<String, List<String[]>> rows = new LinkedHashMap<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                if (!line.startsWith("#") && !line.startsWith("instance")) {
                    String[] row = line.strip().split(",", -1);
                    rows.computeIfAbsent(row[0], name -> new ArrayList<>()).add(row);
                }
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Columns: instance, guillotine_opt, any_layout_opt, guillotine_opt_rot90, one_optimum; blank where not established. */
    static List<String[]> optima() {
        return rows("cutting2d-optima.csv").values().stream().map(it -> it.get(0)).toList();
    }

    /**
     * An instance: the rectangle, and for each type the ways it may lie, how many of it there are and what each is worth.
     */
    record Instance(double widthMm, double heightMm, List<List<Shape>> shapes, List<Integer> most, List<Double> values) {
    }

    static Instance instance(String name, boolean turns) {
        List<String[]> rows = rows("cutting2d-items.csv").get(name);
        return new Instance(number(rows.get(0)[1]), number(rows.get(0)[2]),
                rows.stream().map(row -> shapes(number(row[4]), number(row[5]), turns)).toList(),
                rows.stream().map(row -> Integer.valueOf(row[6])).toList(), rows.stream().map(row -> number(row[7])).toList());
    }

    /** A sheet of 20 x 20 and the pieces that fill it, each worth its area. */
    static Instance filling(String name) {
        List<String[]> rows = rows("hopper-turton-c1.csv").get(name);
        return new Instance(20, 20, rows.stream().map(row -> shapes(number(row[2]), number(row[3]), false)).toList(),
                rows.stream().map(row -> 1).toList(), rows.stream().map(row -> number(row[2]) * number(row[3])).toList());
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }

    private static List<Shape> shapes(double width, double height, boolean turns) {
        return turns ? List.of(new Shape(width, height), new Shape(height, width)) : List.of(new Shape(width, height));
    }
}
