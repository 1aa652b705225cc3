package kitleaf.basket.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What the readers take, the schemas take: an editor never underlines what is right. */
class SchemaAgreementTests {

    private static final Judge BASKET = Judge.of("basket.schema.json");
    private static final Judge PIECE = Judge.of("piece.schema.json");

    @Provide
    Arbitrary<String> pieces() {
        return Arbitraries.randomValue(random -> new Writer(random).piece());
    }

    @Provide
    Arbitrary<String> baskets() {
        return Arbitraries.randomValue(random -> new Writer(random).basket());
    }

    @Property
    void aPieceTheReaderTakesIsTakenByTheSchema(@ForAll("pieces") String text) {
        assertEquals(List.of(), PIECE.byReader(text), text);
        assertEquals(List.of(), PIECE.bySchema(text), text);
    }

    @Property
    void aBasketTheReaderTakesIsTakenByTheSchema(@ForAll("baskets") String text) {
        assertEquals(List.of(), BASKET.byReader(text), text);
        assertEquals(List.of(), BASKET.bySchema(text), text);
    }

    /** Writes as people do: one way today, another tomorrow. */
    private record Writer(Random random) {

        private static final List<String> INCHES = List.of("in", "IN", "inch", "Inches", "\"", "″");

        String piece() {
            Keys piece = new Keys();
            piece.put("piece", text());
            piece.maybe("designer", text());
            // Readers also see what cannot be together, such as more crosses than squares; a schema does not.
            piece.put("stitches", 100 + random.nextInt(900) + pick(" x ", "x", " X ", " × ", " by ") + (100 + random.nextInt(900)));
            String cloth = cloth();
            piece.put("cloth", cloth);
            piece.maybe("margin", pick(length(200), flow(Map.of("top", length(200), "left", length(200), "bottom", length(200)))));
            piece.maybe("finish", pick("framed", "hooped", "bell-pull", "needle-case", "bag"));
            piece.maybe("threads", pick(threads(), "t.csv", "Threads.CSV", "[]"));
            piece.maybe("parts", "[{part: " + text() + ", over: 1, stitches: 12 x 8, threads: " + threads() + "}]");
            piece.maybe("coverage", pick(percent(), whole(6000, 90000)));
            String progress = pick(percent(), whole(0, 9000), "{started: 2026-02-14, done: " + percent() + ", log: [{on: "
                    + pick("2026-12-31", "\"2026-02-28\"", "2027-06-30") + ", hours: " + pick("2.5", "3", ".5", "24", "\"1.25\"") + ", stitches: "
                    + whole(0, 500) + "}]}");
            // Nor does a schema see that a begun piece cannot be uncut.
            if (!cloth.matches("(?i).*\\bcut: \\W?(no|false)\\b.*")) {
                piece.maybe("progress", progress);
            }
            piece.maybe("goal", "{must: " + yesNo() + ", by: 2028-02-29, weight: " + whole(1, 9) + "}");
            return piece.block();
        }

        private String cloth() {
            Keys cloth = new Keys();
            cloth.maybe("name", text());
            boolean block = random.nextBoolean();
            cloth.put("kind", block ? pick("block", "Aida", "block  weave") : pick("linen", "evenweave", "even-weave"));
            cloth.put("count", pick(count(), "{warp: " + count() + ", weft: " + count() + "}"));
            if (!block) {
                cloth.put("over", whole(1, 3));
            }
            cloth.maybe("shrink", pick(percent(9), "{warp: " + percent(9) + ", weft: " + percent(9) + "}"));
            cloth.maybe("counted", pick("before", "after"));
            cloth.maybe("warp", pick("down", "across"));
            cloth.maybe("over-dyed", pick("before", "after", yesNo()));
            cloth.maybe("cut", yesNo());
            return cloth.flow();
        }

        private String count() {
            return pick("36", "35.5", "\"28\"", "14 ct", "28ct", "14 count", "28 Count",
                    "71 in 2 in", "145 in 10 cm", "'56 in 1 1/2\"'", "3", "120");
        }

        private String threads() {
            List<String> threads = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                Keys thread = new Keys();
                thread.put("code", pick("K" + i, "\"0" + i + "\"", String.valueOf(i)));
                thread.maybe("name", text());
                thread.maybe(pick("colour", "color"), pick("\"#6b7f8c\"", "'#ABC'", "\"#D8B25c\""));
                thread.maybe("symbol", pick("\"●\"", "x", "7", "\"#\"", "'\"'"));
                thread.maybe("skein", "cotton");
                thread.maybe("strands", pick(whole(1, 12), "{else: " + whole(1, 12) + "}"));
                thread.maybe("stitches", "{cross: " + pick(whole(0, 900), "{count: 9, worked: rows}") + ", satin: " + pick("8", "{count: 80, span: 5}")
                        + ", other: {count: 12, each: " + length(300)
                        + "}, three-quarter: 3, " + pick("knot", "knots", "French knot", "french-knots") + ": 4}");
                thread.maybe("share", percent(16));
                thread.maybe("used", "{skeins: " + pick("1.5", "2", "0.25") + ", stitches: 3000}");
                thread.maybe("over", whole(1, 2));
                thread.maybe("lot", text());
                thread.maybe("mix-lots", yesNo());
                threads.add(thread.flow());
            }
            return "[" + String.join(", ", threads) + "]";
        }

