package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.junit.jupiter.api.Test;

/** The outline's links and counts, as ISO 32000-1, 12.3.3, has them, read with PDFBox. */
class OutlineTests {

    /** A title and the titles of what it stands below, outermost first. */
    private static void place(List<String> places, Deque<Integer> levels, Deque<String> titles, int level, String title) {
        while (!levels.isEmpty() && levels.peek() >= level) {
            levels.pop();
            titles.pop();
        }
        levels.push(level);
        titles.push(title);
        List<String> path = new ArrayList<>(titles);
        Collections.reverse(path);
        places.add(String.join("/", path));
    }

    private static void forwards(PDOutlineNode node, String above, List<String> places) {
        for (PDOutlineItem item = node.getFirstChild(); item != null; item = item.getNextSibling()) {
            places.add(above + item.getTitle());
            forwards(item, above + item.getTitle() + "/", places);
        }
    }

    /** The last first, each after what is below it. */
    private static void backwards(PDOutlineNode node, String above, List<String> places) {
        for (PDOutlineItem item = node.getLastChild(); item != null; item = item.getPreviousSibling()) {
            backwards(item, above + item.getTitle() + "/", places);
            places.add(above + item.getTitle());
        }
    }

    private static int countOpen(PDOutlineNode node) {
        int below = 0;
        for (PDOutlineItem item = node.getFirstChild(); item != null; item = item.getNextSibling()) {
            below += 1 + countOpen(item);
        }
        assertEquals(below, node.getOpenCount());
        return below;
    }

    @Test
    void everyEntryIsFoundFromBothEndsAndLeadsToItsPage() throws Exception {
        Random random = new Random(12);
        for (int run = 0; run < 60; run++) {
            StringBuilder markup = new StringBuilder("<document>");
            List<String> places = new ArrayList<>();
            List<Integer> pages = new ArrayList<>();
            Deque<Integer> levels = new ArrayDeque<>();
            Deque<String> titles = new ArrayDeque<>();
            int number = 1 + random.nextInt(12);
            for (int page = 0; page < number; page++) {
                markup.append("<page width=\"90\" height=\"90\">");
                for (int i = random.nextInt(4); i > 0; i--) {
                    int level = 1 + random.nextInt(3);
                    String title = "b" + places.size();
                    markup.append("<bookmark title=\"" + title + "\" level=\"" + level + "\"/>");
                    place(places, levels, titles, level, title);
                    pages.add(page);
                }
                markup.append("</page>");
            }
            if (places.isEmpty()) {
                continue;
            }
            try (PDDocument document = Loader.loadPDF(Pressed.markup(markup + "</document>", PressSettings.plain()).bytes)) {
                PDOutlineNode root = document.getDocumentCatalog().getDocumentOutline();
                List<String> read = new ArrayList<>();
                forwards(root, "", read);
                assertEquals(places, read);
                List<String> back = new ArrayList<>();
                backwards(root, "", back);
                Collections.reverse(back);
                assertEquals(places, back);
                assertEquals(places.size(), countOpen(root));
                check(document, root, pages);
            }
        }
    }

    private static void check(PDDocument document, PDOutlineNode node, List<Integer> pages) throws Exception {
        for (PDOutlineItem item : node.children()) {
            int number = Integer.parseInt(item.getTitle().substring(1));
            assertEquals((int) pages.get(number), document.getPages().indexOf(item.findDestinationPage(document)));
            assertEquals(node.getCOSObject(), item.getCOSObject().getCOSDictionary(COSName.PARENT));
            check(document, item, pages);
        }
    }
}
