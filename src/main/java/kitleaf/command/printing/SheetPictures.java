package kitleaf.command.printing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import kitleaf.command.files.OutFolder;
import kitleaf.press.PagePictures;
import kitleaf.sheet.page.SheetKind;

/** Knows the pictures of a sheet: {@code cut-sheets-01.png} and so on, with as many figures as the last one needs. */
final class SheetPictures {

    private static final String ENDING = ".png";

    private SheetPictures() { }

    /** Draws the pages of a sheet's draft as drafts of their own. */
    static Printed draw(SheetKind kind, Path pdf, OutFolder out, IntConsumer onPage) throws IOException {
        List<Path> drawn = new ArrayList<>();
        PagePictures.draw(pdf, (page, pages) -> {
            String name = name(kind, page, pages);
            drawn.add(out.path(name));
            return out.draft(name).stream();
        }, onPage);
        return new Printed(drawn.get(0), Optional.empty(), drawn.size() == 1 ? Optional.empty() : Optional.of(drawn.get(drawn.size() - 1)));
    }

    private static String name(SheetKind kind, int page, int pages) {
        int figures = Math.max(2, Integer.toString(pages).length());
        return kind.id() + "-" + String.format(Locale.ROOT, "%0" + figures + "d", page) + ENDING;
    }

    /** Names that pictures of a sheet have. */
    static Predicate<String> of(SheetKind kind) {
        return Pattern.compile(Pattern.quote(kind.id()) + "-[0-9]{2,9}\\.png").asMatchPredicate();
    }
}
