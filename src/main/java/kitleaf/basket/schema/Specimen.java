package kitleaf.basket.schema;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.form.TableName;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.ProblemText;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.reader.PieceReader;
import kitleaf.basket.reader.Settings;
import kitleaf.basket.reader.SettingsReader;
import kitleaf.basket.table.Tables;
import kitleaf.basket.yaml.Node;
import kitleaf.basket.yaml.YamlTree;

/**
 * A basket in which every key stands, in every form it can take. It is read by the readers that read everybody's, and what they
 * ask of it is what may be written: whatever a reader takes or refuses, a description drawn from here says the same.
 *
 * @param basket documents of {@code basket.yaml}
 * @param pieces documents of piece files
 * @param asked what the readers asked of them
 */
record Specimen(List<Node> basket, List<Node> pieces, Testimony asked) {

    private static final String FOLDER = "specimen/";

    Specimen {
        basket = List.copyOf(basket);
        pieces = List.copyOf(pieces);
    }

    /**
     * Reads the specimen.
     *
     * @throws IllegalStateException if a reader finds anything wrong in it
     */
    static Specimen read() {
        return read(source("basket.yaml"), source("piece.yaml"));
    }

    /** Reads another specimen. */
    static Specimen read(Source basket, Source pieces) {
        Testimony asked = new Testimony();
        Problems problems = new Problems(asked);
        // Its tables are names alone: what stands in a table is no matter of YAML.
        Tables tables = (value, key, example) -> {
            Fields.scalar(value, Fields.key(key), new TableName(example), problems);
            return Optional.empty();
        };
        List<Node> settings = YamlTree.read(basket, problems).documents();
        List<Settings> read = settings.stream().map(new SettingsReader(tables, problems)::read).toList();
        List<Node> documents = YamlTree.read(pieces, problems).documents();
        PieceReader reader = new PieceReader(read.get(0), tables, problems);
        documents.forEach(document -> reader.read(document, "specimen"));
        if (!problems.none()) {
            throw new IllegalStateException("the specimen has problems:\n"
                    + String.join("\n", problems.all().stream().map(problem -> ProblemText.render(problem, BasketWords.in(Locale.ENGLISH)))
                            .toList()));
        }
        return new Specimen(settings, documents, asked);
    }

    /** One of its files. */
    static Source source(String name) {
        try (InputStream in = Objects.requireNonNull(Specimen.class.getResourceAsStream(FOLDER + name), name)) {
            return new Source(Path.of(FOLDER + name), new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
