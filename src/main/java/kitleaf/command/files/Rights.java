package kitleaf.command.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Set;

/** Who may read and write a file, where the system tells people apart by owner, group and all others. */
final class Rights {

    private Rights() { }

    /**
     * Gives a draft the rights of the file whose place it is to take. Where there is none, or a link, it keeps the rights every new file
     * gets. An owner or group it may not be given to is left: that group then may do no more than all others may.
     */
    static void keep(Path old, Path draft) throws IOException {
        PosixFileAttributeView from = Files.getFileAttributeView(old, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (from == null || !Files.isRegularFile(old, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        PosixFileAttributes was = from.readAttributes();
        PosixFileAttributeView to = Files.getFileAttributeView(draft, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        PosixFileAttributes is = to.readAttributes();
        Set<PosixFilePermission> rights = EnumSet.noneOf(PosixFilePermission.class);
        rights.addAll(was.permissions());
        if (!was.group().equals(is.group()) && !given(() -> to.setGroup(was.group()))) {
            onlyAsAllOthers(rights);
        }
        if (!rights.equals(is.permissions())) {
            to.setPermissions(rights);
        }
        if (!was.owner().equals(is.owner())) {
            given(() -> to.setOwner(was.owner()));
        }
    }

    private static void onlyAsAllOthers(Set<PosixFilePermission> rights) {
        if (!rights.contains(PosixFilePermission.OTHERS_READ)) {
            rights.remove(PosixFilePermission.GROUP_READ);
        }
        if (!rights.contains(PosixFilePermission.OTHERS_WRITE)) {
            rights.remove(PosixFilePermission.GROUP_WRITE);
        }
        if (!rights.contains(PosixFilePermission.OTHERS_EXECUTE)) {
            rights.remove(PosixFilePermission.GROUP_EXECUTE);
        }
    }

    /** Something only some may do. */
    private interface Gift {
        void give() throws IOException;
    }

    private static boolean given(Gift gift) {
        try {
            gift.give();
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
