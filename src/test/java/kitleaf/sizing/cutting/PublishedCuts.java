package kitleaf.sizing.cutting;

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

    static CutCase instance(String name, boolean turns) {
        List<String[]> rows = rows("cutting2d-items.csv").get(name);
        return new CutCase(Double.parseDouble(rows.get(0)[1]), Double.parseDouble(rows.get(0)[2]), rows.stream().map(row ->
                new CutType(CutCase.shapes(Double.parseDouble(row[4]), Double.parseDouble(row[5]), turns), Integer.parseInt(row[6]),
                        Double.parseDouble(row[7]))).toList());
    }

    /** A sheet of 20 x 20 and the pieces that fill it, each worth its area. */
    static CutCase filling(String name, boolean turns) {
        return new CutCase(20, 20, rows("hopper-turton-c1.csv").get(name).stream().map(row -> {
            double width = Double.parseDouble(row[2]);
            double height = Double.parseDouble(row[3]);
            return new CutType(CutCase.shapes(width, height, turns), 1, width * height);
        }).toList());
    }
}
