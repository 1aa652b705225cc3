package kitleaf.command.asking;

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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.ChartSize;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.form.ValueForm;
import kitleaf.basket.form.WrongValue;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.command.speech.Voice;

/** Asks for what a first piece needs. Answers are read by the forms that read a basket; a wrong one is asked for again. */
public final class Questions {

    /** A count as the file has it where warp and weft differ, with its braces or without. */
    private static final Pattern APART = Pattern.compile("\\{?\\s*warp\\s*:\\s*([^:{}]+?)\\s*,\\s*weft\\s*:\\s*([^:{}]+?)\\s*}?");

    private final BufferedReader typed;
    private final PrintWriter out;
    private final Voice voice;

    public Questions(BufferedReader typed, PrintWriter out, Voice voice) {
        this.typed = typed;
        this.out = out;
        this.voice = voice;
    }

    /** A piece of this title, or of one that is asked for first. */
    public NewText.Answers piece(Optional<String> given) throws IOException {
        out.println(voice.say("ask.begin"));
        String title = given.isPresent() ? given.get() : ask("ask.title", ValueForm.WORDS::read);
        ChartSize stitches = ask("ask.chart", ValueForm.CHART::read);
        Cloth.Kind kind = ask("ask.cloth", ValueForm.CLOTH_KIND::read);
        boolean block = kind == Cloth.Kind.BLOCK;
        String count = ask(block ? "ask.count-block" : "ask.count", Questions::count);
        String over = block ? "" : ", over: " + ask("ask.over", ValueForm.OVER::read);
        String cloth = "{kind: " + kind.name().toLowerCase(Locale.ROOT) + ", count: " + count + over + "}";
        return new NewText.Answers(title, stitches, cloth, threads());
    }

    private List<NewText.Thread> threads() throws IOException {
        List<NewText.Thread> threads = new ArrayList<>();
        Set<String> codes = new HashSet<>();
        out.println(voice.say("ask.threads"));
        while (true) {
            Optional<String> code = ask("ask.code", orNothing(text -> {
                String read = ValueForm.WORDS.read(text);
                if (!codes.add(read)) {
                    throw Failure.of(Exit.WRONG_USAGE, "ask.code-twice", read);
                }
                return read;
            }));
            if (code.isEmpty()) {
                return threads;
            }
            Optional<String> name = ask("ask.name", orNothing(ValueForm.WORDS::read));
            Optional<Integer> crosses = ask("ask.crosses", orNothing(ValueForm.STITCHES::read));
            threads.add(new NewText.Thread(code.get(), name, crosses.map(OptionalInt::of).orElseGet(OptionalInt::empty)));
        }
    }

    /** A count is kept as she wrote it, so that a measured one stays so; she may give warp and weft apart. */
    private static String count(String text) {
        Matcher apart = APART.matcher(text.strip());
        if (apart.matches()) {
            return "{warp: " + count(apart.group(1)) + ", weft: " + count(apart.group(2)) + "}";
        }
        ValueForm.COUNT.read(text);
        return text.strip();
    }

    private static <T> Function<String, Optional<T>> orNothing(Function<String, T> form) {
        return text -> text.isBlank() ? Optional.empty() : Optional.of(form.apply(text));
    }

    private <T> T ask(String question, Function<String, T> form) throws IOException {
        while (true) {
            out.print(voice.say(question));
            out.flush();
            String answer = typed.readLine();
            if (answer == null) {
                throw Failure.of(Exit.WRONG_USAGE, "ask.ended");
            }
            try {
                return form.apply(answer);
            } catch (WrongValue wrong) {
                out.println("  " + voice.say(wrong));
            } catch (Failure wrong) {
                out.println("  " + wrong.told(voice));
            }
        }
    }
}
