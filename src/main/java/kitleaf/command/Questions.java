package kitleaf.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Cloth;
import kitleaf.basket.ValueForm;

/** Asks for what a first piece needs. Answers are read by the forms that read a basket; a wrong one is asked for again. */
final class Questions {

    private final BufferedReader typed;
    private final PrintWriter out;

    Questions(BufferedReader typed, PrintWriter out) {
        this.typed = typed;
        this.out = out;
    }

    /** A piece of this title, or of one that is asked for first. */
    NewText.Answers piece(Optional<String> given) throws Failure, IOException {
        out.println("A few questions. An answer can be changed later, in the file.");
        String title = given.isPresent() ? given.get() : ask("What is the piece called? ", ValueForm.WORDS::read);
        ChartSize stitches = ask("The chart's size, stitches wide x high: ", ValueForm.CHART::read);
        Cloth.Kind kind = ask("The cloth, linen, evenweave or block: ", ValueForm.CLOTH_KIND::read);
        boolean block = kind == Cloth.Kind.BLOCK;
        String count = ask(block ? "Its count, blocks to the inch: " : "Its count, threads to the inch: ", Questions::count);
        String over = block ? "" : ", over: " + ask("Threads a stitch spans, 1 or 2: ", ValueForm.OVER::read);
        String cloth = "{kind: " + kind.name().toLowerCase(Locale.ROOT) + ", count: " + count + over + "}";
        return new NewText.Answers(title, stitches, cloth, threads());
    }

    private List<NewText.Thread> threads() throws Failure, IOException {
        List<NewText.Thread> threads = new ArrayList<>();
        Set<String> codes = new HashSet<>();
        out.println("Its threads, one after another. Press Enter alone when that is all.");
        while (true) {
            Optional<String> code = ask("A thread's number or code: ", orNothing(text -> {
                String read = ValueForm.WORDS.read(text);
                if (!codes.add(read)) {
                    throw new IllegalArgumentException("\"" + read + "\" is in the list already; write another");
                }
                return read;
            }));
            if (code.isEmpty()) {
                return threads;
            }
            Optional<String> name = ask("  its colour name (Enter if none): ", orNothing(ValueForm.WORDS::read));
            Optional<Integer> crosses = ask("  cross stitches of it (Enter if you have not counted): ", orNothing(ValueForm.STITCHES::read));
            threads.add(new NewText.Thread(code.get(), name, crosses.map(OptionalInt::of).orElseGet(OptionalInt::empty)));
        }
    }

    /** A count is kept as she wrote it, so that a measured one stays so. */
    private static String count(String text) {
        ValueForm.COUNT.read(text);
        return text.strip();
    }

    private static <T> Function<String, Optional<T>> orNothing(Function<String, T> form) {
        return text -> text.isBlank() ? Optional.empty() : Optional.of(form.apply(text));
    }

    private <T> T ask(String question, Function<String, T> form) throws Failure, IOException {
        while (true) {
            out.print(question);
            out.flush();
            String answer = typed.readLine();
            if (answer == null) {
                throw new Failure(Exit.WRONG_USAGE, "the answers ended here; nothing was written");
            }
            try {
                return form.apply(answer);
            } catch (IllegalArgumentException wrong) {
                out.println("  " + wrong.getMessage());
            }
        }
    }
}
