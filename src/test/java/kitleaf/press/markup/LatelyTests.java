package kitleaf.press.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LatelyTests {

    private static final int MOST = 20;

    /** Against a list of what was asked for, the newest last. */
    @Test
    void the_last_so_many_are_known_and_no_more_than_twice_as_many() {
        Lately<Integer, String> lately = new Lately<>(MOST);
        List<Integer> asked = new ArrayList<>();
        Random random = new Random(4);
        for (int i = 0; i < 5_000; i++) {
            int key = random.nextInt(60);
            if (lately.get(key) == null) {
                assertTrue(!asked.subList(Math.max(0, asked.size() - MOST), asked.size()).contains(key), key + " was forgotten");
                lately.put(key, "v" + key);
            }
            asked.remove((Integer) key);
            asked.add(key);
            assertEquals("v" + key, lately.get(key));
        }
    }

    @Test
    void what_is_not_asked_for_again_is_let_go() {
        Lately<Integer, String> lately = new Lately<>(MOST);
        lately.put(-1, "once");
        for (int i = 0; i < 2 * MOST; i++) {
            lately.put(i, "new");
        }
        assertNull(lately.get(-1));
        for (int i = 0; i < 10 * MOST; i++) {
            lately.put(i, "new");
            assertEquals("new", lately.get(0), "asked for each time");
        }
    }

    @Test
    void keys_that_are_used_again_are_copied() {
        Lately<List<String>, String> lately = new Lately<>(MOST, List::copyOf);
        List<String> key = new ArrayList<>(List.of("a"));
        lately.put(key, "first");
        key.set(0, "b");
        assertNull(lately.get(key));
        lately.put(key, "second");
        for (int i = 0; i < MOST; i++) {
            lately.put(List.of("c" + i), "more");
        }
        // Both are old by now, and what is found is remembered anew under a key of its own.
        assertEquals("second", lately.get(key));
        key.set(0, "a");
        assertEquals("first", lately.get(key));
        assertEquals("second", lately.get(List.of("b")));
    }
}
