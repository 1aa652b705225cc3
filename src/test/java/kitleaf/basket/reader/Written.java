package kitleaf.basket.reader;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.Basket;
import kitleaf.basket.Piece;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.ProblemText;
import kitleaf.words.Words;

/** A folder of files written for a test, and what reading it tells, with the folder's own name left off. */
public record Written(Path folder) {

    /** A piece without faults, for tests that add one line. */
    public static final String PIECE = "piece: Fog bell\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\n";

    private static final Words ENGLISH = BasketWords.in(Locale.ENGLISH);

    public Written file(String name, String text) {
        return file(name, text.getBytes(StandardCharsets.UTF_8));
    }

    public Written file(String name, byte[] bytes) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Basket basket() {
        Reading reading = BasketReader.read(folder);
        if (reading.basket().isEmpty()) {
            throw new AssertionError("not read: " + heads(reading));
        }
        return reading.basket().get();
    }

    public Piece piece(String text) {
        return file("pieces/p.yaml", text).basket().pieces().get(0);
    }

    /** The first line of each problem's text. */
    public List<String> problems() {
        return heads(BasketReader.read(folder));
    }

    /** The problems of one piece file, with the file's name left off as well. */
    public List<String> problems(String piece) {
        return file("pieces/p.yaml", piece).problems().stream().map(p -> p.replace("pieces/p.yaml:", "")).toList();
    }

    /** A problem as it is told in English. */
    public static String english(Problem problem) {
        return ProblemText.render(problem, ENGLISH);
    }

    private List<String> heads(Reading reading) {
        return reading.problems().stream().map(Written::english).map(text -> text.split("\n")[0])
                .map(text -> text.replace(folder + "/", "").replace(folder.toString(), ".")).toList();
    }
}
