package kitleaf.command;

import java.io.IOException;
import java.io.StringWriter;
import kitleaf.basket.Basket;
import kitleaf.basket.reader.thread.ThreadsCsv;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Screen;

/** Gives the threads of a basket as a table. */
final class ThreadsCommand extends Task {

    private final BasketSource source = new BasketSource(this);

    ThreadsCommand(Kitleaf kitleaf) {
        super(kitleaf, "threads");
    }

    @Override
    public Integer call() throws IOException {
        Basket basket = source.read();
        StringWriter whole = new StringWriter();
        ThreadsCsv.write(basket.pieces(), basket.language(), whole);
        Screen.exact(line().getOut()).append(whole.getBuffer());
        return Exit.DONE;
    }
}
