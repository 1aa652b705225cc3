package kitleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import kitleaf.command.printing.Limits;
import kitleaf.command.printing.Pipeline;
import kitleaf.command.printing.PrintJob;
import kitleaf.command.printing.Printed;
import kitleaf.command.speech.Clock;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.command.speech.ProgressLine;
import kitleaf.sheet.page.SheetKind;
import kitleaf.sizing.Reckoning;
import picocli.CommandLine.Model.OptionSpec;

/** Prints sheets. */
class PrintCommand extends Task {

    private final BasketSource source = new BasketSource(this);
    private final OptionSpec only = add(Options.sheets());
    private final OptionSpec out = add(Options.folder("--out").defaultValue("out"));
    private final OptionSpec paper = add(Options.paper());
    private final OptionSpec large = add(Options.flag("--large"));
    private final OptionSpec skip = add(Options.number("--skip").defaultValue("0"));
    private final OptionSpec asOf = add(Options.asOf());
    private final OptionSpec span = add(Options.span());
    private final OptionSpec all = add(Options.flag("--all"));
    private final OptionSpec templates = add(Options.folder("--templates"));
    private final OptionSpec pictures = add(Options.flag("--png"));
    private final OptionSpec open = add(Options.flag("--open"));
    private final OptionSpec mostPages = add(Options.most("--most-pages").defaultValue("20000"));
    private final OptionSpec mostLabels = add(Options.most("--most-labels").defaultValue("500000"));
    private final OptionSpec timings = add(Options.flag("--timings").hidden(true));

    PrintCommand(Kitleaf kitleaf) {
        this(kitleaf, "print");
    }

    /** A command that takes what {@code print} takes. */
    PrintCommand(Kitleaf kitleaf, String name) {
        super(kitleaf, name);
    }

    @Override
    public Integer call() {
        Clock clock = Options.given(timings) ? Clock.sinceStart() : Clock.unread();
        long[] spared = new long[1];
        List<Printed> printed = print(clock, reckoning -> spared[0] = spared(reckoning));
        printed.forEach(sheet -> line().getOut().println(sheet.told(voice())));
        if (spared[0] > 0) {
            line().getOut().println(voice().say(spared[0] == 1 ? "print.spared.one" : "print.spared.many", spared[0]));
        }
        warn(printed);
        List<SheetKind> lacking = only().stream().distinct().filter(kind -> printed.stream().noneMatch(sheet -> sheet.is(kind))).toList();
        lacking.forEach(kind -> line().getErr().println(why(kind)));
        if (printed.isEmpty() && lacking.isEmpty()) {
            line().getOut().println(voice().say("print.nothing"));
        }
        openIfAsked(printed);
        if (Options.given(timings)) {
            clock.print(line().getErr());
        }
        return lacking.isEmpty() ? Exit.DONE : Exit.BASKET_HAS_PROBLEMS;
    }

    /** How many pieces get no cut sheet, since their cloth is cut. */
    private long spared(Reckoning reckoning) {
        boolean cutSheets = only().isEmpty() || only().contains(SheetKind.CUT_SHEETS);
        return all() || !cutSheets ? 0 : reckoning.pieces().stream().filter(piece -> !piece.wantsCutSheet()).count();
    }

    /** Whether pieces are printed too that need a sheet no more: all pieces, or those she named. */
    private boolean all() {
        return Options.given(all) || source.named();
    }

    /** Prints what the options ask for. */
    final List<Printed> print(Clock clock, Consumer<Reckoning> reckoned) {
        Optional<Path> hers = templates();
        if (hers.isPresent() && !Files.isDirectory(hers.get())) {
            throw Failure.of(Exit.WRONG_USAGE, "print.templates", hers.get().toString());
        }
        ProgressLine progress = new ProgressLine(line().getErr(), terminal().watched(), voice());
        List<SheetKind> kinds = List.copyOf(only().isEmpty() ? SheetKind.usual() : EnumSet.copyOf(only()));
        try {
            return new Pipeline(new PrintJob(source.basket(), source.onPaper(paper.getValue())::read,
                    new RoomCheck(source, Options.given(large), Options.value(asOf))::refuse, kinds, !only().isEmpty(), out(),
                    Options.given(large), Options.given(pictures), skip.getValue(), Options.value(asOf), Options.value(span),
                    all(), hers, progress, reckoned, new Limits(mostPages.getValue(), mostLabels.getValue()), clock)).run();
        } finally {
            progress.clear();
        }
    }

    /** Says what had to be cut short. */
    final void warn(List<Printed> printed) {
        for (Printed sheet : printed) {
            sheet.warnings(voice()).forEach(warning -> line().getErr().println(
                    voice().say("print.warning", sheet.file().getFileName().toString(), warning)));
        }
    }

    /** Why a sheet that was asked for by name is not there. */
    private String why(SheetKind kind) {
        return switch (kind) {
            case CUT_SHEETS -> voice().say("cut-sheets.nothing");
            case CLOTH_PLAN -> voice().say("plan.nothing");
            case GOAL_GRID -> voice().say("grid.nothing");
            case PIECE_LIST -> voice().say("pieces.nothing");
            case LOOK_BACK -> voice().say("back.nothing");
            default -> voice().say("print.lacks", kind.id());
        };
    }

    /** Opens what was printed, with {@code --open}. */
    final void openIfAsked(List<Printed> printed) {
        List<Path> pdfs = printed.stream().filter(sheet -> sheet.report().isPresent()).map(Printed::file).toList();
        if (Options.given(open) && !pdfs.isEmpty()) {
            Viewer.open(pdfs.size() == 1 ? pdfs.get(0) : out()).map(voice()::say).ifPresent(line().getErr()::println);
        }
    }

    final BasketSource source() {
        return source;
    }

    final Path out() {
        return out.getValue();
    }

    final Optional<Path> templates() {
        return Options.value(templates);
    }

    /** The sheets asked for; all the usual ones if none. */
    private List<SheetKind> only() {
        return Options.<List<SheetKind>>value(only).orElse(List.of());
    }
}
