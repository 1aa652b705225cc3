package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.GroupPrincipal;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipalNotFoundException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who may read and write a file stays as it is when the file is replaced, and is what it always is for a new one. */
class RightsTests {

    private static final String PIECE = "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void ownersGroupsAndAllOthersAreKnownHere() throws IOException {
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"), "this disk tells no rights");
    }

    private static String rights(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    private static void allow(Path file, String rights) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(rights));
    }

    private static GroupPrincipal group(Path file) throws IOException {
        return Files.getFileAttributeView(file, PosixFileAttributeView.class).readAttributes().group();
    }

    /** Another group the file may be given to, if there is one. */
    private static Optional<GroupPrincipal> given(Path file) throws IOException {
        GroupPrincipal own = group(file);
        for (String name : List.of("users", "staff", "games", "daemon")) {
            try {
                GroupPrincipal other = file.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByGroupName(name);
                Files.getFileAttributeView(file, PosixFileAttributeView.class).setGroup(other);
                if (!group(file).equals(own)) {
                    return Optional.of(other);
                }
            } catch (UserPrincipalNotFoundException | FileSystemException notHere) {
                continue;
            }
        }
        return Optional.empty();
    }

    @Test
    void a_sheet_a_table_and_a_schema_keep_theirs() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE + "threads: [{code: A, stitches: {cross: 100}}]\n");
        Object[] print = {"print", basket, "--only", "cut-sheets,buy-list", "--out", folder.resolve("out"), "--png"};
        Ran first = Ran.kitleaf(print);
        assertEquals(0, first.code(), first.err());
        assertEquals(0, Ran.kitleaf("schema", basket).code());
        List<Path> files = List.of(folder.resolve("out/cut-sheets.pdf"), folder.resolve("out/cut-sheets-01.png"), folder.resolve("out/buy-list.csv"),
                basket.resolve("schema/piece.schema.json"));
        for (Path file : files) {
            for (String rights : List.of("rw-------", "rw-rw-r--", "rw-rw-rw-")) {
                allow(file, rights);
                assertEquals(0, Ran.kitleaf(file.endsWith("piece.schema.json") ? new Object[] {"schema", basket} : print).code());
                assertEquals(rights, rights(file), file.toString());
            }
        }
    }

    @Test
    void a_piece_keeps_its_rights_and_its_group_when_an_evening_is_logged() throws IOException {
        Path file = Ran.basket(folder.resolve("b"), "", PIECE).resolve("pieces/piece.yaml");
        Optional<GroupPrincipal> other = given(file);
        for (String rights : List.of("rw-rw----", "rw-------", "rw-r--r--", "rw-rw-rw-")) {
            allow(file, rights);
            assertEquals(0, Ran.kitleaf("log", folder.resolve("b"), "piece", "--stitches", 1, "--hours", 1).code());
            assertEquals(rights, rights(file));
        }
        assumeTrue(other.isPresent(), "a file can be given to no other group here");
        assertEquals(other.get(), group(file));
    }

    @Test
    void a_new_file_gets_the_rights_of_every_new_file() throws IOException {
        String usual = rights(Files.writeString(folder.resolve("usual"), ""));
        assertEquals(0, Ran.kitleaf("new", folder.resolve("b")).code());
        assertEquals(0, Ran.kitleaf("schema", folder.resolve("b")).code());
        for (String name : List.of("basket.yaml", "pieces/first-piece.yaml", "schema/piece.schema.json", "schema/basket.schema.json")) {
            assertEquals(usual, rights(folder.resolve("b").resolve(name)), name);
        }
    }

    /** A link in a sheet's place is no sheet: what it leads to is not asked. */
    @Test
    void a_link_in_a_sheets_place_gives_it_no_rights() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        String usual = rights(Files.writeString(folder.resolve("usual"), ""));
        Path open = Files.writeString(folder.resolve("open"), "");
        allow(open, "rwxrwxrwx");
        Ran.link(Files.createDirectories(folder.resolve("out")).resolve("cut-sheets.pdf"), open);
        assertEquals(0, Ran.kitleaf("print", basket, "--only", "cut-sheets", "--out", folder.resolve("out")).code());
        assertEquals(usual, rights(folder.resolve("out/cut-sheets.pdf")));
    }
}
