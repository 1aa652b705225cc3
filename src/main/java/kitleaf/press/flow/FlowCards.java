package kitleaf.press.flow;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import kitleaf.press.drawing.PageArtist;
import kitleaf.press.markup.Element;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.markup.Transform;
import kitleaf.press.type.Compositor;

/**
 * Equal cards on sheets. A card's front and back flow; what has no room on one goes on the next, each front with its back. A sheet is drawn
 * when it is full: fronts and backs on one page, or backs on a page of their own, behind their fronts.
 */
public final class FlowCards implements FlowTaker {

    /** Types are tried smaller in steps of so much of their size. */
    private static final double STEP = 1 / 32.0;

    /** The faces on one side of a card, as many as it takes, and what stands on further ones. */
    private record Side(List<Laid> faces, Laid further) {

        static final Side NONE = new Side(List.of(), Laid.NOTHING);

        /** What is one face stands on all cards; what is several has nothing to say after them. */
        Laid face(int index) {
            return index < faces.size() ? faces.get(index) : faces.size() == 1 ? faces.get(0) : further;
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

    public FlowCards(FlowReader.Node root, Compositor compositor, Printer printer) throws MarkupException {
        this.root = root;
        this.setter = new Setter(compositor, false);
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
            default -> put(node, sides(node));
        }
    }

    private void put(FlowReader.Node card, List<Side> sides) throws MarkupException, IOException {
        if (slots.isEmpty()) {
            throw root.element.fault("markup.no-slots");
        }
        int count = most(sides);
        for (int i = 0; i < count; i++) {
            sheet.add(new Placed(slots.get(skip + sheet.size()), card, sides.get(0).face(i), sides.get(1).face(i), i + 1, count));
            if (skip + sheet.size() == slots.size()) {
                printSheet();
            }
        }
    }

    private static int most(List<Side> sides) {
        return Math.max(sides.get(0).faces().size(), sides.get(1).faces().size());
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
            for (Placed card : placed) {
                if (card.number() == 1) {
                    artist.bookmark(card.card().element);
                }
                draw(artist, card, card.front(), "x", "y", "turned");
                if (!duplex) {
                    draw(artist, card, card.back(), "back-x", "back-y", "back-turned");
                }
            }
            for (Placed card : placed) {
                card.slot().drawing().at(0, 0, artist);
            }
            furnish(artist, "front", rows);
        });
        if (duplex) {
            printer.print(root.element, (x, y, artist) -> {
                for (Placed card : placed) {
                    draw(artist, card, card.back(), "back-x", "back-y", "back-turned");
                }
                furnish(artist, "back", rows);
            });
        }
    }

    /** Draws what a sheet has besides its cards: what belongs to this side, and to as many rows as there are cards on it. */
    private void furnish(PageArtist artist, String side, int rows) throws MarkupException {
        for (FlowReader.Node node : sheets) {
            if (node.element.text("side").orElse(side).equals(side) && node.element.count("rows", 1, 1000, rows) == rows) {
                node.drawing().at(0, 0, artist);
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

    /** Front and back at the largest size of type at which nothing is cut, parted or left over. */
    private List<Side> sides(FlowReader.Node card) {
        for (double scale = 1; scale > least; scale -= STEP) {
            List<Side> sides = sides(card, setter.scaled(scale), true);
            if (sides != null) {
                return sides;
            }
        }
        return sides(card, setter.scaled(least), false);
    }

    /** One card, if briefer words make it one; else several, which know that they are. */
    private List<Side> sides(FlowReader.Node card, Setter set, boolean whole) {
        List<Side> one = both(card, set.oneOf(false), whole);
        return one != null && most(one) <= 1 ? one : both(card, set.oneOf(true), whole);
    }

    private List<Side> both(FlowReader.Node card, Setter set, boolean whole) {
        List<Side> sides = new ArrayList<>();
        for (String name : List.of("front", "back")) {
            Side side = Side.NONE;
            for (FlowReader.Node face : card.parts) {
                side = face.is(name) ? side(face, set, whole) : side;
            }
            if (side == null) {
                return null;
            }
            sides.add(side);
        }
        return sides;
    }

    /** As few faces as can be, and of these the ones that say more. */
    private Side side(FlowReader.Node face, Setter set, boolean whole) {
        Side full = laid(face, set, whole);
        if (full != null && full.faces().size() == 1) {
            return full;
        }
        Side brief = laid(face, set.briefly(true), whole);
        return full == null || brief != null && brief.faces().size() < full.faces().size() ? brief : full;
    }

    private Side laid(FlowReader.Node face, Setter set, boolean whole) {
        double wideMm = widthMm - 2 * padMm;
        double highMm = heightMm - 2 * padMm;
        Laid first = head(face, 0, wideMm, set);
        Laid next = face.parts.size() > 1 ? head(face, face.parts.size() - 1, wideMm, set) : first;
        Rooms rooms = new Rooms(highMm - first.heightMm(), highMm - next.heightMm());
        double leastMm = Math.min(rooms.firstMm(), rooms.nextMm());
        List<FlowPart> parts = new ArrayList<>();
        for (Block block : face.blocks) {
            parts.addAll(FlowPart.of(block, wideMm, leastMm, set));
        }
        boolean fits = first.whole() && next.whole();
        for (FlowPart part : parts) {
            fits &= part.laid().whole() && part.laid().heightMm() <= leastMm + ColumnWidth.SLACK_MM;
        }
        if (whole && !fits) {
            return null;
        }
        List<Laid> faces = new ArrayList<>();
        for (List<FlowPart> room : rooms.even(parts)) {
            Laid head = faces.isEmpty() ? first : next;
            Laid.Group group = new Laid.Group(2);
            group.put(head, 0, 0);
            group.put(FlowPart.pile(room, wideMm, highMm - head.heightMm(), set), 0, head.heightMm());
            faces.add(group.laid());
        }
        return new Side(faces, next);
    }

    private static Laid head(FlowReader.Node face, int index, double widthMm, Setter set) {
        return face.parts.isEmpty() ? Laid.NOTHING : Stack.of(face.parts.get(index).blocks).lay(widthMm, Double.POSITIVE_INFINITY, set);
    }
}
