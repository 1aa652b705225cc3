package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.Goal;
import kitleaf.basket.Pace;
import kitleaf.command.json.ReckonJson;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.year.Years;
import org.junit.jupiter.api.Test;

class GoalsJsonTests {

    private static JsonNode goals(Pace pace) throws IOException {
        Basket basket = Years.basket(pace, List.of(), Years.goals(2027), List.of(Years.piece("lamp", 1400, Goal.NONE)));
        Reckoning reckoning = Reckoning.of(basket);
        StringWriter text = new StringWriter();
        ReckonJson.write(reckoning, reckoning.year(LocalDate.parse("2027-01-01")), new PrintWriter(text));
        return new ObjectMapper().readTree(text.toString()).get("goals");
    }

    /** By hand: 1400 stitches at 100 an hour are 14 hours, 14 days of one hour; 365 hours in the year. */
    @Test
    void the_promised_keys_are_there() throws IOException {
        JsonNode goals = goals(Years.pace(100, 7));
        assertEquals("lamp", goals.get("chosen").get(0).asText());
        assertEquals(365, goals.get("hours-available").asDouble(), 1e-9);
        assertEquals(14, goals.get("hours-needed").asDouble(), 1e-9);
        assertEquals(1, goals.get("chance-all").asDouble());
        JsonNode piece = goals.get("pieces").get(0);
        assertEquals("lamp", piece.get("id").asText());
        for (String key : List.of("p10", "p50", "p90")) {
            assertEquals("2027-01-14", piece.get(key).asText());
        }
        assertEquals(1, piece.get("chance").asDouble());
        assertEquals("no-spread", goals.get("warnings").get(0).get("kind").asText());
    }

    @Test
    void what_nobody_can_know_is_null() throws IOException {
        JsonNode goals = goals(Pace.UNSAID);
        assertTrue(goals.get("chosen").isEmpty());
        for (String key : List.of("hours-available", "hours-needed", "chance-all")) {
            assertTrue(goals.get(key).isNull(), key);
        }
        assertEquals("hours-unknown", goals.get("not-chosen").get(0).get("why").asText());
    }

    @Test
    void a_basket_without_goals_has_no_such_key() throws IOException {
        Basket basket = Years.basket(Pace.UNSAID, List.of(), Years.goals(2027), List.of());
        StringWriter text = new StringWriter();
        ReckonJson.write(Reckoning.of(basket), Optional.empty(), new PrintWriter(text));
        assertFalse(new ObjectMapper().readTree(text.toString()).has("goals"));
    }

    @Test
    void a_day_that_is_none_is_wrong_usage() {
        Map<String, String> told = Map.of("2027-02-29", "is a day the calendar does not have; write 2027-02-01 to 2027-02-28",
                "soon", "is not a date in the form year-month-day; write it like 2026-02-14",
                "0001-01-01", "is in the year 1; write a year from 1900 to 2199");
        told.forEach((day, wrong) -> {
            Ran ran = Ran.kitleaf("reckon", "examples/harbour", "--as-of", day);
            assertEquals(2, ran.code(), day);
            assertTrue(ran.err().contains("--as-of: \"" + day + "\" " + wrong), ran.err());
        });
    }
}
