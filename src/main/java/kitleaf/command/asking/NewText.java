package kitleaf.command.asking;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import kitleaf.basket.ChartSize;
import kitleaf.basket.edit.YamlWords;
import kitleaf.basket.schema.Schemas;
import kitleaf.command.speech.Voice;

/**
 * The text of new files: the forms in {@code new-basket.yaml} and {@code new-piece.yaml}, or beside them in another language, filled
 * in.
 */
public final class NewText {

    private static final String FORMS = "/kitleaf/command/";

    private NewText() { }

    /**
     * What a piece is at least.
     *
     * @param cloth as written
     */
    public record Answers(String title, ChartSize stitches, String cloth, List<Thread> threads) {
        public Answers {
            threads = List.copyOf(threads);
        }

        /** A piece to change by hand. */
        public static Answers example(String title) {
            return new Answers(title, new ChartSize(80, 80), "{kind: linen, count: 28, over: 2}", List.of());
        }
    }

    /** A thread with as much as she knows of it. */
    record Thread(String code, Optional<String> name, OptionalInt stitches) { }

    public static String basket(Voice voice) {
        return Schemas.BASKET_COMMENT + "\n\n" + form("new-basket", voice);
    }

    public static String piece(Answers answers, Voice voice) {
        // The title goes in last: whatever stands in it is hers.
        return Schemas.PIECE_COMMENT + "\n\n" + form("new-piece", voice)
                .replace("{stitches}", answers.stitches().wide() + " x " + answers.stitches().high())
                .replace("{cloth}", answers.cloth())
                .replace("{threads}\n", answers.threads().isEmpty() ? ""
                        : "threads:\n" + answers.threads().stream().map(NewText::thread).collect(Collectors.joining("\n")) + "\n")
                .replace("{piece}", YamlWords.of(answers.title()));
    }

    private static String thread(Thread thread) {
        return "  - {code: " + YamlWords.of(thread.code()) + thread.name().map(name -> ", name: " + YamlWords.of(name)).orElse("")
                + (thread.stitches().isPresent() ? ", stitches: {cross: " + thread.stitches().getAsInt() + "}" : "") + "}";
    }

    private static String form(String name, Voice voice) {
        String own = FORMS + name + "_" + voice.language().getLanguage() + ".yaml";
        String file = NewText.class.getResource(own) == null ? FORMS + name + ".yaml" : own;
        try (InputStream in = NewText.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
