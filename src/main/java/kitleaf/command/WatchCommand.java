package kitleaf.command;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import kitleaf.command.printing.Printed;
import kitleaf.command.speech.Clock;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.sheet.plain.PlainChanges;
import kitleaf.sheet.template.Templates;
import kitleaf.sizing.Reckoning;
import kitleaf.words.Said;

/** Prints again on every save. It takes the options of {@code print}. */
final class WatchCommand extends PrintCommand {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    /** How long a print under way is waited for when she ends the watch. */
    private static final int PATIENCE_SECONDS = 20;

    private volatile boolean stopped;
    private Optional<Reckoning> last = Optional.empty();
    private List<String> lastSheets = List.of();

    WatchCommand(Kitleaf kitleaf) {
        super(kitleaf, "watch");
    }

    @Override
    public Integer call() {
        CountDownLatch ended = new CountDownLatch(1);
        // Ctrl-C lets a print come to its end, so that no draft is left behind.
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            stopped = true;
            try {
                ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }));
        try {
            watch();
            return Exit.DONE;
        } finally {
            ended.countDown();
        }
    }

    private void watch() {
        BasketWatch watch = new BasketWatch(source().basket(), out(), templates(), voice());
        try {
            Said printed = sheets(again());
            say(Said.of("watch.begun", printed, out().toString(), source().basket().toString()));
        } catch (Failure failure) {
            if (failure.exitCode() == Exit.WRONG_USAGE || !source().basket().toFile().exists()) {
                throw failure;
            }
            tell(failure);
            endIfStuck();
        }
        Optional<String> saved = watch.next(() -> stopped);
        while (saved.isPresent()) {
            try {
                Optional<Reckoning> before = last;
                List<String> sheetsBefore = lastSheets;
                List<Printed> printed = again();
                if (before.isPresent() && last.isPresent()) {
                    String changed = new PlainChanges(voice().language()).between(before.get(), last.get(), sheetsBefore, lastSheets);
                    say(Said.of("watch.changed", saved.get(), changed, sheets(printed)));
                } else {
                    say(Said.of("watch.printed", saved.get(), sheets(printed)));
                }
            } catch (Failure failure) {
                say(Said.of("watch.problems", saved.get()));
                tell(failure);
                endIfStuck();
            }
            saved = watch.next(() -> stopped);
        }
        say(Said.of("watch.ended"));
    }

    private List<Printed> again() {
        Reckoning[] reckoned = new Reckoning[1];
        List<Printed> printed = print(Clock.unread(), reckoning -> reckoned[0] = reckoning);
        warn(printed);
        if (last.isEmpty()) {
            openIfAsked(printed);
        }
        last = Optional.of(reckoned[0]);
        lastSheets = printed.stream().filter(sheet -> sheet.report().isPresent()).map(sheet -> sheet.file().getFileName().toString())
                .toList();
        return printed;
    }

    private static Said sheets(List<Printed> printed) {
        long sheets = printed.stream().filter(sheet -> sheet.report().isPresent()).count();
        return sheets == 1 ? Said.of("watch.sheets.one") : Said.of("watch.sheets.many", sheets);
    }

    /** A template that goes on after it was given up would take its share of the machine as long as somebody watches. */
    private static void endIfStuck() {
        try {
            if (!Templates.allEnded()) {
                throw Failure.of(Exit.BASKET_HAS_PROBLEMS, "watch.stuck");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void tell(Failure failure) {
        line().getErr().println(failure.told(voice()));
        say(last.isPresent() ? Said.of("watch.stay", out().toString()) : Said.of("watch.waiting"));
    }

    private void say(Said words) {
        line().getOut().println(LocalTime.now().format(CLOCK) + " " + voice().say(words));
    }
}
