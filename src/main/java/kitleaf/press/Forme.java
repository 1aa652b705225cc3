package kitleaf.press;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.ArrayList;
import java.util.List;

/** One page's set type and outlines, locked up and ready to be bound: laid by one thread, and then taken by another. */
final class Forme {

    /** Content from a place on is in this face. */
    private record Turn(int place, Face face) { }

    /** An entry of the document's outline that leads to this page. */
    record Bookmark(String title, int level, double topPt) { }

    private final Plate plate;
    private final ContentBytes content;
    private final List<Turn> turns = new ArrayList<>();
    private final List<Bookmark> bookmarks = new ArrayList<>(1);
    private List<GlyphCodes.Spelled> fresh = List.of();

    /**
     * An empty page.
     *
     * @param expected bytes it will have, by guess
     */
    Forme(Plate plate, int expected) {
        this.plate = plate;
        this.content = new ContentBytes(expected);
    }

    Plate plate() {
        return plate;
    }

    ContentBytes content() {
        return content;
    }

    /** What follows is in this face. */
    void turnTo(Face face) {
        turns.add(new Turn(content.length(), face));
    }

    void add(Bookmark bookmark) {
        bookmarks.add(bookmark);
    }

    List<Bookmark> bookmarks() {
        return bookmarks;
    }

    /** Locks it up, with the characters that no page before had. */
    Forme lock(List<GlyphCodes.Spelled> characters) {
        fresh = characters;
        return this;
    }

    List<GlyphCodes.Spelled> fresh() {
        return fresh;
    }

    void drawOn(PdfContentByte canvas) {
        int from = 0;
        for (Turn turn : turns) {
            content.copyTo(canvas, from, turn.place());
            canvas.setFontAndSize(turn.face().font(), 1);
            from = turn.place();
        }
        content.copyTo(canvas, from, content.length());
    }
}
