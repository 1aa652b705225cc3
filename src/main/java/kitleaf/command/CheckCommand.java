package kitleaf.command;

import java.util.concurrent.Callable;
import kitleaf.basket.Basket;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Looks a basket over. */
@Command(name = "check")
final class CheckCommand implements Callable<Integer> {

    @Mixin
    private BasketSource source;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure {
        Basket basket = source.read();
        int pieces = basket.pieces().size();
        Voice voice = Voice.of(spec);
        spec.commandLine().getOut().println(pieces == 1 ? voice.say("basket.sound.one", basket.title())
                : voice.say("basket.sound.many", basket.title(), pieces));
        return Exit.DONE;
    }
}
