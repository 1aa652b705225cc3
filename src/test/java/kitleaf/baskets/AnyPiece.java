package kitleaf.baskets;

import java.util.List;
import java.util.Set;

/** Writes a piece of a drawn basket. */
final class AnyPiece {

    private static final String[] FINISHES = {"framed", "hooped", "pillow", "box-top", "bag", "pin-pillow", "ornament", "needle-case",
            "needle-roll",
        "bell-pull", "bookmark"};

    private final Draw draw;
    private final Set<String> titles;

    AnyPiece(Draw draw, Set<String> titles) {
        this.draw = draw;
        this.titles = titles;
    }

    /**
     * The text of its file.
     *
     * @param cloths names of cloth on hand
     * @param mostThreads 0 or more
     */
    String text(List<String> cloths, int mostThreads) {
        StringBuilder text = new StringBuilder();
        text.append("piece: ").append(titled(draw.once(5) ? 14 : 4)).append('\n');
        text.append(draw.once(2) ? "designer: " + draw.words(3) + "\n" : "");
        int wide = draw.log(1, 2000);
        int high = draw.log(1, 2000);
        text.append("stitches: ").append(wide).append(" x ").append(high).append('\n');
        int over = cloth(text, cloths);
        margins(text);
        text.append(draw.once(2) ? "finish: " + draw.of(FINISHES) + "\n" : "");
        long squares = (long) wide * high;
        int threads = draw.once(6) ? 0 : draw.log(1, mostThreads);
        // Half of the squares for the threads that are counted, so that half stitches and knots beside them do no harm.
        long each = squares / (2L * Math.max(1, threads));
        boolean coverage = draw.once(2);
        text.append(coverage ? "coverage: " + draw.of("70%", "100%", "5%") + "\n" : "");
        if (threads > 0) {
            text.append("threads:\n");
            for (int i = 0; i < threads; i++) {
                text.append("  - ").append(thread(i, each, coverage && threads <= 20, over)).append('\n');
            }
        }
        if (over > 1 && wide > 8 && high > 8 && draw.once(4)) {
            text.append("parts:\n  - {part: ").append(titled(3)).append(", over: 1, stitches: ").append(draw.whole(1, wide)).append(" x ")
                    .append(draw.whole(1, high)).append(", threads: [{code: P1, stitches: {cross: ").append(draw.whole(1, 9))
                            .append("}}]}\n");
        }
        progress(text, squares);
        if (draw.once(3)) {
            text.append("goal: {must: ").append(draw.of("yes", "no")).append(", by: ").append(draw.day(2026, 2029)).append(", weight: ")
                    .append(draw.whole(1, 9)).append("}\n");
        }
        return text.toString();
    }

    private String titled(int words) {
        String title = draw.words(words);
        // No two pieces of a basket have one title.
        while (!titles.add(title)) {
            title = draw.words(words + 3);
        }
        return title;
    }

    /** Threads a stitch spans. */
    private int cloth(StringBuilder text, List<String> cloths) {
        boolean block = draw.once(4);
        int over = block ? 1 : draw.of(1, 2, 2, 2, 3);
        String count = draw.of(Integer.toString(block ? draw.whole(11, 22) : draw.whole(18, 56)), draw.tenths(14, 40),
                "{warp: " + draw.tenths(18, 40) + ", weft: " + draw.tenths(18, 40) + "}", "{warp: 71 in 2 in, weft: 145 in 10 cm}");
        String name = !cloths.isEmpty() && draw.once(2) ? cloths.get(draw.whole(0, cloths.size() - 1)) : draw.words(3);
        text.append("cloth: {").append(draw.once(2) ? "name: " + name + ", " : "").append("kind: ").append(block ? "block"
                : draw.of("linen", "evenweave"));
        text.append(", count: ").append(count).append(block ? "" : ", over: " + over);
        text.append(draw.once(4) ? ", shrink: " + draw.of("2%", "{warp: 7.5%, weft: 4%}") + draw.of("", ", counted: before") : "");
        text.append(draw.once(4) ? ", warp: across" : "").append(draw.once(6) ? ", over-dyed: yes" : "").append(draw.once(8)
                ? ", cut: yes" : "").append("}\n");
        return over;
    }

    private void margins(StringBuilder text) {
        if (draw.once(3)) {
            text.append("margin: ").append(draw.length(300)).append('\n');
        } else if (draw.once(2)) {
            text.append("margin: {top: ").append(draw.length(300)).append(", right: ").append(draw.length(300)).append(", bottom: ")
                    .append(draw.length(60)).append(", left: ").append(draw.of("0 cm", draw.length(300))).append("}\n");
        }
    }

    private String thread(int number, long each, boolean shares, int over) {
        String code = draw.of("K", "K", "Sondergarn-2047-", "H") + number;
        titles.add(code);
        StringBuilder thread = new StringBuilder("{code: ").append(code);
        thread.append(draw.once(2) ? ", name: " + titled(4) : "");
        thread.append(draw.once(2) ? ", colour: \"#" + String.format("%06x", draw.whole(0, 0xffffff)) + "\"" : "");
        thread.append(draw.once(2) ? ", symbol: \"" + draw.of("●", "+", "▲", "ab", "♥") + "\"" : "");
        thread.append(draw.of("", ", skein: cotton", ", skein: silk", ", skein: hand-dyed"));
        thread.append(draw.once(2) ? ", strands: " + draw.whole(1, 6) : "");
        thread.append(draw.once(4) ? ", lot: \"" + draw.of("7 B", "2026-114", "12345678") + "\"" : "");
        boolean uncounted = draw.once(10);
        if (shares && draw.once(2)) {
            thread.append(", share: ").append(draw.whole(1, 5)).append('%');
        } else if (!uncounted && each > 0) {
            thread.append(", stitches: {").append(draw.of("cross: " + each, "cross: {count: " + each + ", worked: singly}", "half: " + each,
                    "cross: " + each + ", back: " + draw.log(1, 3000), "satin: {count: 96, span: 6}", "knot: 14, tent: 60",
                            "other: {count: 12, each: 3 cm}"));
            thread.append('}').append(over > 1 && draw.once(12) ? ", over: 1" : "");
        }
        return thread.append('}').toString();
    }

    private void progress(StringBuilder text, long squares) {
        switch (draw.whole(0, 5)) {
            case 0 -> text.append("progress: ").append(draw.whole(0, 100)).append("%\n");
            case 1 -> {
                text.append("progress: {started: 2025-02-14, log: [");
                int entries = draw.log(1, (int) Math.min(40, squares));
                int most = (int) Math.max(1, Math.min(900, squares / entries));
                for (int i = 0; i < entries; i++) {
                    text.append(i == 0 ? "" : ", ").append("{on: ").append(draw.day(2026, 2026)).append(", hours: ").append(draw.tenths(1,
                            6))
                            .append(", stitches: ").append(draw.whole(1, most)).append('}');
                }
                text.append("]}\n");
            }
            case 2 -> text.append(draw.once(4) ? "progress: {finished: 2026-11-07}\n" : "");
            default -> { }
        }
    }
}
