package kitleaf.command;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import kitleaf.sheet.PlainChanges;
import kitleaf.sizing.Reckoning;
import picocli.CommandLine.Command;

/** Prints again on every save. It takes the options of {@code print}. */
@Command(name = "watch", header = "Print again whenever you save, and say what changed.",
        description = "%nKeeps running beside your editor. While the basket has problems they are told and the last good PDFs stay. "
                + "End it with Ctrl-C.%n",
        footerHeading = "%nExamples:%n", footer = {
            "  kitleaf watch my-basket",
            "  kitleaf watch my-basket --piece fog-bell --only cut-sheets --open"})
final class WatchCommand extends PrintCommand {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    /** How long a print under way is waited for when she ends the watch. */
    private static final int PATIENCE_SECONDS = 20;

    private volatile boolean stopped;
    private Optional<Reckoning> last = Optional.empty();

    @Override
    public Integer call() throws Failure {
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

    private void watch() throws Failure {
        BasketWatch watch = new BasketWatch(source().basket(), out(), templates());
        try {
            say("printed " + sheets(again()) + " into " + out() + "; watching " + source().basket() + ", Ctrl-C ends it");
        } catch (Failure failure) {
            if (failure.exitCode() == Exit.WRONG_USAGE || !source().basket().toFile().exists()) {
                throw failure;
            }
            tell(failure);
        }
        Optional<String> saved = watch.next(() -> stopped);
        while (saved.isPresent()) {
            try {
                Optional<Reckoning> before = last;
                List<Printed> printed = again();
                String changed = before.isPresent() && last.isPresent() ? PlainChanges.between(before.get(), last.get()) + "; " : "";
                say(saved.get() + ": " + changed + "printed " + sheets(printed));
            } catch (Failure failure) {
                say(saved.get() + ": problems");
                tell(failure);
            }
            saved = watch.next(() -> stopped);
        }
        say("ended");
    }

    private List<Printed> again() throws Failure {
        Reckoning[] reckoned = new Reckoning[1];
        List<Printed> printed = print(Clock.unread(), reckoning -> reckoned[0] = reckoning);
        warn(printed);
        if (last.isEmpty()) {
            openIfAsked(printed);
        }
        last = Optional.of(reckoned[0]);
        return printed;
    }

    private static String sheets(List<Printed> printed) {
        long sheets = printed.stream().filter(sheet -> sheet.report().isPresent()).count();
        return sheets == 1 ? "1 sheet" : sheets + " sheets";
    }

    private void tell(Failure failure) {
        spec().commandLine().getErr().println(failure.getMessage());
        say(last.isPresent() ? "the last good sheets stay in " + out() : "waiting for the next save");
    }

    private void say(String words) {
        spec().commandLine().getOut().println(LocalTime.now().format(CLOCK) + " " + words);
    }
}
