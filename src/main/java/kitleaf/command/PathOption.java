package kitleaf.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a file or folder. */
final class PathOption implements ITypeConverter<Path> {

    @Override
    public Path convert(String value) {
        try {
            return Path.of(value);
        } catch (InvalidPathException e) {
            throw new TypeConversionException("this name has letters that cannot stand in a file name here; "
                    + "if it looks right to you, set the language of your terminal to one with UTF-8, as in LC_ALL=C.UTF-8");
        }
    }
}
