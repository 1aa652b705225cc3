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
@Command(name = "schema", header = "Write the files by which an editor checks a basket as you type.",
        description = "%nWrites basket.schema.json and piece.schema.json (JSON Schema, draft 2020-12) into the schema folder of a basket, "
                + "and says which line to write above its files.", footerHeading = "%nExamples:%n", footer = {
    "  kitleaf schema my-basket"})
final class SchemaCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "DIR", description = "A basket folder.")
    private Path basket;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Failure {
        if (!Files.isDirectory(basket)) {
            throw new Failure(Exit.WRONG_USAGE, "there is no folder " + basket);
        }
        Path folder = basket.resolve(Schemas.FOLDER);
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
            throw OutFolder.couldNotWrite(folder, e, "; make room for the schemas there");
        }
        told.println("write this line at the top of basket.yaml:");
        told.println("  " + Schemas.BASKET_COMMENT);
        told.println("and this one at the top of each file in pieces, and below each --- in it:");
        told.println("  " + Schemas.PIECE_COMMENT);
        return Exit.DONE;
    }
}
