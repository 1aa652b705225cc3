package kitleaf;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The phrases of a bundle, read from its files, and the code that says them, read as text.
 *
 * @param bundle its files without {@code .properties} and language
 * @param code the folder of the package that says the phrases
 */
public record Phrases(Path bundle, Path code) {

    private static final Pattern SLOT = Pattern.compile("\\{([0-9])}");
    /** A text in the code that is one line long. */
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    /** How a phrase is said. */
    private static final Pattern SAID = Pattern.compile("(?:Fault\\.of|Said\\.of|\\.say|Unreadable|BadValue|fault|here\\(at,|Failure\\.of\\([A-Za-z._]+,)"
            + "\\(?\\s*\"([a-z0-9.-]+)\"\\s*[,)]");
    /** Texts that can be nothing but keys: names with points in them that name no file and no bundle. */
    private static final Pattern KEY = Pattern.compile("\"((?!(?:kitleaf|org|java|os)\\.)[a-z][a-z0-9-]*(?:\\.[a-z][a-z0-9-]*)+)(?<!\\.(?:yaml|yml|csv|pdf|json|ftlx|png|properties|exe))\"");
    /** Three words in a row, the first not a key with its colon: a sentence, or part of one. */
    private static final Pattern SENTENCE = Pattern.compile(".*\\b[A-Za-z']{2,}[,;]? [a-z']{1,}[,;]? [a-z']{2,}.*|.*(^|[^a-z])(write|is not|must|cannot|page|of) .*");

    /** The numbers of the slots of each phrase, by key. */
    public Map<String, Set<String>> slots(String language) throws IOException {
        Map<String, Set<String>> slots = new TreeMap<>();
        properties(language).forEach((key, phrase) -> slots.put((String) key,
                SLOT.matcher((String) phrase).results().map(found -> found.group(1)).collect(Collectors.toCollection(TreeSet::new))));
        return slots;
    }

    /** The beginnings of keys that stand nowhere in the code; {@code .wrong} and {@code .write} are left off. */
    public List<String> unsaid() throws IOException {
        String source = source();
        return properties("").stringPropertyNames().stream().filter(key -> !source.contains('"' + key + '"'))
                .map(key -> key.replaceFirst("\\.(wrong|write)$", "")).filter(key -> !source.contains('"' + key + '"'))
                .distinct().sorted().toList();
    }

    /** What is said and has no phrase. */
    public List<String> missing() throws IOException {
        Properties phrases = properties("");
        List<String> missing = new ArrayList<>();
        String source = source();
        int found = 0;
        for (String key : Stream.of(SAID, KEY).flatMap(how -> how.matcher(source).results()).map(it -> it.group(1)).toList()) {
            boolean fault = phrases.containsKey(key + ".wrong") && phrases.containsKey(key + ".write");
            if (!phrases.containsKey(key) && !fault) {
                missing.add(key);
            }
            found++;
        }
        if (found < 10) {
            throw new AssertionError("only " + found + " phrases are said");
        }
        return missing;
    }

    /** Texts in the code that read like sentences, apart from those for programmers, examples in YAML, and patterns. */
    public List<String> sentencesInCode() throws IOException {
        List<String> sentences = new ArrayList<>();
        for (String statement : source().split(";\\s*\n|\\{\\s*\n|}\\s*\n")) {
            // Exceptions, and what is wanting for a schema, tell programmers of faults in Kitleaf; and headings of tables are her
            // words, not ours.
            if (statement.matches("(?s).*(new (IllegalArgumentException|IllegalStateException|AssertionError)\\(|wanting\\.add\\(|\\.also\\().*")) {
                continue;
            }
            Matcher literal = LITERAL.matcher(statement);
            while (literal.find()) {
                String text = literal.group(1);
                boolean example = text.matches("(- )?\\{[a-z-]+: .*|[a-z-]+: .*|\\[.*") || text.contains("\\\\");
                if (!example && SENTENCE.matcher(text).matches()) {
                    sentences.add(text);
                }
            }
        }
        return sentences;
    }

    private Properties properties(String language) throws IOException {
        Properties phrases = new Properties() {
            private static final long serialVersionUID = 1;

            /** Of a key that stands twice the later phrase would be said everywhere. */
            @Override
            public synchronized Object put(Object key, Object phrase) {
                if (containsKey(key)) {
                    throw new AssertionError(key + " stands twice in " + bundle + language + ".properties; begin the new one's key otherwise");
                }
                return super.put(key, phrase);
            }
        };
        try (Reader reader = Files.newBufferedReader(Path.of(bundle + language + ".properties"))) {
            phrases.load(reader);
        }
        return phrases;
    }

    /** The code without its comments. */
    private String source() throws IOException {
        StringBuilder text = new StringBuilder();
        try (Stream<Path> walk = Files.walk(code)) {
            for (Path file : walk.filter(it -> it.toString().endsWith(".java")).sorted().toList()) {
                text.append(Files.readString(file)).append('\n');
            }
        }
        return text.toString().replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)^\\s*//.*$", "");
    }
}
