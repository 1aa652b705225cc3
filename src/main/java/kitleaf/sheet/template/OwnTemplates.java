package kitleaf.sheet.template;

import freemarker.cache.TemplateLoader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.words.Said;

/**
 * Templates in the user's own folder. Whatever name a template asks for, nothing outside that folder is opened, by
 * no path and no link.
 */
final class OwnTemplates implements TemplateLoader {

    /** The largest template taken, 1 MB; the longest built-in one has a fiftieth of that. */
    private static final int MOST_BYTES = 1_000_000;

    /**
     * Built-ins that run a text as a template, in which nothing could be stopped, and those that make a text of any length in one step.
     * Between the question mark and their names FreeMarker takes space and comments; names it takes in two spellings.
     */
    private static final Pattern REFUSED = Pattern.compile(
            "\\?(?:\\s|[<\\[](?:#--|!--).*?--[>\\]])*+(interpret|eval|eval_json|evalJson|left_pad|leftPad|right_pad|rightPad)\\b",
            Pattern.DOTALL);

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final Path folder;

    OwnTemplates(Path folder) throws IOException {
        this.folder = folder.toRealPath();
    }

    /** A template's file; {@code real} is what was checked, so it is what is read. */
    private record Found(String name, Path real) { }

    @Override
    public Object findTemplateSource(String name) throws IOException {
        try {
            Path named = folder.resolve(name).normalize();
            if (!named.startsWith(folder) || !Files.exists(named)) {
                return null;
            }
            Path real = named.toRealPath();
            if (!real.startsWith(folder)) {
                throw new TemplateFault(name, Said.of("template.link"));
            }
            // A pipe or a device could be read for ever.
            if (!Files.isRegularFile(real)) {
                throw new TemplateFault(name, Said.of("template.no-file"));
            }
            return new Found(name, real);
        } catch (InvalidPathException e) {
            return null;
        }
    }

    @Override
    public long getLastModified(Object source) {
        // A run is short: what was read once stays.
        return 0;
    }

    @Override
    public Reader getReader(Object source, String encoding) throws IOException {
        Found found = (Found) source;
        byte[] bytes;
        try (InputStream in = Files.newInputStream(found.real())) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        } catch (IOException e) {
            throw new TemplateFault(found.name(), Said.of("template.unreadable"));
        }
        if (bytes.length > MOST_BYTES) {
            throw new TemplateFault(found.name(), Said.of("template.huge"));
        }
        try {
            String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes)).toString();
            refuse(found.name(), text);
            return new StringReader(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            throw new TemplateFault(found.name(), Said.of("template.not-utf-8"));
        }
    }

    private static void refuse(String name, String text) throws TemplateFault {
        Matcher refused = REFUSED.matcher(text);
        if (refused.find()) {
            long line = 1 + text.substring(0, refused.start(1)).chars().filter(c -> c == '\n').count();
            throw new TemplateFault(name + ":" + line, Said.of("template.refused", refused.group(1)));
        }
    }

    @Override
    public void closeTemplateSource(Object source) { }
}
