package kitleaf.command;

import java.util.Iterator;
import java.util.List;
import kitleaf.basket.Paper;
import kitleaf.basket.form.Papers;
import picocli.CommandLine.ITypeConverter;

/** Reads {@code --paper}. */
final class PaperOption implements ITypeConverter<Paper> {

    @Override
    public Paper convert(String value) {
        return Papers.named(value).orElseThrow(() -> new Unreadable("value.paper", value));
    }

    /** What a shell completes. */
    static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return List.of("A5", "A4", "A3", "A2", "A1", "letter", "legal", "tabloid").iterator();
        }
    }
}
