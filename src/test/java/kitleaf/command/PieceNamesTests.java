package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PieceNamesTests {

    private static final PieceNames NAMES = new PieceNames(Map.of("fog-bell", "Fog bell", "fog", "Élan vital", "rope", "Rope walk", "rose-9", "Rose"));

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"fog-bell,fog-bell", "FOG BELL,fog-bell", "fog,fog", "Fog,fog", "elan,fog", "rop,rope", "rope walk,rope", "Rose,rose-9", "fog b,fog-bell"})
    void a_piece_is_meant_by_id_title_or_a_beginning_of_its_own(String written, String id) {
        assertEquals(Optional.of(id), NAMES.meant(written));
    }

    @ParameterizedTest
    @CsvSource({"ro", "bell", "'!?'", "x"})
    void what_may_be_two_or_none_is_not_guessed(String written) {
        assertEquals(Optional.empty(), NAMES.meant(written));
    }

    @Test
    void a_slip_is_answered_with_what_is_near_and_a_beginning_of_several_with_those() throws IOException {
        Path basket = Ran.basket(folder, "", "");
        Files.delete(basket.resolve("pieces").resolve(Ran.files(basket.resolve("pieces")).get(0)));
        StringBuilder table = new StringBuilder("title,wide,high,kind,count,over\n");
        for (int i = 10; i < 30; i++) {
            table.append(i < 12 ? "Fog " : "Tide ").append(i).append(",40,40,linen,28,2\n");
        }
        Files.writeString(basket.resolve("pieces.csv"), table);
        assertTrue(Ran.kitleaf("log", basket, "tdie-20", "--hours", 1).err().contains("did you mean tide-20?"));
        assertTrue(Ran.kitleaf("log", basket, "Fog", "--hours", 1).err().contains("its pieces are: fog-10, fog-11"));
        assertTrue(Ran.kitleaf("log", basket, "Tide", "--hours", 1).err().contains(", which has 20; kitleaf reckon lists them"));
        Ran logged = Ran.kitleaf("log", basket, "fog 11", "--hours", 1, "--stitches", 60);
        assertEquals(0, logged.code(), logged.err());
        assertTrue(Files.readString(basket.resolve("log.csv")).contains(",fog-11,1,60,"), logged.out());
    }
}
