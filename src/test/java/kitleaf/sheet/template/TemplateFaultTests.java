package kitleaf.sheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.Phrases;
import kitleaf.words.Said;
import org.junit.jupiter.api.Test;

/** What is told of a template that fails, in both languages. */
class TemplateFaultTests {

    private static final Path CODE = Path.of("src/main/java/kitleaf/sheet");
    private static final Phrases PHRASES = new Phrases(Path.of("src/main/resources/kitleaf/sheet/template/messages"), CODE);

    @Test
    void both_languages_have_the_same_phrases_with_the_same_slots() throws IOException {
        assertEquals(PHRASES.slots(""), PHRASES.slots("_de"));
    }

    @Test
    void every_phrase_is_said_and_every_phrase_that_is_said_is_there() throws IOException {
        Set<String> said = new TreeSet<>();
        try (Stream<Path> files = Files.walk(CODE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                said.addAll(Pattern.compile("(?:Said\\.of|new TemplateSlip)\\(\"((?:template|call)\\.[a-z0-9.-]+)\"").matcher(Files.readString(file))
                        .results().map(found -> found.group(1)).collect(Collectors.toSet()));
            }
        }
        assertEquals(PHRASES.slots("").keySet(), said);
    }

    /** Left: the name of a format of numbers, an end nobody is told of, and what is taken out of FreeMarker's words. */
    @Test
    void no_english_sentence_stands_in_the_code() throws IOException {
        assertEquals(List.of("up to six decimals", "the reader was closed", " The name was interpreted by this TemplateLoader.*"), PHRASES.sentencesInCode());
    }

    @Test
    void a_fault_is_told_in_both_languages_behind_its_place() {
        TemplateFault fault = new TemplateFault("buy-list.ftlx:3:4", Said.of("call.no-phrase", "buy.till"));
        assertEquals("buy-list.ftlx:3:4: there is no phrase \"buy.till\" among the words", fault.told(Locale.ENGLISH));
        assertEquals("buy-list.ftlx:3:4: unter den Wörtern gibt es „buy.till“ nicht", fault.told(Locale.GERMAN));
    }
}
