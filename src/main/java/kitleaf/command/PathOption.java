package kitleaf.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;

/** Reads the name of a file or folder. */
final class PathOption implements ITypeConverter<Path> {

    @Override
    public Path convert(String value) {
        try {
            return Path.of(value);
        } catch (InvalidPathException e) {
            throw new Unreadable("value.path");
        }
    }
}
