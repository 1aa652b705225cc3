package kitleaf.basket.yaml;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Source;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Says in plain words why a text is not YAML. The parser tells what it was doing and what it met; the
 * words here come from looking at her line as well, since the place of the slip is often not where the
 * parser stumbled.
 */
final class YamlFault {

    private static final Pattern NO_SPACE = Pattern.compile("^[\\s\\-{]*([\\p{L}][\\p{L}\\-]*):([^\\s:].*)$");
    private static final Pattern BARE_COLOUR = Pattern.compile(":\\s+(#[0-9a-fA-F]{3,6})\\b");
    private static final Pattern INCH_QUOTE = Pattern.compile("^\"\\s*([0-9][0-9 ./½¼¾]*)");

    private final Source source;

    YamlFault(Source source) {
        this.source = source;
    }

    Problem problem(JacksonException e) {
        if (e.getCause() instanceof MarkedYAMLException yaml && yaml.getProblemMark() != null) {
            return marked(yaml);
        }
        JsonLocation at = e.getLocation();
        int line = at == null ? 1 : Math.max(1, at.getLineNr());
        int column = at == null ? 1 : Math.max(1, at.getColumnNr());
        return unclear(line, column);
    }

    private Problem marked(MarkedYAMLException yaml) {
        String doing = yaml.getContext() == null ? "" : yaml.getContext();
        String met = yaml.getProblem() == null ? "" : yaml.getProblem();
        Mark at = yaml.getProblemMark();
        Mark from = yaml.getContextMark() == null ? at : yaml.getContextMark();
        if (met.contains("cannot start any token")) {
            return wrongStart(at);
        }
        if (doing.contains("quoted scalar")) {
            return met.contains("escape") ? badEscape(at) : openQuote(from);
        }
        if (met.startsWith("mapping values are not allowed")) {
            return strayColon(at);
        }
        if (met.contains("could not find expected ':'")) {
            return noSpace(from.getLine() + 1)
                    .orElseGet(() -> here(from, "yaml.no-colon"));
        }
        if (doing.startsWith("while parsing a flow")) {
            Optional<Problem> colour = bareColour(from, at);
            if (colour.isPresent()) {
                return colour.get();
            }
            if (met.startsWith("expected ',' or")) {
                return openBracket(from, at);
            }
            Optional<Mark> open = OpenBrackets.before(at, source.text());
            if (open.isPresent() && (met.contains("<stream end>") || met.contains("'-'") && open.get().getLine() < at.getLine())) {
                return neverClosed(open.get());
            }
        }
        if (met.startsWith("expected <block end>")) {
            return brokenBlock(met, at);
        }
        if (met.startsWith("expected the node content")) {
            return here(at, "yaml.no-value");
        }
        if (met.startsWith("sequence entries are not allowed")) {
            return here(at, "yaml.list");
        }
        if (met.contains("<document start>")) {
            return here(at, "yaml.after-end");
        }
        return unclear(at.getLine() + 1, at.getColumn() + 1);
    }

    private Problem wrongStart(Mark at) {
        String line = line(at.getLine() + 1);
        int column = Math.min(at.getColumn(), line.codePointCount(0, line.length()));
        int index = line.offsetByCodePoints(0, column);
        if (index < line.length() && line.charAt(index) == '\t') {
            return line.substring(0, index).isBlank()
                    ? here(at, "yaml.tab-indent")
                    : here(at, "yaml.tab");
        }
        String sign = index < line.length() ? new String(Character.toChars(line.codePointAt(index))) : "";
        return here(at, "yaml.start", sign);
    }

    private Problem badEscape(Mark at) {
        return here(at, "yaml.escape");
    }

    private Problem openQuote(Mark from) {
        String line = line(from.getLine() + 1);
        String rest = line.substring(Math.min(line.length(), line.offsetByCodePoints(0,
                Math.min(from.getColumn(), line.codePointCount(0, line.length())))));
        Matcher inch = INCH_QUOTE.matcher(rest);
        if (inch.find()) {
            String number = inch.group(1).strip();
            return here(from, "yaml.inch", number);
        }
        return here(from, "yaml.quote");
    }

