package kitleaf.press.markup;

import java.util.Set;

/** Reads SVG's transform lists: translate, rotate (with a centre), scale and matrix. */
final class TransformSyntax {

    private static final Set<String> NAMES = Set.of("translate", "rotate", "scale", "matrix");

    /** A matrix has six numbers. */
    private static final int MOST = 6;

    private TransformSyntax() {
    }

    static Transform read(String text) throws BadValue {
        NumberScanner scanner = new NumberScanner(text);
        Transform all = Transform.NONE;
        while (!scanner.atEnd()) {
            all = all.with(one(scanner, text));
            scanner.skipSeparator();
        }
        return all;
    }

    private static Transform one(NumberScanner scanner, String text) throws BadValue {
        String word = scanner.before('(').strip();
        if (!NAMES.contains(word)) {
            throw new BadValue(Hint.of("transform.unknown", "transform.unknown.near", word, NAMES, ""));
        }
        double[] n = new double[MOST];
        int count = numbers(scanner, text, n);
        if (word.equals("translate") && (count == 1 || count == 2)) {
            return Transform.translate(n[0], count == 2 ? n[1] : 0);
        }
        if (word.equals("scale") && (count == 1 || count == 2)) {
            return Transform.scale(n[0], n[count - 1]);
        }
        if (word.equals("rotate") && count == 1) {
            return Transform.rotate(n[0]);
        }
        if (word.equals("rotate") && count == 3) {
            return Transform.translate(n[1], n[2]).with(Transform.rotate(n[0]))
                    .with(Transform.translate(-n[1], -n[2]));
        }
        if (word.equals("matrix") && count == 6) {
            return new Transform(n[0], n[1], n[2], n[3], n[4], n[5]);
        }
        throw new BadValue(count == 1 ? "transform.takes.one" : "transform.takes.many", word, count);
    }

    /** Reads the numbers in brackets, and says how many there are; those after the most any transform takes are only counted. */
    private static int numbers(NumberScanner scanner, String text, double[] numbers) throws BadValue {
        if (scanner.atEnd()) {
            throw new BadValue("transform.lacks", text, "(");
        }
        scanner.take();
        int count = 0;
        while (!scanner.atEnd() && scanner.peek() != ')') {
            if (!scanner.atNumber()) {
                throw new BadValue("transform.number", text, String.valueOf(scanner.peek()));
            }
            double number = scanner.number();
            if (count < MOST) {
                numbers[count] = number;
            }
            count++;
            scanner.skipSeparator();
        }
        if (scanner.atEnd()) {
            throw new BadValue("transform.lacks", text, ")");
        }
        scanner.take();
        return count;
    }
}
