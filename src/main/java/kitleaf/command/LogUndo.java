package kitleaf.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import kitleaf.basket.edit.Edited;
import kitleaf.basket.edit.LogEdit;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.reader.PieceFile;
import kitleaf.command.files.EditedFile;
import kitleaf.command.files.LastEdit;
import kitleaf.command.files.OutFolder;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.words.Said;

/** Takes back what {@code log} wrote last in a basket, or in the folder of a piece that lies alone. */
final class LogUndo {

    private record Back(Path file, byte[] before, byte[] after) implements Edited { }

    private LogUndo() { }

    /** Remembers what was written. */
    static void remember(PieceFile piece, LogEdit.Ready written, String told, Consumer<Said> complain) {
        Path home = home(piece);
        try {
            LastEdit.of(name(home, piece), told, written.before(), written.after()).keep(home, complain);
        } catch (IOException | Failure e) {
            // The entry stands; all she loses is to have it taken back.
            complain.accept(Said.of("log.undo-unkept", home.toString()));
        }
    }

    /** Forgets what was written before an entry that cannot be taken back, which is the last one now. */
    static void forget(Path home) {
        try {
            LastEdit.forget(home);
        } catch (IOException e) {
            throw OutFolder.couldNotWriteThere(home, e);
        }
    }

    /** Takes back the last entry, of whichever piece of the basket it is, and gives what was said of it. */
    static String takeBack(List<String> arguments, Consumer<Said> complain) {
        boolean basket = arguments.size() == 1 && Files.isDirectory(Path.of(arguments.get(0)));
        Optional<PieceFile> named = basket ? Optional.empty() : Optional.of(PieceArgument.find(arguments));
        Path home = named.map(LogUndo::home).orElseGet(() -> Path.of(arguments.get(0)));
        try {
            LastEdit last = LastEdit.in(home).orElseThrow(() -> Failure.of(Exit.WRONG_USAGE, "log.undo-nothing", home.toString()));
            if (named.isPresent() && !name(home, named.get()).equals(last.name())) {
                throw Failure.of(Exit.WRONG_USAGE, "log.undo-other", last.told());
            }
            // Only a piece's own file is ever written, whatever the hidden file says.
            PieceFile piece = named.or(() -> PieceFile.in(home).stream().filter(one -> name(home, one).equals(last.name())).findFirst())
                    .orElseThrow(() -> Failure.of(Exit.WRONG_USAGE, "log.undo-nothing", home.toString()));
            EditedFile.write(piece.file(), complain, () -> back(piece, last));
            LastEdit.forget(home);
            return last.told();
        } catch (IOException e) {
            throw OutFolder.couldNotWriteThere(home, e);
        }
    }

    private static Back back(PieceFile piece, LastEdit last) {
        Problems problems = new Problems();
        Optional<Path> real = piece.fence().find(piece.file(), problems);
        byte[] now = real.flatMap(file -> SourceReader.bytes(file, piece.file(), problems))
                .orElseThrow(() -> Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> BasketSource.text(problems.all(), voice)));
        if (!last.left(now)) {
            throw Failure.of(Exit.COULD_NOT_WRITE, "log.undo-changed", piece.file().toString(), last.told());
        }
        return new Back(real.get(), now, last.before());
    }

    private static Path home(PieceFile piece) {
        return piece.basket().orElseGet(() -> Optional.ofNullable(piece.file().getParent()).orElse(Path.of("")));
    }

    private static String name(Path home, PieceFile piece) {
        return whole(home).relativize(whole(piece.file())).toString().replace('\\', '/');
    }

    private static Path whole(Path path) {
        return path.toAbsolutePath().normalize();
    }
}
