package kitleaf.press.binding;

import java.lang.module.ModuleDescriptor;
import java.util.Optional;

/** The version of the program, which every PDF names as its creator. */
final class ProgramVersion {

    private ProgramVersion() {
    }

    /** The version it was built as, {@code development} where it runs from its classes. */
    public static String text() {
        // The jar's manifest says it, or the module where the program lies in a runtime of its own.
        return Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion())
                .or(() -> Optional.ofNullable(ProgramVersion.class.getModule().getDescriptor()).flatMap(ModuleDescriptor::rawVersion))
                .orElse("development");
    }
}
