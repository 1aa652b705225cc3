package kitleaf.basket.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kitleaf.basket.Paper;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.NearMiss;
import kitleaf.words.Said;

/** Knows the papers people print on. */
public final class Papers {

    /**
     * Upright, in millimetres. A sizes: ISO 216. Letter and tabloid: ANSI/ASME Y14.1 sizes A and B, 8.5 x 11 and
     * 11 x 17 in. Legal: PWG 5101.1 {@code na_legal_8.5x14in}. An inch is 25.4 mm.
     */
    private static final Map<String, Paper> UPRIGHT = upright(
            new Paper("A5", 148, 210),
            new Paper("A4", 210, 297),
            new Paper("A3", 297, 420),
            new Paper("A2", 420, 594),
            new Paper("A1", 594, 841),
            new Paper("letter", 215.9, 279.4),
            new Paper("legal", 215.9, 355.6),
            new Paper("tabloid", 279.4, 431.8));

    /** What is printed on when nothing is said: A4, upright. */
    public static final Paper USUAL = UPRIGHT.get("A4");

    private Papers() {
    }

    private static Map<String, Paper> upright(Paper... papers) {
        Map<String, Paper> named = new LinkedHashMap<>();
        for (Paper paper : papers) {
            named.put(paper.name(), paper);
        }
        return named;
    }

    /**
     * The paper a text names: {@code A5}, {@code A4}, {@code A3}, {@code A2}, {@code A1}, {@code letter}, {@code legal}
     * or {@code tabloid} in any case, upright unless {@code landscape} follows, or its own size such as {@code 210 mm x 320 mm}
     * (width first). Nothing if it names none or one of a size {@link Paper} refuses.
     */
    public static Optional<Paper> named(String text) {
        try {
            return Optional.of(read(text));
        } catch (Fault fault) {
            return Optional.empty();
        }
    }

    /** How papers are written in {@code basket.yaml}. */
    public static Form<Paper> form() {
        return new Form<>() {
            @Override
            public Paper read(String text) throws Fault {
                return Papers.read(text);
            }

            @Override
            public String example() {
                return "A4";
            }

            @Override
            public JsonShape shape() {
                String turned = "(\\s+" + JsonShape.anyCase(List.of("portrait", "landscape")) + ")?";
                return JsonShape.oneOf(UPRIGHT.keySet()).or(JsonShape.pattern(JsonShape.anyCase(UPRIGHT.keySet()) + turned))
                        .or(JsonShape.pattern(LengthText.PATTERN + "\\s*[xX×]\\s*" + LengthText.PATTERN,
                                Said.of("note.paper", "210 mm x 320 mm")));
            }
        };
    }

    private static Paper read(String text) throws Fault {
        String stripped = text.strip();
        if (stripped.matches("[0-9].*[xX×].*")) {
            return ownSize(stripped);
        }
        String[] words = stripped.split("\\s+", 2);
        Paper upright = null;
        for (Paper paper : UPRIGHT.values()) {
            if (paper.name().toLowerCase(Locale.ROOT).equals(words[0].toLowerCase(Locale.ROOT))) {
                upright = paper;
            }
        }
        if (upright == null) {
            throw Fault.of(Said.of("paper.unknown", Quote.bare(stripped)), NearMiss.of(words[0], UPRIGHT.keySet())
                    .filter(near -> words[0].length() > 2).map(Advice::meant)
                    .orElseGet(() -> Said.of("paper.all", String.join(", ", UPRIGHT.keySet()))));
        }
        if (words.length == 1) {
            return upright;
        }
        return switch (words[1].toLowerCase(Locale.ROOT)) {
            case "portrait" -> upright;
            case "landscape" -> new Paper(upright.name() + " landscape", upright.heightMm(), upright.widthMm());
            default -> throw Fault.of(Said.of("paper.turn", Quote.bare(words[1])),
                    Advice.on(words[1], List.of("portrait", "landscape")));
        };
    }

    private static Paper ownSize(String text) throws Fault {
        String[] sides = text.split("\\s*[xX×]\\s*", -1);
        if (sides.length != 2) {
            throw Fault.of("paper.size", Quote.bare(text));
        }
        double widthMm = LengthText.plain(sides[0]);
        double heightMm = LengthText.plain(sides[1]);
        if (!Paper.fits(widthMm, heightMm)) {
            throw Fault.of("paper.range", Quote.bare(text));
        }
        return new Paper(text, widthMm, heightMm);
    }
}
