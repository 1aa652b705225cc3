package kitleaf.command;

import java.util.concurrent.Callable;
import kitleaf.basket.Basket;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Looks a basket over. */
@Command(name = "check", header = "Look a basket over and name every problem in it.", footerHeading = "%nExamples:%n", footer = {
    "  kitleaf check my-basket",
    "  kitleaf check my-basket/pieces/fog-bell.yaml"})
final class CheckCommand implements Callable<Integer> {

    @Mixin
    private BasketSource source;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure {
        Basket basket = source.read();
        int pieces = basket.pieces().size();
        spec.commandLine().getOut().println(basket.title() + ": " + (pieces == 1 ? "1 piece" : pieces + " pieces") + ", no problems");
        return Exit.DONE;
    }
}
