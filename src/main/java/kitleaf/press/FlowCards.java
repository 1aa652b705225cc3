package kitleaf.press;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Equal cards on sheets. A card's front and back flow; what has no room on one goes on the next, each front with its back. A sheet is drawn
 * when it is full: fronts and backs on one page, or backs on a page of their own, behind their fronts.
 */
final class FlowCards implements FlowTaker {

    /** Types are tried smaller in steps of so much of their size. */
    private static final double STEP = 1 / 32.0;

    /** A card's faces, as many of each as it takes. */
    private record Faces(FlowReader.Node card, List<Laid> fronts, List<Laid> backs) {

        int number() {
            return Math.max(fronts.size(), backs.size());
        }
    }

    /** One card in its place on a sheet. */
    private record Placed(FlowReader.Node slot, FlowReader.Node card, Laid front, Laid back, int number, int count) { }

    private final FlowReader.Node root;
    private final Setter setter;
    private final Printer printer;
    private final List<FlowReader.Node> slots = new ArrayList<>();
    private final List<FlowReader.Node> sheets = new ArrayList<>();
    private final List<Placed> sheet = new ArrayList<>();
    private final boolean duplex;
    private final int columns;
    private final double least;
    private final double padMm;
    private final double widthMm;
    private final double heightMm;
    private int skip;

    FlowCards(FlowReader.Node root, Compositor compositor, Printer printer) throws MarkupException {
        this.root = root;
        this.setter = new Setter(compositor, 1, false, false);
        this.printer = printer;
        Element cards = root.element;
        duplex = cards.word("backs", "behind") == 0;
        columns = cards.count("columns", 1, 1000, 1);
        skip = cards.count("skip", 0, 100_000, 0);
        least = cards.has("shrink") ? cards.neededLength("shrink") : 1;
        padMm = cards.number("padding");
        widthMm = cards.neededLength("card-width");
        heightMm = cards.neededLength("card-height");
    }

    @Override
    public void take(FlowReader.Node node) throws MarkupException, IOException {
        switch (node.element.name()) {
            case "slot" -> slots.add(node);
            case "sheet" -> sheets.add(node);
            default -> put(faces(node));
        }
    }

    private void put(Faces faces) throws MarkupException, IOException {
        if (slots.isEmpty()) {
            throw root.element.fault("markup.no-slots");
        }
        for (int i = 0; i < faces.number(); i++) {
            Laid front = face(faces.fronts(), i);
            Laid back = face(faces.backs(), i);
            sheet.add(new Placed(slots.get(skip + sheet.size()), faces.card(), front, back, i + 1, faces.number()));
            if (skip + sheet.size() == slots.size()) {
                printSheet();
            }
        }
    }

    private static Laid face(List<Laid> faces, int index) {
        return faces.isEmpty() ? Laid.NOTHING : faces.get(Math.min(index, faces.size() - 1));
    }

    @Override
    public void end() throws MarkupException, IOException {
        if (!sheet.isEmpty()) {
            printSheet();
        }
    }

    private void printSheet() throws MarkupException, IOException {
        List<Placed> placed = List.copyOf(sheet);
        int rows = (skip + placed.size() + columns - 1) / columns;
        sheet.clear();
        skip = 0;
        printer.print(root.element, (x, y, artist) -> {
            furnish(artist, "front", rows);
            for (Placed card : placed) {
                if (card.number() == 1) {
                    artist.bookmark(card.card().element);
                }
                draw(artist, card, card.front(), "x", "y", "turned");
                if (!duplex) {
                    draw(artist, card, card.back(), "back-x", "back-y", "back-turned");
                }
            }
        });
        if (duplex) {
            printer.print(root.element, (x, y, artist) -> {
                furnish(artist, "back", rows);
                for (Placed card : placed) {
                    draw(artist, card, card.back(), "back-x", "back-y", "back-turned");
                }
            });
        }
    }

