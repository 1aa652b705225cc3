package kitleaf.press.flow;

import java.util.ArrayList;
import java.util.List;

/**
 * Shares parts out among rooms, one after the other: none ends with what is kept with the next, nor the last with a line or two.
 *
 * @param firstMm how high the first room is
 * @param nextMm how high the others are
 */
record Rooms(double firstMm, double nextMm) {

    /**
     * A last room with less than this (six lines of large print) is saved by setting the ones before closer, or gets some of their
     * parts.
     */
    private static final double SPARSE_MM = 45;
    /** What a last room holds at least, if the one before can give it: three lines of large print. */
    private static final double LEAST_MM = 22;
    /** How much of the blank between parts stays at least, so that they still stand apart, and in which steps it goes. */
    private static final double CLOSEST = 0.6;
    private static final double STEP = 0.1;
    private static final int HALVINGS = 12;

    /** What stands in each room; at least one room. What is repeated is left out where nothing would have room below it. */
    List<List<FlowPart>> fill(List<FlowPart> parts) {
        List<List<FlowPart>> rooms = new ArrayList<>();
        List<FlowPart> room = new ArrayList<>();
        rooms.add(room);
        double leftMm = firstMm;
        for (int i = 0; i < parts.size(); i++) {
            FlowPart part = parts.get(i);
            if (!room.isEmpty() && (part.breaks() || together(parts, i) > leftMm + ColumnWidth.SLACK_MM)) {
                room = new ArrayList<>();
                rooms.add(room);
                leftMm = nextMm;
            }
            if (room.isEmpty() && part.repeated() != null) {
                boolean fits = part.repeated().heightMm() + together(parts, i) <= leftMm + ColumnWidth.SLACK_MM;
                part = fits ? part : part.under(null);
                leftMm -= fits ? part.repeated().heightMm() : 0;
            }
            room.add(part);
            leftMm -= part.heightMm();
        }
        return rooms;
    }

    /** The same, with a last room worth turning the page for. */
    List<List<FlowPart>> fillWell(List<FlowPart> parts) {
        List<List<FlowPart>> rooms = fill(parts);
        if (rooms.size() > 1 && heightMm(rooms.get(rooms.size() - 1)) < SPARSE_MM) {
            for (double by = 1 - STEP; by >= CLOSEST - STEP / 2; by -= STEP) {
                double closer = by;
                List<List<FlowPart>> tried = fill(parts.stream().map(it -> it.closer(closer)).toList());
                if (tried.size() < rooms.size()) {
                    return tried;
                }
            }
            fillLast(rooms);
        }
        return rooms;
    }

    /** The same, with all rooms as even as can be. */
    List<List<FlowPart>> even(List<FlowPart> parts) {
        List<List<FlowPart>> rooms = fill(parts);
        double less = 0;
        double most = Math.max(firstMm, nextMm);
        for (int i = 0; i < HALVINGS && rooms.size() > 1; i++) {
            double tried = (less + most) / 2;
            List<List<FlowPart>> lower = new Rooms(Math.min(firstMm, tried), Math.min(nextMm, tried)).fill(parts);
            if (lower.size() == rooms.size() && hold(lower)) {
                rooms = lower;
                most = tried;
            } else {
                less = tried;
            }
        }
        evenLast(rooms);
        return rooms;
    }

    private boolean hold(List<List<FlowPart>> rooms) {
        return heightMm(rooms.get(0)) <= firstMm && rooms.stream().skip(1).allMatch(room -> heightMm(room) <= nextMm);
    }

    /** What the last room is short of, as far as the one before it has more. */
    private void evenLast(List<List<FlowPart>> rooms) {
        List<FlowPart> last = rooms.get(rooms.size() - 1);
        List<FlowPart> before = rooms.get(Math.max(0, rooms.size() - 2));
        while (before.size() > 1 && !last.get(0).breaks() && !before.get(before.size() - 2).keep()) {
            double movedMm = heightMm(last) + before.get(before.size() - 1).heightMm();
            if (movedMm > Math.min(nextMm, heightMm(before) - before.get(before.size() - 1).heightMm()) + ColumnWidth.SLACK_MM) {
                return;
            }
            last.add(0, before.remove(before.size() - 1));
        }
    }

    /** The height of a part and of those it is kept with; half of what is blank below the last may hang over. */
    private static double together(List<FlowPart> parts, int from) {
        double sumMm = 0;
        int at = from;
        while (at + 1 < parts.size() && parts.get(at).keep() && !parts.get(at + 1).breaks()) {
            sumMm += parts.get(at++).heightMm();
        }
        return sumMm + parts.get(at).heightMm() - parts.get(at).afterMm() / 2;
    }

    private static void fillLast(List<List<FlowPart>> rooms) {
        List<FlowPart> before = rooms.get(rooms.size() - 2);
        List<FlowPart> last = rooms.get(rooms.size() - 1);
        double haveMm = heightMm(last);
        int from = before.size();
        while (from > 0 && !last.get(0).breaks() && (haveMm < LEAST_MM || before.get(from - 1).keep())) {
            from--;
            haveMm += before.get(from).heightMm();
        }
        if (from > 0 && from < before.size()) {
            List<FlowPart> moved = before.subList(from, before.size());
            last.addAll(0, moved);
            moved.clear();
        }
    }

    private static double heightMm(List<FlowPart> room) {
        return room.isEmpty() ? 0 : FlowPart.heightMm(room) - room.get(room.size() - 1).afterMm();
    }
}
