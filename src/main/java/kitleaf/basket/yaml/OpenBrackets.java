package kitleaf.basket.yaml;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.scanner.ScannerImpl;
import org.yaml.snakeyaml.tokens.Token;

/** Finds the { or [ that is open where the parser stumbled; brackets in quotes and remarks are none. */
final class OpenBrackets {

    private OpenBrackets() { }

    /** The last one opened before that place and not closed again; nothing if all are closed. */
    static Optional<Mark> before(Mark place, String text) {
        Deque<Mark> open = new ArrayDeque<>();
        try {
            ScannerImpl scanner = new ScannerImpl(new StreamReader(text), new LoaderOptions());
            while (scanner.checkToken()) {
                Token token = scanner.getToken();
                if (token.getStartMark().getIndex() >= place.getIndex()) {
                    break;
                }
                switch (token.getTokenId()) {
                    case FlowMappingStart, FlowSequenceStart -> open.push(token.getStartMark());
                    case FlowMappingEnd, FlowSequenceEnd -> open.poll();
                    default -> { }
                }
            }
        } catch (YAMLException stumbled) {
            // What was open until here is what is asked for.
        }
        return Optional.ofNullable(open.peek());
    }
}
