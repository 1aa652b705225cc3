package kitleaf.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.Amount;
import kitleaf.basket.HowFar;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.edit.LogEdit;
import kitleaf.basket.edit.LogTableEdit;
import kitleaf.basket.edit.News;
import kitleaf.basket.form.AmountText;
import kitleaf.basket.form.NumberText;
import kitleaf.basket.form.ValueForm;
import kitleaf.basket.reader.PieceFile;
import kitleaf.command.files.EditedFile;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.sizing.StitchTally;
import kitleaf.words.Said;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Writes down what she tells of a piece: a sitting, how far it is, that it is stitched or made up. */
final class LogCommand extends Task {

    private final PositionalParamSpec piece = add(PositionalParamSpec.builder().arity("1..2").required(true).paramLabel("[BASKET] PIECE")
            .descriptionKey("which-piece")
            .hideParamSyntax(true).type(List.class).auxiliaryTypes(String.class));
    private final OptionSpec stitches = add(Options.of("--stitches", "N", Integer.class, ValueForm.STITCHES));
    private final OptionSpec hours = add(OptionSpec.builder("--hours").paramLabel("H").type(Double.class)
            .converters((ITypeConverter<Double>) SpokenTime::hours));
    private final OptionSpec done = add(Options.of("--done", "AMOUNT", Amount.class, ValueForm.AMOUNT));
    private final OptionSpec unpicked = add(Options.of("--unpicked", "N", Integer.class, ValueForm.STITCHES));
    private final OptionSpec note = add(Options.of("--note", "TEXT", String.class, ValueForm.WORDS));
    private final OptionSpec day = add(Options.spokenDay("--on"));
    private final OptionSpec stitched = add(Options.spokenDay("--stitched").arity("0..1").fallbackValue(SpokenTime.SAME_DAY));
    private final OptionSpec finished = add(Options.spokenDay("--finished").arity("0..1").fallbackValue(SpokenTime.SAME_DAY));

    private final OptionSpec undo = add(Options.flag("--undo"));

    LogCommand(Kitleaf kitleaf) {
        super(kitleaf, "log");
        spec().usageMessage().customSynopsis("kitleaf log [BASKET] PIECE [OPTIONS]");
    }

    @Override
    public Integer call() {
        if (Options.given(undo)) {
            say("log.undone", undone());
            return Exit.DONE;
        }
        LocalDate today = LocalDate.now();
        News news = news(Options.<LocalDate>value(day).orElse(today));
        Optional<LocalDate> coming = news.days().stream().filter(today::isBefore).findFirst();
        if (coming.isPresent()) {
            throw Failure.of(Exit.WRONG_USAGE, "log.future", coming.get().toString(), today.toString());
        }
        Optional<PieceArgument.Row> row = PieceArgument.row(piece.getValue());
        if (row.isPresent()) {
            Path basket = row.get().basket();
            tell(EditedFile.write(basket, this::complain, () -> edit(LogTableEdit.of(basket, row.get().id(), news), basket, news)), news);
            LogUndo.forget(basket);
            return Exit.DONE;
        }
        PieceFile file = PieceArgument.find(piece.getValue());
LogEdit.Ready ready = EditedFile.write(file.file(), this::complain, () -> edit(LogEdit.of(file, news), file.file(), news));
        LogUndo.remember(file, ready, ready.piece().title() + ", " + news.days().get(0) + ": " + told(news), this::complain);
        tell(ready, news);
        return Exit.DONE;
    }

    private String undone() {
        if (Stream.of(stitches, hours, done, unpicked, note, day, stitched, finished).anyMatch(fact -> fact.getValue() != null)) {
            throw Failure.of(Exit.WRONG_USAGE, "log.undo-alone");
        }
        return LogUndo.takeBack(piece.getValue(), this::complain);
    }

    private String told(News news) {
        return facts(news).stream().map(voice()::say).collect(Collectors.joining(", "));
    }

