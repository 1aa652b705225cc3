package kitleaf.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import kitleaf.basket.Basket;
import kitleaf.basket.Goals;
import kitleaf.basket.place.BasketFiles;
import kitleaf.basket.edit.ByHand;
import kitleaf.basket.edit.Edited;
import kitleaf.basket.edit.KeyEdit;
import kitleaf.basket.place.LinkGuard;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.SourceReader;
import kitleaf.command.files.EditedFile;
import kitleaf.command.printing.Pipeline;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.command.speech.ProgressLine;
import kitleaf.sheet.plain.PlainYear;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.year.YearReckoning;
import picocli.CommandLine.Model.OptionSpec;

/** Shows which pieces are proposed for the year, and writes them into the goals so that the choice stands still. */
final class ChooseCommand extends Task {

    private static final String GOALS = "goals";
    private static final String PIECES = "pieces";
    private static final String CHOOSE = "choose";

    private final BasketSource source = new BasketSource(this);
    private final OptionSpec keep = add(Options.flag("--keep"));
    private final OptionSpec asOf = add(Options.asOf());

    ChooseCommand(Kitleaf kitleaf) {
        super(kitleaf, "choose");
    }

    @Override
    public Integer call() {
        Basket written = source.read();
        LocalDate day = Options.<LocalDate>value(asOf).orElseGet(() -> ReckonCommand.usualDay(written));
        Basket basket = Pipeline.seen(written, day, new ProgressLine(line().getErr(), terminal().watched(), voice()));
        Goals goals = basket.goals().orElseThrow(() -> Failure.of(Exit.WRONG_USAGE, "choose.no-goals", settings().toString()));
        List<String> kept = goals.pieces();
        YearReckoning year = reckoned(basket, goals.choosing(kept.isEmpty() ? goals.choose() : OptionalInt.of(kept.size())), day);
        List<String> proposed = ids(year);
        PrintWriter out = line().getOut();
        new PlainYear(voice().language()).of(year).forEach(out::println);
        if (proposed.isEmpty()) {
            throw Failure.of(Exit.WRONG_USAGE, "choose.none");
        }
        out.println();
        if (!kept.isEmpty()) {
            tell("choose.comes", proposed, kept, basket);
            tell("choose.goes", kept, proposed, basket);
        }
        if (Options.given(keep)) {
            EditedFile.write(settings(), this::complain, () -> edit(proposed));
            out.println(voice().say("choose.kept", settings().toString()));
        } else {
            boolean same = kept.containsAll(proposed) && proposed.containsAll(kept);
            out.println(voice().say(same ? "choose.same" : kept.isEmpty() ? "choose.proposed" : "choose.other"));
        }
        return Exit.DONE;
    }

    private static YearReckoning reckoned(Basket basket, Goals goals, LocalDate day) {
        return Reckoning.of(basket.wanting(goals)).year(day).orElseThrow();
    }

    /** What stands on the wall: what is finished in the year and what is chosen for it, but for pieces wanted before it. */
    private static List<String> ids(YearReckoning year) {
        return Stream.concat(year.finished().stream().map(piece -> piece.piece().id()),
                year.chosen().stream().skip(year.early()).map(piece -> piece.id())).toList();
    }

    private void tell(String phrase, List<String> here, List<String> there, Basket basket) {
        List<String> titles = basket.pieces().stream().filter(piece -> here.contains(piece.id()) && !there.contains(piece.id()))
                .map(piece -> piece.title()).toList();
        if (!titles.isEmpty()) {
            line().getOut().println(voice().say(phrase, String.join("; ", titles)));
        }
    }

    private Path settings() {
        return BasketFiles.shown(source.basket().resolve(BasketFiles.SETTINGS));
    }

    /** The settings as they were read, and with the pieces named in them. */
    private record Kept(Path file, byte[] before, byte[] after) implements Edited { }

    private Kept edit(List<String> pieces) {
        Problems problems = new Problems();
        Optional<Path> file = LinkGuard.round(source.basket()).find(settings(), problems);
        Optional<byte[]> bytes = file.flatMap(real -> SourceReader.bytes(real, settings(), problems));
        if (bytes.isEmpty()) {
            throw Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> BasketSource.text(problems.all(), voice));
        }
        KeyEdit read = KeyEdit.of(bytes.get(), 1);
        try {
            boolean chooses = read.value(GOALS, CHOOSE).isPresent();
            return new Kept(file.get(), bytes.get(), (chooses ? read.replace(PIECES, pieces, GOALS, CHOOSE)
                    : read.set(new ArrayList<>(pieces), GOALS, PIECES)).bytes());
        } catch (ByHand how) {
            throw Failure.byHand(settings(), how);
        }
    }
}
