package kitleaf.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import kitleaf.basket.BasketReader;
import kitleaf.basket.PieceFile;
import kitleaf.basket.Reading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Begins a basket, or a piece in one. */
@Command(name = "new", header = "Begin a basket, or add a piece to one.",
        description = "%nWrites files that say in remarks what can stand in them. On a terminal it asks a few questions first. What is there "
                + "already is never changed.%n",
        footerHeading = "%nExamples:%n", footer = {
            "  kitleaf new my-basket",
            "  kitleaf new --piece \"Tide table\" my-basket",
            "  kitleaf new --piece \"Tide table\"       (in the basket folder)"})
final class NewCommand implements Callable<Integer> {

    private static final String ENDING = ".yaml";
    private static final String FIRST = "First piece";

    @Parameters(index = "0", arity = "0..1", paramLabel = "DIR",
            description = "The new basket's folder; with --piece the basket's, the one you stand in if left out.")
    private Path folder;

    @Option(names = "--piece", paramLabel = "NAME", converter = ValueOption.Words.class,
            description = "Add a piece of this title to a basket that is there.")
    private String title;

    @ParentCommand
    private Kitleaf kitleaf;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure, IOException {
        if (title == null && folder == null) {
            throw new Failure(Exit.WRONG_USAGE, "name a folder for the new basket, as in kitleaf new my-basket");
        }
        Path target = folder == null ? Path.of("") : folder;
        try {
            if (title == null) {
                basket(target);
            } else {
                piece(target);
            }
        } catch (IOException e) {
            throw OutFolder.couldNotWrite(target, e, "");
        }
        return Exit.DONE;
    }

    private void basket(Path basket) throws Failure, IOException {
        Path settings = basket.resolve("basket.yaml");
        Path pieces = basket.resolve("pieces");
        if (Files.exists(basket) && !Files.isDirectory(basket)) {
            throw new Failure(Exit.COULD_NOT_WRITE, basket + " is a file; name another folder for the new basket");
        }
        if (Files.exists(settings) || Files.exists(basket.resolve("basket.yml")) || holds(pieces)) {
            throw new Failure(Exit.COULD_NOT_WRITE, "there is a basket in " + basket + " already; add a piece to it with kitleaf new --piece NAME " + basket);
        }
        NewText.Answers answers = answers(Optional.empty());
        Files.createDirectories(pieces);
        Path piece = create(pieces, answers);
        FileText.create(settings, NewText.basket());
        told(List.of(settings, piece));
        spec.commandLine().getOut().println("Change them in any text editor, then: kitleaf print " + basket);
    }

    private void piece(Path basket) throws Failure, IOException {
        Path pieces = basket.resolve("pieces");
        if (!Files.exists(basket.resolve("basket.yaml")) && !Files.isDirectory(pieces)) {
            throw new Failure(Exit.WRONG_USAGE, "there is no basket in " + shown(basket) + "; begin one with kitleaf new DIR");
        }
        Reading reading = BasketReader.read(basket);
        String name = title.toLowerCase(Locale.ROOT);
        if (reading.basket().stream().flatMap(one -> one.pieces().stream()).anyMatch(one -> one.title().toLowerCase(Locale.ROOT).equals(name))) {
            throw new Failure(Exit.COULD_NOT_WRITE, "there is a piece called \"" + title + "\" in " + shown(basket) + " already; give this one another name");
        }
        NewText.Answers answers = answers(Optional.of(title));
        Files.createDirectories(pieces);
        told(List.of(create(pieces, answers)));
        if (reading.basket().isEmpty() && !PieceFile.in(basket).isEmpty() && !BasketReader.read(basket).problems().isEmpty()) {
            spec.commandLine().getOut().println("Something else in this basket has problems; name them with: kitleaf check " + shown(basket));
        }
    }

    private NewText.Answers answers(Optional<String> given) throws Failure, IOException {
        PrintWriter out = spec.commandLine().getOut();
        return kitleaf.terminal().typed().isPresent() ? new Questions(kitleaf.terminal().typed().get(), out).piece(given)
                : NewText.Answers.example(given.orElse(FIRST));
    }

    /** Writes a piece into its file and gives that. */
    private static Path create(Path pieces, NewText.Answers answers) throws Failure, IOException {
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
            throw new Failure(Exit.COULD_NOT_WRITE, "there is a piece " + taken + " in " + shown(basket) + " already; give this one another name");
        }
        FileText.create(file, NewText.piece(answers));
        return file;
    }

    private void told(List<Path> files) {
        files.forEach(file -> spec.commandLine().getOut().println("wrote " + file));
    }

    private static String shown(Path basket) {
        return basket.toString().isEmpty() ? "this folder" : basket.toString();
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
