package kitleaf.press.drawing;

import kitleaf.press.markup.BadValue;
import kitleaf.press.markup.NumberScanner;

/**
 * Draws SVG path data (SVG 1.1, 8.3): M L H V C Q Z, in upper case from the origin and in lower case
 * from the point reached.
 */
final class PathSyntax {

    private static final String COMMANDS = "MLHVCQZ";

    private final NumberScanner scanner;
    private final Track track;
    private double x;
    private double y;
    private double startX;
    private double startY;
    private boolean closed;

    private PathSyntax(String data, Track track) {
        this.scanner = new NumberScanner(data);
        this.track = track;
    }

    static void trace(String data, Track track) throws BadValue {
        PathSyntax syntax = new PathSyntax(data, track);
        boolean first = true;
        while (!syntax.scanner.atEnd()) {
            syntax.command(first);
            first = false;
        }
    }

    private void command(boolean first) throws BadValue {
        char letter = scanner.take();
        char kind = letter >= 'a' && letter <= 'z' ? (char) (letter - 'a' + 'A') : letter;
        if (COMMANDS.indexOf(kind) < 0) {
            throw new BadValue("path.command", String.valueOf(letter), scanner.position());
        }
        if (first && kind != 'M') {
            throw new BadValue("path.begins", String.valueOf(letter));
        }
        if (kind == 'Z') {
            close();
            return;
        }
        boolean relative = letter != kind;
        do {
            segment(kind, letter, relative);
            // Further pairs after a move are lines.
            kind = kind == 'M' ? 'L' : kind;
            scanner.skipSeparator();
        } while (scanner.atNumber());
    }

    private void segment(char kind, char letter, boolean relative) throws BadValue {
        double fromX = relative ? x : 0;
        double fromY = relative ? y : 0;
        switch (kind) {
            case 'M' -> move(fromX + next(letter), fromY + next(letter));
            case 'L' -> line(fromX + next(letter), fromY + next(letter));
            case 'H' -> line(fromX + next(letter), y);
            case 'V' -> line(x, fromY + next(letter));
            case 'C' -> curve(fromX + next(letter), fromY + next(letter), fromX + next(letter),
                    fromY + next(letter), fromX + next(letter), fromY + next(letter));
            default -> quadratic(fromX + next(letter), fromY + next(letter), fromX + next(letter),
                    fromY + next(letter));
        }
    }

    private double next(char letter) throws BadValue {
        scanner.skipSeparator();
        if (!scanner.atNumber()) {
            throw new BadValue("path.missing", String.valueOf(letter), scanner.position() + 1);
        }
        return scanner.number();
    }

    private void move(double toX, double toY) {
        closed = false;
        x = toX;
        y = toY;
        startX = toX;
        startY = toY;
        track.move(x, y);
    }

    private void line(double toX, double toY) {
        reopen();
        x = toX;
        y = toY;
        track.line(x, y);
    }

    private void curve(double x1, double y1, double x2, double y2, double toX, double toY) {
        reopen();
        x = toX;
        y = toY;
        track.curve(x1, y1, x2, y2, x, y);
    }

    /** A parabola is the cubic whose control points lie two thirds of the way to its own. */
    private void quadratic(double cx, double cy, double toX, double toY) {
        curve(x + (cx - x) * 2 / 3, y + (cy - y) * 2 / 3, toX + (cx - toX) * 2 / 3, toY + (cy - toY) * 2 / 3,
                toX, toY);
    }

    private void close() {
        reopen();
        track.close();
        x = startX;
        y = startY;
        closed = true;
    }

    /** After Z, whatever is not a move starts a new part where the closed one began. */
    private void reopen() {
        if (closed) {
            track.move(x, y);
            closed = false;
        }
    }
}
