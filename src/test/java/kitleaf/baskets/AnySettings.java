package kitleaf.baskets;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What the pieces of a drawn basket share.
 *
 * @param text of {@code basket.yaml}
 * @param large whether the paper has room for large print
 * @param clothNames of the cloth on hand
 */
record AnySettings(String text, boolean large, List<String> clothNames) {

    private static final String[] PAPERS = {"A4", "A4", "A5", "letter", "A3", "legal", "tabloid", "A4 landscape", "letter landscape",
            "A5 landscape",
        "A3 landscape", "210 mm x 320 mm", "160 mm x 230 mm"};

    static AnySettings of(Draw draw, int pieces, Set<String> titles) {
        StringBuilder text = new StringBuilder();
        String title = draw.words(draw.once(5) ? 14 : 4);
        titles.add(title);
        text.append("title: ").append(title).append('\n');
        if (draw.once(2)) {
            text.append("language: ").append(draw.of("de", "en", "en-US", "en-GB")).append('\n');
        }
        String paper = draw.of(PAPERS);
        text.append("paper: ").append(paper).append('\n');
        text.append(draw.once(2) ? "units: " + draw.of("in", "cm") + "\n" : "");
        text.append(draw.once(4) ? "cut-step: " + draw.of("1/2 in", "1 cm", "0.5 cm", "1/8 in", "1 mm") + "\n" : "");
        text.append(draw.once(6) ? "printer: {measured-across: 99.3 mm, measured-down: 100.4 mm}\n" : "");
        text.append("skeins: {silk: {length: 6 m, plies: 7, lot-matters: yes}, hand-dyed: {length: 20 m, plies: 6, lot-matters: yes}}\n");
        text.append(draw.once(2) ? "prices: {cotton: 1.20 EUR, silk: 12.75 EUR, hand-dyed: 123.50 EUR}\n" : "");
        stash(draw, text);
        text.append(draw.once(2) ? "label-stock: " + labels(draw) + "\n" : "");
        if (draw.once(2)) {
            // Shares of a sheet are refused on some paper, and in large print.
            text.append("tags: {").append(draw.of("", "", "", "size: 60 mm x 56 mm, ", "size: 68 mm x 60 mm, ")).append("sides: ")
                    .append(draw.of("folded", "long-edge", "short-edge")).append("}\n");
        }
        List<String> cloths = cloth(draw, text);
        if (draw.once(2)) {
            text.append("pace: {stitches-per-hour: ").append(draw.whole(40, 300)).append(", hours-per-week: ").append(draw.whole(1, 30))
                    .append("}\n");
        }
        text.append(draw.once(3) ? "time-off: [{from: 2027-07-05, to: 2027-07-18, why: boats}]\n" : "");
        if (draw.once(2)) {
            text.append("goals: {year: 2027").append(draw.once(2) ? ", choose: " + draw.whole(1, pieces) : "").append(draw.once(2)
                    ? ", by: weight" : "");
            text.append(draw.once(3) ? ", cards: " + draw.whole(3, 5) + " x " + draw.whole(3, 5) : "");
            text.append(draw.once(3) ? ", wall: " + draw.of("A3", "A2", "tabloid") : "").append("}\n");
        }
        return new AnySettings(text.toString(), !paper.equals("A5 landscape"), cloths);
    }

    private static void stash(Draw draw, StringBuilder text) {
        if (draw.once(2)) {
            text.append("stash:\n");
            int entries = draw.log(1, 30);
            for (int i = 0; i < entries; i++) {
                text.append("  - {code: K").append(i * 7 % 53).append(", skein: ").append(draw.of("cotton", "silk", "hand-dyed"))
                        .append(", skeins: ")
                        .append(draw.tenths(0.5, 30)).append(", lot: \"").append(i).append(draw.of("", " B", "-2026-114")).append("\"}\n");
            }
        }
    }

    private static String labels(Draw draw) {
        return draw.of("{cut: 60 mm x 24 mm, style: face}", "{cut: 63 mm x 25 mm}", "{cut: 45 mm x 20 mm, style: face}",
                "{cut: 38 mm x 21 mm, style: face}",
                "{cut: 70 mm x 50 mm, style: wrap}",
                "{paper: letter, columns: 3, rows: 10, label: 2 5/8 in x 1 in, first: 3/16 in x 1/2 in, "
                        + "pitch: 2 3/4 in x 1 in, style: face}",
                "{paper: A4, columns: 4, rows: 6, label: 40 mm, first: 16 mm x 15 mm, pitch: 46 mm x 45 mm, shape: round}");
    }

    private static List<String> cloth(Draw draw, StringBuilder text) {
        List<String> names = new ArrayList<>();
        if (draw.once(2)) {
            text.append("cloth-on-hand:\n");
            int cloths = draw.log(1, 8);
            for (int i = 0; i < cloths; i++) {
                names.add(draw.words(3));
                text.append("  - {name: ").append(names.get(i)).append(", kind: ").append(draw.of("linen", "evenweave", "block"));
                text.append(", count: ").append(draw.of(14, 18, 28, 32, 36, 40)).append(", size: ").append(draw.log(10, 200))
                        .append(" cm x ");
                text.append(draw.log(10, 300)).append(" cm").append(draw.of("", ", turning: yes", ", selvedge: left",
                        ", warp: across, selvedge: top"));
                text.append(draw.once(4) ? ", flaws: [{from-left: 3 cm, wide: 1 cm}]" : "").append("}\n");
            }
        }
        if (draw.once(3)) {
            text.append("cloth-cuts: [{name: fat quarter, size: 27 in x 18 in, price: 14.00 EUR, turning: yes},\n");
            text.append("             {name: metre, size: 140 cm x 100 cm, price: 1234.50 EUR}]\n");
        }
        if (draw.once(4)) {
            text.append("cutting: {fray: ").append(draw.whole(0, 30)).append(" mm, usable: ").append(draw.whole(1, 40)).append(" cm}\n");
        }
        return names;
    }
}
