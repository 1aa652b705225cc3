package kitleaf.command;

import java.util.Arrays;
import java.util.Iterator;
import java.util.stream.Collectors;
import kitleaf.sheet.page.SheetKind;
import picocli.CommandLine.ITypeConverter;

/** Reads the names given to {@code --only}. */
final class SheetKindOption implements ITypeConverter<SheetKind> {

    @Override
    public SheetKind convert(String value) {
        return Arrays.stream(SheetKind.values()).filter(kind -> kind.id().equals(value)).findFirst()
                .orElseThrow(() -> new Unreadable("value.sheet", value,
                        Arrays.stream(SheetKind.values()).map(SheetKind::id).collect(Collectors.joining(", "))));
    }

    /** What a shell completes. */
    static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Arrays.stream(SheetKind.values()).map(SheetKind::id).iterator();
        }
    }
}
