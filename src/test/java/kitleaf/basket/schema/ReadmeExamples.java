package kitleaf.basket.schema;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The examples in README.md and the pages it leads to, as texts: those of the tables of keys, and the blocks that begin with a key. */
record ReadmeExamples(List<String> lines) {

    private static final Pattern CODE = Pattern.compile("`([^`]+)`");
    private static final Pattern KEY = Pattern.compile("[a-z][a-z-]*:( .*)?");

    static ReadmeExamples read() throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(Path.of("README.md")));
        for (String page : pages()) {
            lines.add("");
            lines.addAll(Files.readAllLines(Path.of(page)));
        }
        return new ReadmeExamples(lines);
    }

    /** The pages README.md leads to, but for DEVELOPERS.md. */
    static Set<String> pages() throws IOException {
        Set<String> pages = new TreeSet<>();
        Matcher link = Pattern.compile("\\]\\((examples/[^)#]+\\.md)").matcher(Files.readString(Path.of("README.md")));
        while (link.find()) {
            pages.add(link.group(1));
        }
        return pages;
    }

    /** The last cells of the table below a heading, each example apart. */
    List<String> table(String heading) {
        List<String> examples = new ArrayList<>();
        int at = lines.indexOf(heading) + 1;
        if (at == 0) {
            throw new AssertionError("no page has a heading " + heading);
        }
        for (; at < lines.size() && !lines.get(at).startsWith("#"); at++) {
            String line = lines.get(at);
            if (line.startsWith("| ")) {
                String cell = line.substring(line.lastIndexOf(" | ", line.length() - 3) + 3);
                Matcher code = CODE.matcher(cell);
                while (code.find()) {
                    examples.add(code.group(1));
                }
            }
        }
        return examples;
    }

    /** What stands indented and begins with a key, each such key with its value apart. */
    List<String> blocks() {
        List<String> examples = new ArrayList<>();
        for (int at = 1; at < lines.size(); at++) {
            if (lines.get(at - 1).isBlank() && indent(lines.get(at)) >= 4) {
                int indent = indent(lines.get(at));
                boolean ofKey = false;
                for (; at < lines.size() && indent(lines.get(at)) >= indent; at++) {
                    String line = lines.get(at).substring(indent);
                    if (!line.startsWith(" ")) {
                        ofKey = KEY.matcher(line).matches();
                        if (ofKey) {
                            examples.add(line);
                        }
                    } else if (ofKey) {
                        examples.set(examples.size() - 1, examples.get(examples.size() - 1) + "\n" + line);
                    }
                }
            }
        }
        return examples;
    }

    private static int indent(String line) {
        return line.isBlank() ? 0 : line.length() - line.stripLeading().length();
    }
}