    private Problem strayColon(Mark at) {
        int number = at.getLine() + 1;
        String line = line(number);
        String before = line.substring(0, line.offsetByCodePoints(0, Math.min(at.getColumn(), line.codePointCount(0, line.length()))));
        Optional<Problem> noSpaceHere = noSpace(number);
        if (noSpaceHere.isPresent()) {
            return noSpaceHere.get();
        }
        if (before.contains(": ")) {
            return here(at, "yaml.second-colon");
        }
        for (int above = number - 1; above >= 1; above--) {
            if (!line(above).isBlank() && !line(above).strip().startsWith("#")) {
                Optional<Problem> noSpace = noSpace(above);
                if (noSpace.isPresent()) {
                    return noSpace.get();
                }
                break;
            }
        }
        int indent = line.length() - line.stripLeading().length();
        return at(number, indent + 1, before.strip().length(), Fault.of("yaml.too-deep"));
    }

    /** The slip {@code key:value}, if the line begins with it. */
    private Optional<Problem> noSpace(int number) {
        Matcher slip = NO_SPACE.matcher(line(number));
        if (!slip.matches()) {
            return Optional.empty();
        }
        String key = slip.group(1);
        int column = line(number).codePointCount(0, slip.end(1)) + 1;
        if (FalseBlank.begins(slip.group(2))) {
            return Optional.of(at(number, column + 1, 1, Fault.of("yaml.false-blank")));
        }
        return Optional.of(at(number, column, 1, Fault.of("yaml.no-space", key, Quote.bare(slip.group(2)))));
    }

    /** The slip {@code colour: #6b7f8c} inside braces, whose end the remark swallows; the parser stumbles a line later. */
    private Optional<Problem> bareColour(Mark from, Mark at) {
        int first = from.getLine() + 1;
        while (first > 1 && (line(first).isBlank() || line(first).strip().startsWith("#"))) {
            first--;
        }
        for (int number = Math.max(1, Math.min(first, at.getLine())); number <= Math.min(at.getLine() + 1, source.lineCount()); number++) {
            Matcher colour = BARE_COLOUR.matcher(line(number));
            if (colour.find()) {
                return Optional.of(at(number, line(number).codePointCount(0, colour.start(1)) + 1, colour.group(1).length(),
                        Fault.of("yaml.remark", colour.group(1))));
            }
        }
        return Optional.empty();
    }

    private Problem openBracket(Mark from, Mark at) {
        return from.getLine() == at.getLine() ? here(at, "yaml.no-comma", closing(from)) : neverClosed(from);
    }

    private Problem neverClosed(Mark open) {
        String closing = closing(open);
        return here(open, "yaml.bracket", closing.equals("}") ? "{" : "[", closing);
    }

    private String closing(Mark open) {
        String line = line(open.getLine() + 1);
        return line.codePointAt(line.offsetByCodePoints(0, open.getColumn())) == '{' ? "}" : "]";
    }

    private Problem brokenBlock(String met, Mark at) {
        if (met.endsWith("']'") || met.endsWith("'}'")) {
            return here(at, "yaml.stray-bracket");
        }
        if (line(at.getLine() + 1).substring(0, Math.min(at.getColumn(), line(at.getLine() + 1).length())).isBlank()) {
            return here(at, "yaml.out-of-line");
        }
        return here(at, "yaml.after-value");
    }

    private Problem unclear(int line, int column) {
        return at(line, column, 1, Fault.of("yaml.unclear"));
    }

    private Problem here(Mark mark, String fault, Object... slots) {
        return at(mark.getLine() + 1, mark.getColumn() + 1, 1, Fault.of(fault, slots));
    }

    private Problem at(int line, int column, int length, Fault fault) {
        return new Place(source, line, column, Math.max(1, length)).problem(fault);
    }

    private String line(int number) {
        return source.line(number).orElse("");
    }
}
