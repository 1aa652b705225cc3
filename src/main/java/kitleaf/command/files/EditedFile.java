package kitleaf.command.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Supplier;
import kitleaf.basket.edit.Edited;
import kitleaf.words.Said;

/** Writes edited files, each in the place of what was read, and of nothing that was saved there since. */
public final class EditedFile {

    /** A file that is saved this often while one edit is made is somebody else's to write. */
    private static final int MOST_TRIES = 20;

    private EditedFile() { }

    /**
     * Edits a file and writes it; if something else saves it meanwhile, edits what is in it by then.
     *
     * @param shown the file as she named it
     * @param told what there is to say of waiting for another run
     * @param edit reads the file anew each time
     * @return the edit that was written
     */
    public static <T extends Edited> T write(Path shown, Consumer<Said> told, Supplier<T> edit) {
        T edited = edit.get();
        Path folder = edited.file().getParent();
        try (OutFolder out = OutFolder.open(folder, told)) {
            for (int tries = 0; tries < MOST_TRIES && folder.equals(edited.file().getParent()); tries++) {
                if (out.replace(edited.file().getFileName().toString(), edited.before(), edited.after())) {
                    return edited;
                }
                edited = edit.get();
            }
            throw new InTheWay(shown, "write.saved-meanwhile");
        } catch (IOException e) {
            throw OutFolder.couldNotWriteThere(shown, e);
        }
    }
}
