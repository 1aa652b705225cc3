package kitleaf.press;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.function.IntConsumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Draws the pages of a pressed PDF as PNG pictures, for a screen. It is the only class that needs PDFBox, which is
 * loaded when pictures are asked for and not before; pictures come from the very PDF that is printed, so they cannot say
 * anything else.
 */
public final class PagePictures {

    /** Dots to the inch: 1240 across A4, which a phone shows sharp and a message carries. */
    public static final int DPI = 150;

    /** The most dots of a picture, in fewer to the inch where the page is larger: A0 is 35 million at {@link #DPI}, and takes 140 MB. */
    private static final double MOST_DOTS = 36e6;

    private static final double POINTS_PER_INCH = 72;

    /** Kept, since a logger nobody holds forgets what it was told. */
    private static final Logger PDFBOX = Logger.getLogger("org.apache.pdfbox");

    /** Where the picture of a page goes. */
    public interface Pictures {
        /**
         * Opens the picture of a page.
         *
         * @param page from 1
         * @param pages how many there are
         */
        OutputStream open(int page, int pages) throws IOException;
    }

    private PagePictures() {
    }

    /**
     * Draws every page, one at a time.
     *
     * @param onPage called with the number of each page once it has been drawn
     */
    public static void draw(Path pdf, Pictures pictures, IntConsumer onPage) throws IOException {
        System.setProperty("java.awt.headless", "true");
        PDFBOX.setLevel(Level.OFF);
        ImageIO.setUseCache(false);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                BufferedImage image = renderer.renderImageWithDPI(page - 1, dpi(document.getPage(page - 1).getMediaBox()), ImageType.RGB);
                try (OutputStream out = pictures.open(page, pages)) {
                    ImageIO.write(image, "png", out);
                }
                onPage.accept(page);
            }
        }
    }

    private static float dpi(PDRectangle page) {
        double squareInches = page.getWidth() / POINTS_PER_INCH * (page.getHeight() / POINTS_PER_INCH);
        return (float) Math.min(DPI, Math.sqrt(MOST_DOTS / squareInches));
    }
}
