package kitleaf.press.drawing;

/** The text of a code as it is encoded: its lines kept, the markup's indentation taken away. */
final class QrText {

    private QrText() {
    }

    /**
     * Removes XML's white space (and no other) at both ends and before each line. Line ends become
     * line feeds, as an XML reader makes them, so that a text counts the same inside markup and out.
     */
    static String of(String written) {
        StringBuilder text = new StringBuilder();
        boolean lineBegun = false;
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            if (c == '\n' || c == '\r') {
                if (!(c == '\n' && i > 0 && written.charAt(i - 1) == '\r') && text.length() > 0) {
                    text.append('\n');
                }
                lineBegun = false;
            } else if (lineBegun || c != ' ' && c != '\t') {
                text.append(c);
                lineBegun = true;
            }
        }
        int end = text.length();
        while (end > 0 && " \t\n".indexOf(text.charAt(end - 1)) >= 0) {
            end--;
        }
        return text.substring(0, end);
    }
}
