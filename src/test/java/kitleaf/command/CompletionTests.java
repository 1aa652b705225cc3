package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script run by bash itself, asked as bash asks it when Tab is pressed. */
class CompletionTests {

    @TempDir
    private Path folder;

    @BeforeEach
    void writeScript() throws IOException {
        assumeTrue(List.of("/bin/bash", "/usr/bin/bash").stream().anyMatch(bash -> Files.isExecutable(Path.of(bash))), "there is no bash here");
        Ran ran = Ran.kitleaf("completion");
        assertEquals(0, ran.code(), ran.err());
        Files.writeString(folder.resolve("script"), ran.out());
    }

    /** What bash offers after these words, the last of which is half typed. */
    private List<String> offered(String... words) throws IOException, InterruptedException {
        StringBuilder typed = new StringBuilder();
        for (String word : words) {
            typed.append(" '").append(word).append('\'');
        }
        Files.writeString(folder.resolve("ask"), "source ./script\nCOMP_WORDS=(" + typed + ")\nCOMP_CWORD=" + (words.length - 1)
                + "\n$(complete -p kitleaf | sed 's/.*-F \\([^ ]*\\).*/\\1/') kitleaf \"${COMP_WORDS[COMP_CWORD]}\"\nprintf '%s\\n' \"${COMPREPLY[@]}\"\n");
        // Bash complains that nobody pressed Tab; what is offered is the same.
        Process bash = new ProcessBuilder("bash", "ask").directory(folder.toFile()).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, bash.waitFor(), said);
        return said.lines().map(String::strip).filter(line -> !line.isEmpty()).sorted().toList();
    }

    @Test
    void bash_completes_commands_options_and_words() throws Exception {
        assertEquals(List.of("watch"), offered("kitleaf", "wa"));
        assertEquals(List.of("--hours"), offered("kitleaf", "log", "--ho"));
        assertEquals(List.of("bag-tags", "bobbin-labels", "buy-list"), offered("kitleaf", "print", "--only", "b"));
        assertEquals(List.of("cm", "in"), offered("kitleaf", "reckon", "--units", ""));
        assertEquals(List.of("letter"), offered("kitleaf", "watch", "--paper", "let"));
    }
}
