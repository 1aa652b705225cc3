package kitleaf.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.function.Function;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.command.speech.Screen;
import kitleaf.command.speech.Terminal;
import kitleaf.command.speech.Voice;
import kitleaf.words.Said;
import kitleaf.words.Words;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The program. */
public final class Kitleaf {

    private static final int HELP_WIDTH = 80;

    private static final String HELP = "help";
    private static final String COMPLETION = "completion";

    /** Commands that speak of all the others. */
    private static final Set<String> ABOUT_ALL = Set.of(HELP, COMPLETION);

    /** The commands by their names, in the order help shows them. */
    private static final Map<String, Function<Kitleaf, CommandSpec>> COMMANDS = new LinkedHashMap<>();

    static {
        COMMANDS.put("print", kitleaf -> new PrintCommand(kitleaf).spec());
        COMMANDS.put("reckon", kitleaf -> new ReckonCommand(kitleaf).spec());
        COMMANDS.put("check", kitleaf -> new CheckCommand(kitleaf).spec());
        COMMANDS.put("new", kitleaf -> new NewCommand(kitleaf).spec());
        COMMANDS.put("log", kitleaf -> new LogCommand(kitleaf).spec());
        COMMANDS.put("tonight", kitleaf -> new TonightCommand(kitleaf).spec());
        COMMANDS.put("choose", kitleaf -> new ChooseCommand(kitleaf).spec());
        COMMANDS.put("watch", kitleaf -> new WatchCommand(kitleaf).spec());
        COMMANDS.put("threads", kitleaf -> new ThreadsCommand(kitleaf).spec());
        COMMANDS.put("schema", kitleaf -> new SchemaCommand(kitleaf).spec());
        COMMANDS.put(COMPLETION, kitleaf -> new CompletionCommand(kitleaf).spec());
        COMMANDS.put(HELP, kitleaf -> CommandSpec.forAnnotatedObject(new CommandLine.HelpCommand())
                .addSubcommand("keys", new CommandLine(new KeysCommand(kitleaf).spec())));
    }

    private final Terminal terminal;
    private final Voice voice;

    private Kitleaf(Terminal terminal, Voice voice) {
        this.terminal = terminal;
        this.voice = voice;
    }

    /** Who sits before the program. */
    Terminal terminal() {
        return terminal;
    }

    /** What it speaks with. */
    Voice voice() {
        return voice;
    }

    /** Runs the program and ends the process with its exit code. */
    public static void main(String[] arguments) {
        // The JDK's logging takes longer to start than a page to print, and templates have nothing to say by it.
        System.setProperty("org.freemarker.loggerLibrary", "none");
        // A thread whose memory ends says so, and its trace is nobody's business.
        Thread.setDefaultUncaughtExceptionHandler((thread, e) -> {
            Voice voice = new Voice(Voice.language(System.getenv()));
            new Screen(System.err).println(e instanceof OutOfMemoryError ? voice.say("program.memory")
                    : voice.say("program.failed", e.toString()));
            Runtime.getRuntime().halt(CommandLine.ExitCode.SOFTWARE);
        });
        System.exit(run(arguments, Terminal.here(), System.getenv(), System.out, System.err));
    }

    /** The program with the command that is called, or with all where one speaks of the others. */
    static CommandLine line(Terminal terminal, Voice voice, String called) {
        Kitleaf kitleaf = new Kitleaf(terminal, voice);
        CommandSpec spec = CommandSpec.wrapWithoutInspection(kitleaf).name("kitleaf").versionProvider(new Version());
        spec.addOption(Options.flag("-V", "--version").versionHelp(true).build());
        spec.addOption(Task.help().build());
        CommandLine line = new CommandLine(spec);
        // To read a command's options takes longer than to read a basket, so only the one that is called is looked at.
        boolean all = ABOUT_ALL.contains(called) || !COMMANDS.containsKey(called);
        COMMANDS.forEach((name, command) -> {
            if (all || name.equals(called)) {
                line.addSubcommand(name, command.apply(kitleaf));
            }
        });
        line.registerConverter(Path.class, Options::path);
        line.setUsageHelpWidth(HELP_WIDTH);
        return line;
    }

    /** Runs the program in these surroundings, on these streams, and gives its exit code. */
    static int run(String[] arguments, Terminal terminal, Map<String, String> surroundings, PrintStream out, PrintStream err) {
        Voice voice = new Voice(Voice.language(surroundings));
        CommandLine line = line(terminal, voice, arguments.length == 0 ? HELP : arguments[0]);
        line.setOut(new Screen(out));
        line.setErr(new Screen(err));
        line.setExecutionExceptionHandler((e, command, parsed) -> explain(e, command, voice));
        line.setParameterExceptionHandler((e, words) -> {
            CommandLine command = e.getCommandLine();
            Usage usage = new Usage(e, words);
            command.getErr().println(usage.told(voice));
            usage.meant().ifPresent(meant -> command.getErr().println(voice.say(meant)));
            command.getErr().println(command.getParent() == null ? voice.say("usage.try")
                    : voice.say("usage.try-command", command.getCommandName()));
            return Exit.WRONG_USAGE;
        });
        line.setExecutionStrategy(parsed -> {
            if (asksForHelp(parsed)) {
                help(line, voice);
            }
            // picocli would stop at the help of help.
            return KeysCommand.of(parsed).map(KeysCommand::call).orElseGet(() -> new CommandLine.RunLast().execute(parsed));
        });
        if (arguments.length == 0) {
            help(line, voice);
            line.usage(line.getOut());
            return Exit.WRONG_USAGE;
        }
        int code = execute(line, arguments, voice);
        line.getOut().flush();
        if (code == Exit.DONE && out.checkError()) {
            line.getErr().println(voice.say("program.unsaid"));
            code = Exit.COULD_NOT_WRITE;
        }
        line.getErr().flush();
        return code;
    }

    private static boolean asksForHelp(CommandLine.ParseResult parsed) {
        return parsed.isUsageHelpRequested() || parsed.commandSpec().helpCommand()
                || parsed.hasSubcommand() && asksForHelp(parsed.subcommand());
    }

    /** The words of the help, read only when it is shown. */
    private static void help(CommandLine line, Voice voice) {
        // picocli sets it in bold type on a terminal.
        line.setOut(Screen.exact(line.getOut()));
        line.setResourceBundle(Words.bundle("kitleaf.command.help", voice.language()));
    }

    private static int execute(CommandLine line, String[] arguments, Voice voice) {
        try {
            return line.execute(arguments);
        } catch (OutOfMemoryError e) {
            line.getErr().println(voice.say("program.memory"));
            return CommandLine.ExitCode.SOFTWARE;
        } catch (StackOverflowError e) {
            line.getErr().println(voice.say("program.failed", Said.of("program.too-deep")));
            return CommandLine.ExitCode.SOFTWARE;
        }
    }

    private static int explain(Exception e, CommandLine command, Voice voice) {
        if (e instanceof Failure failure) {
            command.getErr().println(failure.told(voice));
            return failure.exitCode();
        }
        if (e instanceof IOException io) {
            command.getErr().println(voice.say("write.stopped", String.valueOf(io.getMessage())));
            return Exit.COULD_NOT_WRITE;
        }
        command.getErr().println(voice.say("program.failed", e.toString()));
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