        String basket() {
            Keys basket = new Keys();
            basket.maybe("title", text());
            basket.maybe("paper", pick("A4", "a3", "LETTER", "Legal landscape", "A5 portrait", "210 mm x 320 mm", "'8 1/2\" x 14 in'"));
            basket.maybe("units", pick("in", "cm"));
            basket.maybe("printer", pick("{measured-across: 99.3 mm}", "{measured-down: 10.02 cm, measured-across: 3 15/16 in}", "{}"));
            basket.maybe("cut-step", pick("1/4 in", "½ in", "0.5 cm"));
            basket.maybe("skeins", "{silk: {length: " + pick("8 m", "5 yd") + ", plies: " + whole(1, 12) + ", lot-matters: " + yesNo() + "}, \"2\": {length: 6 m, plies: 7}}");
            basket.maybe("stash", pick("stash.csv", "[]", "[{code: K12, skeins: " + pick("1.5", "2", "\".5\"") + ", lot: " + text() + "}]"));
            basket.maybe("prices", "{cotton: " + pick("1.20 GBP", "2 EUR", "150 JPY", "1.2GBP", ".5 EUR") + "}");
            basket.maybe("label-stock", pick("{cut: 50 mm x 20 mm, style: wrap}",
                    "{paper: letter, columns: 3, rows: 10, label: 2 5/8 in x 1 in, first: 3/16 in x 1/2 in, pitch: 2 3/4 in x 1 in, style: face}",
                    "{paper: A4, columns: 4, rows: \"6\", label: 40 mm, first: 16 mm x 15 mm, pitch: 46 mm x 45 mm, shape: round}"));
            basket.maybe("tags", pick("{}", "{size: sixth, sides: long-edge}", "{sides: short-edge, back-lies: {left: 1 mm, above: 0 mm}}"));
            basket.maybe("cloth-on-hand", "[{name: " + text() + ", kind: linen, count: " + count() + ", size: 70 cm x " + pick("1/2 yd", "90 cm", "1.5 m")
                    + ", selvedge: right, turning: " + yesNo() + ", flaws: [{from-top: 4 cm, wide: " + length(50) + "}]}]");
            basket.maybe("cloth-cuts", pick("[]", "[{name: fat quarter, size: 27 in x 18 in, price: 14.00 GBP, kind: linen, count: 36, cloth: " + text() + "}]"));
            basket.maybe("cutting", "{fray: " + length(25) + ", usable: " + length(200) + "}");
            basket.maybe("pace", pick("{hours-per-week: 9}", "{stitches-per-hour: 110.5, hours-per-week: \"12\"}"));
            basket.maybe("time-off", "[{from: 2027-07-05, why: " + text() + "}, {from: 2027-12-24, to: 2027-12-31}]");
            basket.maybe("goals", pick("{year: 2027, choose: 9, by: weight, seed: 0}", "{year: \"2027\", pieces: [fog-bell, 7], main-share: "
                    + pick("70%", "50.5 %", "100%") + ", cards: 3x4, wall: " + pick("A2", "a1 landscape") + "}"));
            // Prices in two currencies are refused, and rightly; so are prices of cuts without their kin.
            return basket.has("prices") ? basket.without("cloth-cuts").block() : basket.block();
        }

        private String text() {
            return pick("Fog bell", "1889", "7.5", "true", "2026-02-14", "\"12\"", "'it''s'", "\"a: b #c\"", "Ébène", "灯台", "x".repeat(200));
        }

        private String yesNo() {
            return pick("yes", "no", "true", "false", "Yes", "NO", "True", "\"yes\"");
        }

        private String percent() {
            return percent(100);
        }

        private String percent(int most) {
            int number = random.nextInt(most);
            return pick(number + "%", number + ".5 %", "\"" + number + "%\"", ".5%");
        }

        private String whole(int least, int most) {
            int number = least + random.nextInt(most - least + 1);
            return pick(String.valueOf(number), String.valueOf(number), "\"" + number + "\"");
        }

        /** Up to so many millimetres, written in one of the ways there are. */
        private String length(int mostMm) {
            int mm = 1 + random.nextInt(mostMm);
            String quarters = Math.max(1, mm / 26 * 4) + "/4 ";
            String inch = pick(INCHES.toArray(String[]::new));
            String inches = mm < 26 ? "1/32 " : pick(quarters, mm / 26 + " ", mm / 26 - 1 + " 1/2 ", mm / 26 - 1 + "½", "." + mm % 100 + "1");
            return pick(mm + " mm", mm + "MM", mm / 10 + ".5 mm", mm / 1000.0 + " m", inch.equals("\"") ? "'" + inches + inch + "'" : inches + inch);
        }

        private String pick(String... ways) {
            return ways[random.nextInt(ways.length)];
        }

        private String flow(Map<String, String> entries) {
            Keys keys = new Keys();
            entries.forEach(keys::maybe);
            keys.put("right", length(100));
            return keys.flow();
        }

        /** Keys with values, in the order they are put. */
        private final class Keys {
            private final List<String> text = new ArrayList<>();

            void put(String key, String value) {
                text.add(key + ": " + value);
            }

            void maybe(String key, String value) {
                if (random.nextBoolean()) {
                    put(key, value);
                }
            }

            boolean has(String key) {
                return text.stream().anyMatch(line -> line.startsWith(key + ": "));
            }

            Keys without(String key) {
                text.removeIf(line -> line.startsWith(key + ": "));
                return this;
            }

            String block() {
                return String.join("\n", text) + "\n";
            }

            String flow() {
                return "{" + String.join(", ", text) + "}";
            }
        }
    }
}
