package kitleaf.sheet.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.sheet.label.OpenFace.Part;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.FittedText;
import kitleaf.sheet.page.TextRuler;

/**
 * Faces of labels whose words have no room on the ordinary face: all lines as close as they may stand and as small as they may be,
 * before anything is left out. What goes first is the skeins and the needle, which the kit list has too, then the name and the
 * strands. The lot goes never: a wrong one costs a skein. Neither does the piece, though its title may be cut short for the lot's sake.
 */
final class TightLabelFace {

    private static final double STEP_PT = 0.25;

    private TightLabelFace() { }

    /** A face of a rectangular label; nothing where code, lot and piece have no line of their own. */
    static Optional<LabelFace> rectangle(LabelWords words, LabelFace.Side side, Box place, boolean turned, double smallPt,
            TextRuler ruler) {
        List<List<Part>> ways = ways(words, side);
        for (boolean parting : new boolean[] {false, true}) {
            Optional<LabelFace> set = set(new OpenFace.Rectangle(words, place, turned, ruler, parting), ways, smallPt);
            if (set.isPresent()) {
                return set;
            }
        }
        return cut(words, side, new OpenFace.Rectangle(words, place, turned, ruler, true));
    }

    /** A round face; nothing where not everything that has to stand on it has room. */
    static Optional<LabelFace> round(LabelWords words, Box place, TextRuler ruler) {
        List<List<Part>> ways = ways(words, LabelFace.Side.ALL);
        return set(new OpenFace.Round(words, place, ruler, false), ways, LabelFace.SMALL_PT)
                .or(() -> set(new OpenFace.Round(words, place, ruler, true), ways, LabelFace.SMALL_PT))
                .or(() -> cutRound(words, new OpenFace.Round(words, place, ruler, true)));
    }

    /** The code, the lot and a line for the piece, which the press cuts. */
    private static Optional<LabelFace> cutRound(LabelWords words, OpenFace.Round face) {
        return words.crowded().get().lots().stream().reduce((glued, loose) -> loose)
                .flatMap(lot -> face.set(List.of(new Part("lot", lot, 400), new Part("piece", "…", 600)), LabelFace.LEAST_PT,
                        LabelFace.LEAST_CODE_PT))
                .map(set -> new LabelFace(set.xMm(), set.yMm(), set.widthMm(), set.heightMm(), false, words.swatch(), set.swatchBox(),
                        set.texts().stream().map(text -> text.role().equals("piece") ? text.saying(words.piece()) : text).toList()));
    }

    private static Optional<LabelFace> set(OpenFace face, List<List<Part>> ways, double smallPt) {
        for (List<Part> parts : ways) {
            for (double sizePt = smallPt; sizePt >= LabelFace.LEAST_PT; sizePt -= STEP_PT) {
                if (face.set(parts, sizePt, LabelFace.LEAST_CODE_PT).isPresent()) {
                    return Optional.of(face.largestCode(parts, sizePt, LabelFace.LEAST_CODE_PT, face.ordinaryCodePt(), STEP_PT));
                }
            }
        }
        return Optional.empty();
    }

    /** What may stand on a side, from the fullest to the least. */
    private static List<List<Part>> ways(LabelWords words, LabelFace.Side side) {
        Part piece = new Part("piece", words.piece(), 600);
        List<Part> name = side == LabelFace.Side.BACK || words.name().isEmpty() ? List.of() : List.of(new Part("name", words.name(), 400));
        List<List<Part>> ways = new ArrayList<>();
        if (side == LabelFace.Side.FRONT) {
            add(ways, name, List.of(), piece);
            add(ways, List.of(), List.of(), piece);
            return ways;
        }
        LabelWords.Crowded crowded = words.crowded().get();
        List<List<List<Part>>> facts = crowded.facts().stream().map(told -> withLot(told, crowded.lots(), words.between())).toList();
        List<List<List<Part>>> some = facts.subList(0, facts.size() - 1);
        List<List<Part>> none = facts.get(facts.size() - 1);
        some.forEach(told -> told.forEach(way -> add(ways, name, way, piece)));
        if (!name.isEmpty()) {
            some.forEach(told -> told.forEach(way -> add(ways, List.of(), way, piece)));
            none.forEach(way -> add(ways, name, way, piece));
        }
        none.forEach(way -> add(ways, List.of(), way, piece));
        if (side == LabelFace.Side.BACK && words.lotKnown()) {
            // The front says the piece too.
            facts.forEach(told -> told.forEach(way -> add(ways, List.of(), way)));
        }
        return ways;
    }

