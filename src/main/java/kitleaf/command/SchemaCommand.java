package kitleaf.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import kitleaf.basket.place.LinkGuard;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.schema.Schemas;
import kitleaf.command.files.Draft;
import kitleaf.command.files.OutFolder;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Failure;
import kitleaf.words.Shown;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Writes the schemas by which an editor completes and checks while she types. */
final class SchemaCommand extends Task {

    private final PositionalParamSpec folder = add(PositionalParamSpec.builder().index("0").required(true).paramLabel("DIR")
            .type(Path.class));
    private final OptionSpec language = add(Options.language());

    SchemaCommand(Kitleaf kitleaf) {
        super(kitleaf, "schema");
    }

    @Override
    public Integer call() {
        Path basket = folder.getValue();
        if (!Files.isDirectory(basket)) {
            throw Failure.of(Exit.WRONG_USAGE, "schema.no-folder", basket.toString());
        }
        Options.<Locale>value(language).or(() -> BasketReader.language(basket)).ifPresent(voice()::turnTo);
        Path schemas = basket.resolve(Schemas.FOLDER);
        PrintWriter told = line().getOut();
        try (OutFolder out = OutFolder.open(schemas, LinkGuard.round(basket), this::complain)) {
            Map<String, String> files = Schemas.files(voice().language());
            for (Map.Entry<String, String> file : files.entrySet()) {
                try (Draft draft = out.draft(file.getKey())) {
                    draft.stream().write(file.getValue().getBytes(StandardCharsets.UTF_8));
                }
            }
            out.replaceAll();
            files.keySet().forEach(name -> told.println(Shown.inOneLine(schemas.resolve(name).toString())));
        } catch (IOException e) {
            throw OutFolder.noRoomForSchemas(schemas, e);
        }
        told.println(voice().say("schema.basket"));
        told.println("  " + Schemas.BASKET_COMMENT);
        told.println(voice().say("schema.pieces"));
        told.println("  " + Schemas.PIECE_COMMENT);
        return Exit.DONE;
    }
}
