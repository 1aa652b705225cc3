package kitleaf.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitleaf.basket.form.ValueForm;
import kitleaf.basket.place.LinkGuard;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.PieceFile;
import kitleaf.basket.reader.Reading;
import kitleaf.basket.schema.Schemas;
import kitleaf.command.asking.NewText;
import kitleaf.basket.place.PieceFileName;
import kitleaf.command.asking.Questions;
import kitleaf.command.files.NewFiles;
import kitleaf.command.files.OutFolder;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.words.Said;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Begins a basket, or a piece in one. */
final class NewCommand extends Task {

    private static final String ENDING = ".yaml";

    private final PositionalParamSpec folder = add(PositionalParamSpec.builder().index("0").arity("0..1").paramLabel("DIR")
            .type(Path.class));
    private final OptionSpec piece = add(Options.of("--piece", "NAME", String.class, ValueForm.WORDS));
    private final OptionSpec language = add(Options.language());

    NewCommand(Kitleaf kitleaf) {
        super(kitleaf, "new");
    }

    @Override
    public Integer call() throws IOException {
        String title = piece.getValue();
        if (title == null && folder.getValue() == null) {
            throw Failure.of(Exit.WRONG_USAGE, "new.no-folder");
        }
        Path target = Options.<Path>value(folder).orElse(Path.of(""));
        Options.<Locale>value(language).ifPresent(voice()::turnTo);
        try {
            if (title == null) {
                basket(target);
            } else {
                piece(target, title);
            }
        } catch (IOException e) {
            throw OutFolder.couldNotWriteThere(target, e);
        }
        return Exit.DONE;
    }

    private void basket(Path basket) throws IOException {
        Path settings = basket.resolve("basket.yaml");
        Path pieces = basket.resolve("pieces");
        if (Files.exists(basket) && !Files.isDirectory(basket)) {
            throw Failure.of(Exit.COULD_NOT_WRITE, "new.file", basket.toString());
        }
        if (Files.exists(settings) || Files.exists(basket.resolve("basket.yml")) || holds(pieces)) {
            throw Failure.of(Exit.COULD_NOT_WRITE, "new.basket", basket.toString());
        }
        NewText.Answers answers = answers(Optional.empty());
        Path piece;
        try (NewFiles made = new NewFiles()) {
            piece = create(made, pieces, made.folder(pieces, LinkGuard.round(basket)), answers);
            made.file(settings, NewText.basket(voice()));
            List<Path> schemas = schemas(made, basket, Set.of(Schemas.BASKET_FILE, Schemas.PIECE_FILE));
            made.keep();
            told("new.wrote-schema", schemas);
            told("new.wrote", List.of(settings, piece));
        }
        line().getOut().println(voice().say("new.then", typed(basket), settings.toString(), piece.toString()));
    }

    private void piece(Path basket, String title) throws IOException {
        Path pieces = basket.resolve("pieces");
        if (!Files.exists(basket.resolve("basket.yaml")) && !Files.isDirectory(pieces)) {
            throw Failure.of(Exit.WRONG_USAGE, "new.no-basket", shown(basket));
        }
        Reading reading = BasketReader.read(basket, Options.value(language));
        reading.language().ifPresent(voice()::turnTo);
        String name = title.toLowerCase(Locale.ROOT);
        if (reading.basket().stream().flatMap(one -> one.pieces().stream())
                .anyMatch(one -> one.title().toLowerCase(Locale.ROOT).equals(name))) {
            throw Failure.of(Exit.COULD_NOT_WRITE, "new.title", title, shown(basket));
        }
        NewText.Answers answers = answers(Optional.of(title));
        try (NewFiles made = new NewFiles()) {
            Path file = create(made, pieces, made.folder(pieces, LinkGuard.round(basket)), answers);
            List<Path> schemas = schemas(made, basket, Set.of(Schemas.PIECE_FILE));
            made.keep();
            told("new.wrote-schema", schemas);
            told("new.wrote", List.of(file));
        }
        if (reading.basket().isEmpty() && !PieceFile.in(basket).isEmpty() && !BasketReader.read(basket).problems().isEmpty()) {
            line().getOut().println(voice().say("new.problems", typed(basket)));
        }
    }

    private NewText.Answers answers(Optional<String> given) throws IOException {
        PrintWriter out = line().getOut();
        return terminal().typed().isPresent() ? new Questions(terminal().typed().get(), out, voice()).piece(given)
                : NewText.Answers.example(given.orElse(voice().say("new.first")));
    }

    /**
     * Writes a piece into its file and gives that.
     *
     * @param real where the folder of pieces really lies
     */
    private Path create(NewFiles made, Path pieces, Path real, NewText.Answers answers) throws IOException {
        String id = PieceFileName.of(answers.title());
        Path file;
        try {
            file = pieces.resolve(id + ENDING);
        } catch (InvalidPathException notInThisAlphabet) {
            id = PieceFileName.NAMELESS;
            file = pieces.resolve(id + ENDING);
        }
        if (id.equals(PieceFileName.NAMELESS)) {
            // Titles that leave no name would all meet here.
            for (char letter = 'b'; letter <= 'z' && Files.exists(file); letter++) {
                id = PieceFileName.NAMELESS + "-" + letter;
                file = pieces.resolve(id + ENDING);
            }
        }
        String taken = id;
        Path basket = pieces.getParent() == null ? Path.of("") : pieces.getParent();
        if (Files.exists(file) || PieceFile.in(basket).stream().anyMatch(piece -> piece.id().equals(taken))) {
            throw Failure.of(Exit.COULD_NOT_WRITE, "new.piece", taken, shown(basket));
        }
        made.file(real.resolve(file.getFileName()), NewText.piece(answers, voice()));
        return file;
    }

    /** Writes those of these schemas that the basket does not have yet and gives them. */
    private List<Path> schemas(NewFiles made, Path basket, Set<String> names) {
        Path folder = basket.resolve(Schemas.FOLDER);
        List<Path> written = new ArrayList<>();
        try {
            Path real = made.folder(folder, LinkGuard.round(basket));
            for (Map.Entry<String, String> schema : Schemas.files(voice().language()).entrySet()) {
                Path file = folder.resolve(schema.getKey());
                if (names.contains(schema.getKey()) && !Files.exists(file)) {
                    made.file(real.resolve(schema.getKey()), schema.getValue());
                    written.add(file);
                }
            }
        } catch (IOException e) {
            throw OutFolder.noRoomForSchemas(folder, e);
        }
        return written;
    }

    private void told(String phrase, List<Path> files) {
        files.forEach(file -> line().getOut().println(voice().say(phrase, file.toString())));
    }

    private static Object shown(Path basket) {
        return basket.toString().isEmpty() ? Said.of("this-folder") : basket.toString();
    }

    /** The basket as it is typed after a command. */
    private static String typed(Path basket) {
        String name = basket.toString();
        return name.isEmpty() ? "." : name.contains(" ") ? "\"" + name + "\"" : name;
    }

    private static boolean holds(Path pieces) throws IOException {
        if (!Files.isDirectory(pieces)) {
            return false;
        }
        try (Stream<Path> files = Files.list(pieces)) {
            return files.findAny().isPresent();
        }
    }
}