    /** Ways to say these facts and the lot: all in one text, which may do with a line less, and the lot on lines of its own. */
    private static List<List<Part>> withLot(List<String> facts, List<String> lots, String between) {
        List<Part> alone = facts.isEmpty() ? List.of() : List.of(new Part("facts", String.join(between, facts), 400));
        if (lots.isEmpty()) {
            return List.of(alone);
        }
        List<List<Part>> ways = new ArrayList<>();
        if (!facts.isEmpty()) {
            ways.add(List.of(new Part("facts", String.join(between, facts) + between + lots.get(0), 400)));
        }
        for (String lot : lots) {
            List<Part> way = new ArrayList<>(alone);
            way.add(new Part("lot", lot, 400));
            ways.add(way);
        }
        return ways;
    }

    private static void add(List<List<Part>> ways, List<Part> name, List<Part> facts, Part... piece) {
        List<Part> parts = new ArrayList<>(name);
        parts.addAll(facts);
        parts.addAll(List.of(piece));
        ways.add(parts);
    }

    /** The code, the lot and the piece, with room for one line of the piece; the press cuts what has none, and says so. */
    private static Optional<LabelFace> cut(LabelWords words, LabelFace.Side side, OpenFace.Rectangle face) {
        Optional<LabelFace> bare = face.set(List.of(new Part("piece", "", 600)), LabelFace.LEAST_PT, LabelFace.LEAST_CODE_PT);
        if (bare.isEmpty()) {
            return bare;
        }
        FittedText code = bare.get().texts().get(0);
        Box place = face.place();
        double lineMm = LabelFace.lineMm(LabelFace.LEAST_PT);
        double topMm = LabelFace.PAD_MM + Math.max(face.swatchMm(), code.lines() * LabelFace.lineMm(LabelFace.LEAST_CODE_PT))
                + OpenFace.GAP_MM;
        double bottomMm = place.heightMm() - LabelFace.PAD_MM;
        int room = (int) Math.floor((bottomMm - topMm) / lineMm + 1e-6);
        double innerMm = place.widthMm() - 2 * LabelFace.PAD_MM;
        Optional<String> lot = side == LabelFace.Side.FRONT ? Optional.empty() : words.crowded().get().lots().stream()
                .reduce((glued, loose) -> loose);
        int lotLines = lot.isEmpty() ? 0 : Math.min(face.ruler().lines(lot.get(), "text", 400, LabelFace.LEAST_PT, innerMm), room - 1);
        if (room < 1 || lot.isPresent() && lotLines < 1) {
            return Optional.empty();
        }
        List<FittedText> texts = new ArrayList<>(List.of(code));
        if (lot.isPresent()) {
            texts.add(LabelFace.small("lot", lot.get(), LabelFace.PAD_MM, topMm, innerMm, lotLines, LabelFace.LEAST_PT, 400, "start"));
        }
        texts.add(LabelFace.small("piece", words.piece(), LabelFace.PAD_MM, bottomMm - (room - lotLines) * lineMm, innerMm,
                room - lotLines, LabelFace.LEAST_PT, 600, "start"));
        return Optional.of(new LabelFace(place.xMm(), place.yMm(), place.widthMm(), place.heightMm(), bare.get().turned(), words.swatch(),
                bare.get().swatchBox(), texts));
    }
}
