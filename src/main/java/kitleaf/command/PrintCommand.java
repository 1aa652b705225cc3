package kitleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import kitleaf.basket.Paper;
import kitleaf.sheet.SheetKind;
import kitleaf.sizing.Reckoning;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Prints sheets. */
@Command(name = "print", header = "Print the sheets of a basket as PDF.", footerHeading = "%nExamples:%n", footer = {
    "  kitleaf print my-basket",
    "  kitleaf print my-basket --piece breakwater --paper letter --out tonight",
    "  kitleaf print my-basket --only bobbin-labels --skip 12",
    "  kitleaf print my-basket --only cut-sheets --png --open",
    "Print the PDFs at 100 %% (\"actual size\"), never \"fit to page\"."})
class PrintCommand implements Callable<Integer> {

    @Mixin
    private BasketSource source;

    @Option(names = "--only", paramLabel = "SHEET", split = ",", converter = SheetKindOption.class, completionCandidates = SheetKindOption.Words.class,
            description = "Only these sheets, with commas between: cut-sheets, bobbin-labels, kit-lists, buy-list, bag-tags, "
                    + "goal-grid, cloth-plan. Default: all of these, the cloth plan where the basket tells of cloth. duplex-check comes only when asked for.")
    private List<SheetKind> only = List.of();

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "out",
            description = "The folder the PDFs go to; made if it is not there. Default: out.")
    private Path out;

    @Option(names = "--paper", paramLabel = "PAPER", converter = PaperOption.class, completionCandidates = PaperOption.Words.class,
            description = "A5, A4, A3, A2, A1, letter, legal, tabloid, any with landscape after it, or a size such as \"210 mm x 320 mm\". "
                    + "Default: the basket's paper, else A4.")
    private Paper paper;

    @Option(names = "--large", description = "Large print: words of 16 pt and more, on more pages. Default: as the basket says, else no.")
    private boolean large;

    @Option(names = "--skip", paramLabel = "N", converter = PlacesOption.class, defaultValue = "0",
            description = "Label places of the first sheet that are used already. Default: 0.")
    private int skip;

    @Option(names = "--as-of", paramLabel = "DATE", converter = DayOption.class,
            description = "The day the year is looked at from, such as 2027-03-01. Default: the latest day in the data.")
    private LocalDate asOf;

    @Option(names = "--plan-seconds", paramLabel = "N", converter = SecondsOption.class, defaultValue = PlanTime.USUAL,
            description = "How long a cloth plan may be searched for, in seconds; 0 takes what a moment's search finds. Default: 5.")
    private PlanTime planTime;

    @Option(names = "--templates", paramLabel = "DIR",
            description = "Your own templates; a file there takes the place of the built-in one of that name.")
    private Path templates;

    @Option(names = "--png", description = "Each page as a picture too, for a phone: cut-sheets-01.png and so on, 150 dots to the inch.")
    private boolean pictures;

    @Option(names = "--open", description = "Open what was printed: the PDF if it is one, else their folder.")
    private boolean open;

    @Mixin
    private Limits limits;

    @Option(names = "--timings", hidden = true, description = "Say where the time went.")
    private boolean timings;

    @ParentCommand
    private Kitleaf kitleaf;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure {
        Clock clock = timings ? Clock.sinceStart() : Clock.unread();
        List<Printed> printed = print(clock, reckoning -> { });
        for (Printed sheet : printed) {
            spec.commandLine().getOut().println(sheet.file() + sheet.last().map(last -> " to " + last.getFileName()).orElse("")
                    + sheet.report().map(report -> "  " + report.pages() + (report.pages() == 1 ? " page" : " pages")).orElse(""));
        }
        warn(printed);
        if (only.contains(SheetKind.CLOTH_PLAN) && printed.stream().noneMatch(sheet -> sheet.is(SheetKind.CLOTH_PLAN))) {
            spec.commandLine().getOut().println(PlanNotes.NOTHING);
        } else if (printed.isEmpty()) {
            spec.commandLine().getOut().println("nothing to print: all pieces are finished or name no threads");
        }
        openIfAsked(printed);
        if (timings) {
            clock.print(spec.commandLine().getErr());
        }
        return Exit.DONE;
    }

    /** Prints what the options ask for. */
    final List<Printed> print(Clock clock, Consumer<Reckoning> reckoned) throws Failure {
        if (templates != null && !Files.isDirectory(templates)) {
            throw new Failure(Exit.WRONG_USAGE, "there is no templates folder " + templates);
        }
        ProgressLine progress = new ProgressLine(spec.commandLine().getErr(), kitleaf.terminal().watched());
        List<SheetKind> kinds = List.copyOf(only.isEmpty() ? SheetKind.usual() : EnumSet.copyOf(only));
        try {
            return new Pipeline(new PrintJob(source.onPaper(paper), kinds, !only.isEmpty(), out, large, pictures, skip, Optional.ofNullable(asOf), planTime,
                    Optional.ofNullable(templates), progress, reckoned, limits, clock)).run();
        } finally {
            progress.clear();
        }
    }

    /** Says what had to be cut short. */
    final void warn(List<Printed> printed) {
        for (Printed sheet : printed) {
            sheet.warnings().forEach(warning -> spec.commandLine().getErr().println("warning: " + sheet.file().getFileName() + ": " + warning));
        }
    }

    /** Opens what was printed, with {@code --open}. */
    final void openIfAsked(List<Printed> printed) {
        List<Path> pdfs = printed.stream().filter(sheet -> sheet.report().isPresent()).map(Printed::file).toList();
        if (open && !pdfs.isEmpty()) {
            Viewer.open(pdfs.size() == 1 ? pdfs.get(0) : out).ifPresent(spec.commandLine().getErr()::println);
        }
    }

    final BasketSource source() {
        return source;
    }

    final Path out() {
        return out;
    }

    final Optional<Path> templates() {
        return Optional.ofNullable(templates);
    }

    final CommandSpec spec() {
        return spec;
    }
}
