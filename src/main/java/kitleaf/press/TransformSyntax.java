package kitleaf.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Reads SVG's transform lists: translate, rotate (with a centre), scale and matrix. */
final class TransformSyntax {

    private static final Set<String> NAMES = Set.of("translate", "rotate", "scale", "matrix");

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
        StringBuilder name = new StringBuilder();
        while (!scanner.atEnd() && scanner.peek() != '(') {
            name.append(scanner.take());
        }
        String word = name.toString().strip();
        if (!NAMES.contains(word)) {
            throw new BadValue(Hint.of("transform.unknown", "transform.unknown.near", word, NAMES, ""));
        }
        List<Double> n = numbers(scanner, text);
        int count = n.size();
        if (word.equals("translate") && (count == 1 || count == 2)) {
            return Transform.translate(n.get(0), count == 2 ? n.get(1) : 0);
        }
        if (word.equals("scale") && (count == 1 || count == 2)) {
            return Transform.scale(n.get(0), n.get(count - 1));
        }
        if (word.equals("rotate") && count == 1) {
            return Transform.rotate(n.get(0));
        }
        if (word.equals("rotate") && count == 3) {
            return Transform.translate(n.get(1), n.get(2)).with(Transform.rotate(n.get(0)))
                    .with(Transform.translate(-n.get(1), -n.get(2)));
        }
        if (word.equals("matrix") && count == 6) {
            return new Transform(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
        }
        throw new BadValue(count == 1 ? "transform.takes.one" : "transform.takes.many", word, count);
    }

    private static List<Double> numbers(NumberScanner scanner, String text) throws BadValue {
        if (scanner.atEnd()) {
            throw new BadValue("transform.lacks", text, "(");
        }
        scanner.take();
        List<Double> numbers = new ArrayList<>();
        while (!scanner.atEnd() && scanner.peek() != ')') {
            if (!scanner.atNumber()) {
                throw new BadValue("transform.number", text, String.valueOf(scanner.peek()));
            }
            numbers.add(scanner.number());
            scanner.skipSeparator();
        }
        if (scanner.atEnd()) {
            throw new BadValue("transform.lacks", text, ")");
        }
        scanner.take();
        return numbers;
    }
}