    private News news(LocalDate on) {
        Optional<Integer> out = Options.<Integer>value(unpicked).filter(number -> number > 0);
        boolean sat = hours.getValue() != null || stitches.getValue() != null || out.isPresent();
        Optional<LogEntry> entry = sat ? Optional.of(new LogEntry(on,
                hours.getValue() == null ? OptionalDouble.empty() : OptionalDouble.of(hours.<Double>getValue()),
                stitches.getValue() == null ? OptionalInt.empty() : OptionalInt.of(stitches.<Integer>getValue()),
                out.orElse(0), Options.value(note))) : Optional.empty();
        News news = new News(entry, Options.<Amount>value(done).map(amount -> new HowFar(on, amount)),
                the(stitched, on), the(finished, on));
        if (news.days().isEmpty() || entry.isEmpty() && note.getValue() != null) {
            throw Failure.of(Exit.WRONG_USAGE, news.days().isEmpty() ? "log.nothing" : "log.note-alone");
        }
        return news;
    }

    /** A day given for an option; that of all else where the option stands alone. */
    private static Optional<LocalDate> the(OptionSpec option, LocalDate on) {
        return Options.<LocalDate>value(option).map(given -> given.equals(LocalDate.MIN) ? on : given);
    }

    private static LogEdit.Ready edit(LogEdit edit, Path file, News news) {
        if (edit instanceof LogEdit.Broken broken) {
            throw Failure.telling(Exit.BASKET_HAS_PROBLEMS, voice -> BasketSource.text(broken.problems(), voice));
        }
        if (edit instanceof LogEdit.Unfit unfit) {
            throw Failure.telling(Exit.WRONG_USAGE, voice -> voice.say(unfit.why()));
        }
        if (edit instanceof LogEdit.Refused refused) {
            LogEntry entry = news.entry().orElseThrow();
            throw Failure.of(Exit.WRONG_USAGE, phrase(refused.slip()), entry.on().toString(), entry.stitches().orElse(0),
                    NumberText.written(entry.hours().orElse(0)), refused.bound());
        }
        if (edit instanceof LogEdit.NoPlace none) {
            throw Failure.byHand(file, none.how());
        }
        return (LogEdit.Ready) edit;
    }

    private static String phrase(LogEdit.Slip slip) {
        return switch (slip) {
            case BEFORE_START -> "log.before-start";
            case AFTER_FINISH -> "log.after-finish";
            case TOO_FAST -> "log.too-fast";
            case TOO_MANY -> "log.too-many";
        };
    }

    private void tell(LogEdit.Ready ready, News news) {
        Piece logged = ready.piece();
        StitchTally tally = StitchTally.of(logged);
        say("log.done", logged.title(), news.days().get(0).toString(), told(news), tally.left(), tally.total());
        // The figure of a table stays as it stands there.
        news.dated(ready.was().progress()).filter(reading -> logged.progress().readings().contains(reading))
                .ifPresent(reading -> say("log.dated", AmountText.written(reading.done()), reading.on().toString()));
        Optional<LocalDate> read = logged.progress().readings().stream().map(HowFar::on).max(LocalDate::compareTo);
        if (news.entry().isPresent() && read.filter(on -> !on.isBefore(news.entry().get().on())).isPresent()) {
            say("log.in-reading", read.get().toString());
        }
        if (tally.left() == 0 && logged.progress().last().isEmpty()) {
            say("log.none-left", String.join(" ", piece.<List<String>>getValue()), news.days().get(0).toString());
        }
    }

    private static List<Said> facts(News news) {
        List<Said> facts = new ArrayList<>();
        news.entry().ifPresent(entry -> {
            if (entry.full()) {
                facts.add(Said.of("log.stitches-hours", entry.stitches().getAsInt(), NumberText.written(entry.hours().getAsDouble())));
            } else {
                entry.stitches().ifPresent(number -> facts.add(Said.of("log.stitches", number)));
                entry.hours().ifPresent(number -> facts.add(Said.of("log.hours", NumberText.written(number))));
            }
            if (entry.unpicked() > 0) {
                facts.add(Said.of("log.unpicked", entry.unpicked()));
            }
        });
        news.reading().ifPresent(reading -> facts.add(Said.of("log.reading", AmountText.written(reading.done()))));
        news.stitched().ifPresent(on -> facts.add(Said.of("log.stitched", on.toString())));
        news.finished().ifPresent(on -> facts.add(Said.of("log.finished", on.toString())));
        return facts;
    }

    private void say(String key, Object... slots) {
        line().getOut().println(voice().say(key, slots));
    }
}
