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
@Command(name = "print")
class PrintCommand implements Callable<Integer> {

    @Mixin
    private BasketSource source;

    @Option(names = "--only", paramLabel = "SHEET", split = ",", converter = SheetKindOption.class,
            completionCandidates = SheetKindOption.Words.class)
    private List<SheetKind> only = List.of();

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "out")
    private Path out;

    @Option(names = "--paper", paramLabel = "PAPER", converter = PaperOption.class, completionCandidates = PaperOption.Words.class)
    private Paper paper;

    @Option(names = "--large")
    private boolean large;

    @Option(names = "--skip", paramLabel = "N", converter = PlacesOption.class, defaultValue = "0")
    private int skip;

    @Option(names = "--as-of", paramLabel = "DATE", converter = DayOption.class)
    private LocalDate asOf;

    @Option(names = "--plan-seconds", paramLabel = "N", converter = SecondsOption.class, defaultValue = PlanTime.USUAL)
    private PlanTime planTime;

    @Option(names = "--templates", paramLabel = "DIR")
    private Path templates;

    @Option(names = "--png")
    private boolean pictures;

    @Option(names = "--open")
    private boolean open;

    @Mixin
    private Limits limits;

    @Option(names = "--timings", hidden = true)
    private boolean timings;

    @ParentCommand
    private Kitleaf kitleaf;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure {
        Voice voice = kitleaf.voice();
        Clock clock = timings ? Clock.sinceStart() : Clock.unread();
        List<Printed> printed = print(clock, reckoning -> { });
        printed.forEach(sheet -> spec.commandLine().getOut().println(sheet.told(voice)));
        warn(printed);
        if (only.contains(SheetKind.CLOTH_PLAN) && printed.stream().noneMatch(sheet -> sheet.is(SheetKind.CLOTH_PLAN))) {
            spec.commandLine().getOut().println(voice.say("plan.nothing"));
        } else if (printed.isEmpty()) {
            spec.commandLine().getOut().println(voice.say("print.nothing"));
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
            throw Failure.of(Exit.WRONG_USAGE, "print.templates", templates.toString());
        }
        ProgressLine progress = new ProgressLine(spec.commandLine().getErr(), kitleaf.terminal().watched(), kitleaf.voice());
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
            sheet.warnings(kitleaf.voice()).forEach(warning -> spec.commandLine().getErr().println(
                    kitleaf.voice().say("print.warning", sheet.file().getFileName().toString(), warning)));
        }
    }

    /** Opens what was printed, with {@code --open}. */
    final void openIfAsked(List<Printed> printed) {
        List<Path> pdfs = printed.stream().filter(sheet -> sheet.report().isPresent()).map(Printed::file).toList();
        if (open && !pdfs.isEmpty()) {
            Viewer.open(pdfs.size() == 1 ? pdfs.get(0) : out).map(kitleaf.voice()::say).ifPresent(spec.commandLine().getErr()::println);
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
