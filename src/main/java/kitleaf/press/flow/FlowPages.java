package kitleaf.press.flow;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import kitleaf.press.markup.Element;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.type.Compositor;

/** Pages that blocks flow down, each drawn when it is full and what comes on the next two is known. */
public final class FlowPages implements FlowTaker {

    /** So many pages wait for what comes, since the last may want some of what stands on the one before. */
    private static final int WAITING = 3;

    private final FlowReader.Node root;
    private final Setter setter;
    private final Printer printer;
    private final List<Laid> heads = new ArrayList<>();
    private Laid foot = Laid.NOTHING;
    private final double leftMm;
    private final double topMm;
    private final double widthMm;
    private final double heightMm;
    private final List<FlowPart> parts = new ArrayList<>();
    private double waitingMm;
    private int printed;

    public FlowPages(FlowReader.Node root, Compositor compositor, Printer printer) throws MarkupException {
        this.root = root;
        this.setter = new Setter(compositor, true);
        this.printer = printer;
        Element page = root.element;
        leftMm = page.number("left");
        topMm = page.number("top");
        widthMm = page.neededLength("width") - leftMm - page.number("right");
        heightMm = page.neededLength("height") - topMm - page.number("bottom");
    }

    @Override
    public void take(FlowReader.Node node) throws MarkupException, IOException {
        if (node.is("head")) {
            heads.add(Stack.of(node.blocks).lay(widthMm, heightMm, setter));
        } else if (node.is("foot")) {
            foot = Stack.of(node.blocks).lay(widthMm, heightMm, setter);
        } else {
            // A page has no end for what may go on over the next, but where one of several ways is to fit on a page.
            double roomMm = node.is("either") && node.element.word("height", "rest", "page") == 1
                    ? Math.min(rooms().firstMm(), rooms().nextMm()) : Double.POSITIVE_INFINITY;
            for (FlowPart part : FlowPart.of(node.block(), widthMm, roomMm, setter)) {
                parts.add(part);
                waitingMm += part.heightMm();
            }
            if (waitingMm > (WAITING + 1) * heightMm) {
                print(rooms().fill(parts), WAITING);
            }
        }
    }

    private Laid head(boolean first) {
        return heads.isEmpty() ? Laid.NOTHING : first ? heads.get(0) : heads.get(heads.size() - 1);
    }

    private Rooms rooms() {
        double allMm = heightMm - foot.heightMm();
        return new Rooms(allMm - head(printed == 0).heightMm(), allMm - head(false).heightMm());
    }

    @Override
    public void end() throws MarkupException, IOException {
        print(rooms().fillWell(parts), 0);
    }

    private void print(List<List<FlowPart>> rooms, int waiting) throws MarkupException, IOException {
        for (List<FlowPart> room : rooms.subList(0, Math.max(0, rooms.size() - waiting))) {
            boolean first = printed++ == 0;
            Laid head = head(first);
            Laid pile = FlowPart.pile(room, widthMm, heightMm - foot.heightMm() - head.heightMm(), setter);
            double restMm = heightMm - foot.heightMm();
            printer.print(root.element, (x, y, artist) -> {
                if (first) {
                    artist.bookmark(root.element);
                }
                head.drawing().at(leftMm, topMm, artist);
                pile.drawing().at(leftMm, topMm + head.heightMm(), artist);
                foot.drawing().at(leftMm, topMm + restMm, artist);
            });
            parts.subList(0, room.size()).clear();
        }
        waitingMm = FlowPart.heightMm(parts);
    }
}
