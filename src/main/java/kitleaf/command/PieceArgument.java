package kitleaf.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kitleaf.basket.PieceFile;

/**
 * Finds the one piece she means: an ID in a basket folder, an ID where she stands, a piece file, or a path to
 * either, as in {@code my-basket/fog-bell} or {@code my-basket/pieces/fog-bell.yaml}.
 */
final class PieceArgument {

    private static final String PIECES = "pieces";

    private PieceArgument() { }

    /** The piece that one or two arguments name. */
    static PieceFile find(List<String> arguments) throws Failure {
        try {
            if (arguments.size() == 2) {
                return in(Path.of(arguments.get(0)), arguments.get(1));
            }
            Path given = Path.of(arguments.get(0));
            if (Files.isDirectory(given)) {
                throw new Failure(Exit.WRONG_USAGE, given + " is a basket; name the piece after it, as in kitleaf log " + given + " fog-bell");
            }
            List<PieceFile> file = PieceFile.of(given);
            if (!file.isEmpty()) {
                return only(given, file);
            }
            Path folder = given.getParent();
            return in(folder == null ? Path.of("") : folder, String.valueOf(given.getFileName()));
        } catch (InvalidPathException e) {
            throw new Failure(Exit.WRONG_USAGE, "'" + arguments.get(0) + "' is not a piece; write its file name without .yaml");
        }
    }

    private static PieceFile only(Path given, List<PieceFile> file) throws Failure {
        if (file.size() > 1) {
            throw new Failure(Exit.WRONG_USAGE, "there are " + file.size() + " pieces in " + given + "; name one of them instead: " + ids(file));
        }
        return file.get(0);
    }

    private static PieceFile in(Path folder, String name) throws Failure {
        String id = name.endsWith(".yaml") ? name.substring(0, name.length() - ".yaml".length()) : name;
        // Standing in the pieces folder, or naming it, she means the basket around it.
        Path named = folder.toAbsolutePath().normalize();
        boolean inPieces = named.endsWith(PIECES) && !Files.isDirectory(named.resolve(PIECES)) && folder.toAbsolutePath().getParent() != null;
        Path basket = !inPieces ? folder : folder.toString().isEmpty() ? Path.of("..")
                : Optional.ofNullable(folder.getParent()).orElse(Path.of(""));
        List<PieceFile> pieces = PieceFile.in(basket);
        String shown = folder.toString().isEmpty() ? "this folder" : folder.toString();
        if (pieces.isEmpty()) {
            throw new Failure(Exit.WRONG_USAGE, "there are no pieces in " + shown + "; name the basket first, as in kitleaf log my-basket " + id);
        }
        List<PieceFile> found = pieces.stream().filter(piece -> piece.id().equals(id)).toList();
        if (found.isEmpty()) {
            throw new Failure(Exit.WRONG_USAGE, "there is no piece \"" + id + "\" in " + shown + "; its pieces are: " + ids(pieces));
        }
        return found.get(0);
    }

    private static String ids(List<PieceFile> pieces) {
        return pieces.stream().map(PieceFile::id).collect(Collectors.joining(", "));
    }
}
