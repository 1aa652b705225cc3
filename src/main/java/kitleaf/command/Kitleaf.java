package kitleaf.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The program. */
@Command(name = "kitleaf", header = "From a counted chart to the paper you stitch by.",
        description = "%nReads a basket, a folder of YAML files that describe your pieces, and prints cut sheets with a corner guide at true size.",
        versionProvider = Kitleaf.Version.class,
        exitCodeListHeading = "%nExit codes:%n", exitCodeList = {
            "0:done",
            "1:the basket or a template has problems; nothing was written",
            "2:wrong usage",
            "3:could not write"},
        footerHeading = "%nExamples:%n", footer = {
            "  kitleaf print examples/harbour --out out",
            "  kitleaf reckon examples/harbour",
            "  kitleaf help print"})
public final class Kitleaf {

    private static final int HELP_WIDTH = 80;

    private static final String HELP = "help";
    private static final String COMPLETION = "completion";

    /** Commands that speak of all the others. */
    private static final Set<String> ABOUT_ALL = Set.of(HELP, COMPLETION);

    /** The commands by their names, in the order help shows them. */
    private static final Map<String, Supplier<Object>> COMMANDS = new LinkedHashMap<>();

    static {
        COMMANDS.put("print", PrintCommand::new);
        COMMANDS.put("reckon", ReckonCommand::new);
        COMMANDS.put("check", CheckCommand::new);
        COMMANDS.put("new", NewCommand::new);
        COMMANDS.put("log", LogCommand::new);
        COMMANDS.put("watch", WatchCommand::new);
        COMMANDS.put("threads", ThreadsCommand::new);
        COMMANDS.put("schema", SchemaCommand::new);
        COMMANDS.put(COMPLETION, CompletionCommand::new);
        COMMANDS.put(HELP, CommandLine.HelpCommand::new);
    }

    @Option(names = {"-V", "--version"}, versionHelp = true, description = "Say which version this is.")
    private boolean version;

    private final Terminal terminal;

    private Kitleaf(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Who sits before the program. */
    Terminal terminal() {
        return terminal;
    }

    /** Runs the program and ends the process with its exit code. */
    public static void main(String[] arguments) {
        System.exit(run(arguments, Terminal.here(), System.out, System.err));
    }

    /** Runs the program on these streams and gives its exit code. */
    static int run(String[] arguments, Terminal terminal, PrintStream out, PrintStream err) {
        CommandLine line = new CommandLine(new Kitleaf(terminal));
        // To read a command's options takes longer than to read a basket, so only the one that is called is looked at.
        String called = arguments.length == 0 ? HELP : arguments[0];
        boolean all = ABOUT_ALL.contains(called) || !COMMANDS.containsKey(called);
        COMMANDS.forEach((name, command) -> {
            if (all || name.equals(called)) {
                line.addSubcommand(name, command.get());
            }
        });
        line.registerConverter(Path.class, new PathOption());
        line.setUsageHelpWidth(HELP_WIDTH);
        // YAML and paths are UTF-8 wherever they come from; so is what is said about them.
        line.setOut(new PrintWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), true));
        line.setErr(new PrintWriter(new OutputStreamWriter(err, StandardCharsets.UTF_8), true));
        line.setExecutionExceptionHandler((e, command, parsed) -> explain(e, command));
        line.setParameterExceptionHandler((e, words) -> {
            CommandLine command = e.getCommandLine();
            command.getErr().println(e.getMessage());
            CommandLine.UnmatchedArgumentException.printSuggestions(e, command.getErr());
            command.getErr().println("Try: kitleaf help" + (command.getParent() == null ? "" : " " + command.getCommandName()));
            return Exit.WRONG_USAGE;
        });
        if (arguments.length == 0) {
            line.usage(line.getOut());
            return Exit.WRONG_USAGE;
        }
        int code = execute(line, arguments);
        line.getOut().flush();
        if (code == Exit.DONE && out.checkError()) {
            line.getErr().println("what was to be said here could not be written; if it goes to a file, its disk may be full");
            code = Exit.COULD_NOT_WRITE;
        }
        line.getErr().flush();
        return code;
    }

    private static int execute(CommandLine line, String[] arguments) {
        try {
            return line.execute(arguments);
        } catch (OutOfMemoryError e) {
            line.getErr().println("the basket is too large for the memory Java may use; print fewer pieces with --piece, "
                    + "or give Java more with java -Xmx1g -jar");
            return CommandLine.ExitCode.SOFTWARE;
        } catch (StackOverflowError e) {
            line.getErr().println("Kitleaf itself has failed, and we are sorry. Please report this with your basket: it nests too deep");
            return CommandLine.ExitCode.SOFTWARE;
        }
    }

    private static int explain(Exception e, CommandLine command) {
        if (e instanceof Failure failure) {
            command.getErr().println(failure.getMessage());
            return failure.exitCode();
        }
        if (e instanceof IOException io) {
            command.getErr().println("could not write: " + io.getMessage());
            return Exit.COULD_NOT_WRITE;
        }
        command.getErr().println("Kitleaf itself has failed, and we are sorry. Please report this with your basket: " + e);
        return CommandLine.ExitCode.SOFTWARE;
    }

    /** The version in the pom, which the build writes into {@code version.properties}. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() throws IOException {
            Properties built = new Properties();
            try (InputStream in = Kitleaf.class.getResourceAsStream("version.properties")) {
                built.load(in);
            }
            return new String[] {"kitleaf " + built.getProperty("version")};
        }
    }
}
