package kitleaf.basket.place;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Makes a file name of a title: small letters and digits of any script with hyphens between, so that it can be
 * typed, is never a path, hides nowhere and is taken by every file system.
 */
public final class PieceFileName {

    /** What is left of a title without letters. */
    public static final String NAMELESS = "piece";

    private static final int MOST_CHARACTERS = 60;
    /** File systems take 255 bytes with the ending and what a draft adds. */
    private static final int MOST_BYTES = 200;

    /** Letters that do not fall apart into one of a to z and a mark. */
    private static final Map<Integer, String> PLAIN = Map.of((int) 'ß', "ss", (int) 'æ', "ae", (int) 'œ', "oe", (int) 'ø', "o",
            (int) 'ł', "l", (int) 'đ', "d", (int) 'ð', "d", (int) 'þ', "th", (int) 'ı', "i");

    /** Names that mean a device to Windows, whatever ending they have. */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
            "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private PieceFileName() { }

    /** The file name for a title, without its ending. */
    public static String of(String title) {
        StringBuilder name = new StringBuilder();
        boolean latin = false;
        // A fraction falls apart into figures; the space keeps 12½ from becoming 121-2.
        String low = title.toLowerCase(Locale.ROOT).replaceAll("\\p{No}", " $0");
        for (int c : Normalizer.normalize(low, Normalizer.Form.NFKD).codePoints().toArray()) {
            boolean mark = Character.getType(c) == Character.NON_SPACING_MARK || Character.getType(c) == Character.COMBINING_SPACING_MARK;
            if (mark) {
                // An accent goes from a Latin letter; elsewhere a mark is part of the letter.
                name.append(latin || name.length() == 0 ? "" : Character.toString(c));
            } else if (Character.isLetterOrDigit(c)) {
                latin = Character.UnicodeScript.of(c) == Character.UnicodeScript.LATIN;
                name.append(PLAIN.getOrDefault(c, Character.toString(c)));
            } else if (c != '\'' && c != '’' && name.length() > 0 && name.charAt(name.length() - 1) != '-') {
                name.append('-');
                latin = true;
            }
        }
        String whole = trim(cut(Normalizer.normalize(name, Normalizer.Form.NFC)));
        return whole.isEmpty() ? NAMELESS : DEVICES.contains(whole) ? whole + "-piece" : whole;
    }

    private static String cut(String name) {
        int end = name.length();
        while (name.codePointCount(0, end) > MOST_CHARACTERS || name.substring(0, end).getBytes(StandardCharsets.UTF_8)
                .length > MOST_BYTES) {
            end = name.offsetByCodePoints(end, -1);
        }
        return name.substring(0, end);
    }

    private static String trim(String name) {
        return name.endsWith("-") ? name.substring(0, name.length() - 1) : name;
    }
}
