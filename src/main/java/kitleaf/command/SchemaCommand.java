package kitleaf.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import kitleaf.basket.Schemas;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the schemas by which an editor completes and checks while she types. */
@Command(name = "schema")
final class SchemaCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "DIR")
    private Path basket;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure {
        if (!Files.isDirectory(basket)) {
            throw Failure.of(Exit.WRONG_USAGE, "schema.no-folder", basket.toString());
        }
        Path folder = basket.resolve(Schemas.FOLDER);
        Voice voice = Voice.of(spec);
        PrintWriter told = spec.commandLine().getOut();
        try (OutFolder out = OutFolder.open(folder)) {
            Map<String, String> files = Schemas.files();
            for (Map.Entry<String, String> file : files.entrySet()) {
                try (Draft draft = out.draft(file.getKey())) {
                    draft.stream().write(file.getValue().getBytes(StandardCharsets.UTF_8));
                }
            }
            out.replaceAll();
            files.keySet().forEach(name -> told.println(out.path(name)));
        } catch (IOException e) {
            throw OutFolder.noRoomForSchemas(folder, e);
        }
        told.println(voice.say("schema.basket"));
        told.println("  " + Schemas.BASKET_COMMENT);
        told.println(voice.say("schema.pieces"));
        told.println("  " + Schemas.PIECE_COMMENT);
        return Exit.DONE;
    }
}
