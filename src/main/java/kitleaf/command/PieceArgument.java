package kitleaf.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kitleaf.basket.reader.PieceFile;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.words.Said;

/**
 * Finds the one piece she means: its ID, its title or an unmistakable beginning of either in a basket folder, the same where she
 * stands, a piece file, or a path to either, as in {@code my-basket/fog-bell} or {@code my-basket/pieces/fog-bell.yaml}.
 */
final class PieceArgument {

    private static final String PIECES = "pieces";

    private PieceArgument() { }

    /** The piece that one or two arguments name. */
    static PieceFile find(List<String> arguments) {
        try {
            if (arguments.size() == 2) {
                return in(Path.of(arguments.get(0)), arguments.get(1));
            }
            Path given = Path.of(arguments.get(0));
            if (Files.isDirectory(given)) {
                throw Failure.of(Exit.WRONG_USAGE, "piece.basket", given.toString());
            }
            List<PieceFile> file = PieceFile.of(given);
            if (!file.isEmpty()) {
                return only(given, file);
            }
            Path folder = given.getParent();
            return in(folder == null ? Path.of("") : folder, String.valueOf(given.getFileName()));
        } catch (InvalidPathException e) {
            throw Failure.of(Exit.WRONG_USAGE, "piece.none", arguments.get(0));
        }
    }

    /**
     * A piece that stands in the table of a basket.
     *
     * @param basket the folder
     */
    record Row(Path basket, String id) { }

    /** The row that one or two arguments name, if no file has a piece of that ID and the basket can be read. */
    static Optional<Row> row(List<String> arguments) {
        try {
            Path given = Path.of(arguments.get(0));
            boolean two = arguments.size() == 2;
            if (!two && (Files.exists(given) || given.getFileName() == null)) {
                return Optional.empty();
            }
            Path basket = two ? given : Optional.ofNullable(given.getParent()).orElse(Path.of(""));
            String id = two ? arguments.get(1) : given.getFileName().toString();
            // Most name a file by its ID, for which no basket has to be read.
            return !Files.isDirectory(basket) || file(basket, id).isPresent() ? Optional.empty()
                    : PieceNames.in(basket).meant(id).filter(meant -> file(basket, meant).isEmpty()).map(meant -> new Row(basket, meant));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static PieceFile only(Path given, List<PieceFile> file) {
        if (file.size() > 1) {
            throw Failure.of(Exit.WRONG_USAGE, "piece.several", file.size(), given.toString(), ids(file));
        }
        return file.get(0);
    }

    private static PieceFile in(Path folder, String name) {
        String id = name.endsWith(".yaml") ? name.substring(0, name.length() - ".yaml".length()) : name;
        // Standing in the pieces folder, or naming it, she means the basket around it.
        Path named = folder.toAbsolutePath().normalize();
        boolean inPieces = named.endsWith(PIECES) && !Files.isDirectory(named.resolve(PIECES)) && folder.toAbsolutePath()
                .getParent() != null;
        Path basket = !inPieces ? folder : folder.toString().isEmpty() ? Path.of("..")
                : Optional.ofNullable(folder.getParent()).orElse(Path.of(""));
        Optional<PieceFile> exact = file(basket, id);
        if (exact.isPresent()) {
            return exact.get();
        }
        PieceNames names = PieceNames.in(basket);
        Object shown = folder.toString().isEmpty() ? Said.of("this-folder") : folder.toString();
        if (names.none()) {
            throw Failure.of(Exit.WRONG_USAGE, "piece.no-pieces", shown, id);
        }
        return names.meant(id).flatMap(meant -> file(basket, meant)).orElseThrow(() -> names.unknown(id, shown));
    }

    private static Optional<PieceFile> file(Path basket, String id) {
        return PieceFile.in(basket).stream().filter(piece -> piece.id().equals(id)).findFirst();
    }

    private static String ids(List<PieceFile> pieces) {
        return pieces.stream().map(PieceFile::id).collect(Collectors.joining(", "));
    }
}