    /** Draws what a sheet has besides its cards: what belongs to this side, and to as many rows as there are cards on it. */
    private void furnish(PageArtist artist, String side, int rows) throws MarkupException {
        for (FlowReader.Node node : sheets) {
            if (node.element.text("side").orElse(side).equals(side) && node.element.count("rows", 1, 1000, rows) == rows) {
                node.drawing().replay(artist, 0, 0);
            }
        }
    }

    private void draw(PageArtist artist, Placed card, Laid face, String xName, String yName, String turnedName) throws MarkupException {
        Element slot = card.slot().element;
        double x = slot.number(xName);
        double y = slot.number(yName);
        boolean turned = slot.word(turnedName, "over") == 0;
        artist.card(card.number(), card.count());
        artist.enter(root.style, turned ? new Transform(-1, 0, 0, -1, x + widthMm, y + heightMm) : Transform.translate(x, y));
        face.drawing().at(padMm, padMm, artist);
        artist.leave();
    }

    /** Both faces at the largest size of type at which nothing is cut, parted or left over. */
    private Faces faces(FlowReader.Node card) {
        for (double scale = 1; scale > least; scale -= STEP) {
            Faces faces = faces(card, setter.scaled(scale), true);
            if (faces != null) {
                return faces;
            }
        }
        return faces(card, setter.scaled(least), false);
    }

    private Faces faces(FlowReader.Node card, Setter set, boolean whole) {
        List<List<Laid>> sides = new ArrayList<>();
        for (String name : List.of("front", "back")) {
            List<Laid> side = List.of();
            for (FlowReader.Node face : card.faces) {
                if (face.is(name)) {
                    side = side(face, set, whole);
                    if (side == null) {
                        return null;
                    }
                }
            }
            sides.add(side);
        }
        return new Faces(card, sides.get(0), sides.get(1));
    }

    /** The faces a side takes: one, if briefer words make it one; else as few as can be, and of these the one that says more. */
    private List<Laid> side(FlowReader.Node face, Setter set, boolean whole) {
        List<Laid> best = side(face, set.oneOf(false), whole, 1);
        best = best != null ? best : side(face, set.oneOf(false).briefly(true), whole, 1);
        if (best != null) {
            return best;
        }
        List<Laid> full = side(face, set.oneOf(true), whole, Integer.MAX_VALUE);
        List<Laid> brief = side(face, set.oneOf(true).briefly(true), whole, Integer.MAX_VALUE);
        return full == null || brief != null && brief.size() < full.size() ? brief : full;
    }

    private List<Laid> side(FlowReader.Node face, Setter set, boolean whole, int most) {
        double wideMm = widthMm - 2 * padMm;
        double highMm = heightMm - 2 * padMm;
        Laid first = head(face, 0, wideMm, set);
        Laid next = head(face, face.heads.size() - 1, wideMm, set);
        Rooms rooms = new Rooms(highMm - first.heightMm(), highMm - next.heightMm());
        double leastMm = Math.min(rooms.firstMm(), rooms.nextMm());
        List<FlowPart> parts = new ArrayList<>();
        face.blocks.forEach(block -> parts.addAll(FlowPart.of(block, wideMm, leastMm, set)));
        if (whole && parts.stream().anyMatch(part -> !part.laid().whole() || part.laid().heightMm() > leastMm + ColumnWidth.SLACK_MM)) {
            return null;
        }
        List<List<FlowPart>> shared = rooms.even(parts);
        if (shared.size() > most) {
            return null;
        }
        List<Laid> sides = new ArrayList<>();
        for (List<FlowPart> room : shared) {
            Laid head = sides.isEmpty() ? first : next;
            Laid.Group group = new Laid.Group(2);
            group.put(head, 0, 0);
            group.put(FlowPart.pile(room, wideMm, highMm - head.heightMm(), set), 0, head.heightMm());
            sides.add(group.laid());
        }
        return sides;
    }

    private static Laid head(FlowReader.Node face, int index, double widthMm, Setter set) {
        return face.heads.isEmpty() ? Laid.NOTHING : Stack.of(face.heads.get(index).blocks).lay(widthMm, Double.POSITIVE_INFINITY, set);
    }
}
