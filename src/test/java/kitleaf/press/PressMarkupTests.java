package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import kitleaf.press.markup.MarkupException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faulty markup: what is said, and where. */
class PressMarkupTests {

    private static MarkupException refused(String markup) {
        return assertThrows(MarkupException.class, () -> Press.press(new StringReader(markup),
                OutputStream.nullOutputStream(), PressSettings.plain()));
    }

    private static String saidOf(String inner) {
        return refused("<document><page width=\"210\" height=\"297\">" + inner + "</page></document>").getMessage();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <rekt/>                                    | "rekt" is not an element of the page markup; did you mean "rect"?
            <RECT width="1" height="1"/>               | "RECT" is not an element of the page markup; did you mean "rect"?
            <svg:rect/>                                | this is not well-formed XML: Unbound namespace prefix 'svg' (for element name 'svg:rect')
            <xml:rect/>                                | "xml:rect" is not an element of the page markup
            <g xmlns="http://www.w3.org/2000/svg"/>    | "xmlns" is not an attribute of "g"
            <g xmlns:s="http://www.w3.org/2000/svg"/>  | "xmlns" is not an attribute of "g"
            <g xml:fill="#fff"/>                       | "xml:fill" is not an attribute of "g"
            <ellipse/>                                 | "ellipse" is not an element of the page markup
            <page width="1" height="1"/>               | "page" cannot stand in "page"
            <tspan/>                                   | "tspan" cannot stand in "page"
            <text><rect width="1" height="1"/></text>  | "rect" cannot stand in "text"
            <text><tspan><tspan/></tspan></text>       | "tspan" cannot stand in "tspan"
            <rect width="1" heigth="1"/>               | "heigth" is not an attribute of "rect"; did you mean "height"?
            <rect widht="1" height="1"/>               | "widht" is not an attribute of "rect"; did you mean "width"?
            <g onclick="go()"/>                        | "onclick" is not an attribute of "g"
            <text><tspan x="1">a</tspan></text>        | "x" is not an attribute of "tspan"
            <bookmark title="a" fill="#000"/>          | "fill" is not an attribute of "bookmark"
            <rect height="1"/>                         | "rect" needs "width"
            <circle/>                                  | "circle" needs "r"
            <path/>                                    | "path" needs "d"
            <code>a</code>                             | "code" needs "size"
            <code size="0">a</code>                    | "size" of "code": a code of no size cannot be read; write millimetres
            <code size="-9">a</code>                   | "size" of "code": "-9" is less than 0
            <code size="9" level="X">a</code>          | "level" of "code": "X" is not a level of a QR code; write L, M, Q or H
            <code size="9" level="m">a</code>          | "level" of "code": "m" is not a level of a QR code; write L, M, Q or H
            <code size="9" width="9">a</code>          | "width" is not an attribute of "code"
            <code size="9"> </code>                    | "code": there is no text to encode
            <code size="9" fill="none">a</code>        | "code" has no fill; write one, as in fill="#000"
            <code size="9"><tspan>a</tspan></code>     | "tspan" cannot stand in "code"
            <line stroke-dasharray="1e-5 1e-5"/>       | "stroke-dasharray" of "line": "1e-5 1e-5" is finer than a printer's dot; write dashes and gaps of 0.05 mm or more in all
            <bookmark/>                                | "bookmark" needs "title"
            <bookmark title="a" level="4"/>            | "level" of "bookmark": "4" is not a whole number from 1 to 3
            <text lines="0">a</text>                   | "lines" of "text": "0" is not a whole number from 1 to 1000
            <text lines="1.5">a</text>                 | "lines" of "text": "1.5" is not a whole number from 1 to 1000
            <rect width="12mm" height="1"/>            | "width" of "rect": "12mm" is not a number
            <rect width="1,5" height="1"/>             | "width" of "rect": "1,5" is not a number
            <rect width="NaN" height="1"/>             | "width" of "rect": "NaN" is not a number
            <rect width="" height="1"/>                | "width" of "rect": "" is not a number
            <rect width="-1" height="1"/>              | "width" of "rect": "-1" is less than 0
            <rect width="1e9" height="1"/>             | "width" of "rect": "1e9" is too large
            <line x1="0x1p3"/>                         | "x1" of "line": "0x1p3" is not a number
            <g fill="red"/>                            | "fill" of "g": "red" is not a colour; write none, #rgb or #rrggbb
            <g stroke="#12345"/>                       | "stroke" of "g": "#12345" is not a colour; write none, #rgb or #rrggbb
            <g fill="#12g"/>                           | "fill" of "g": "#12g" is not a colour; write none, #rgb or #rrggbb
            <g stroke-width="-0.2"/>                   | "stroke-width" of "g": "-0.2" is less than 0
            <g stroke-dasharray="1 -1"/>               | "stroke-dasharray" of "g": "1 -1" has a length less than 0
            <g stroke-dasharray="a"/>                  | "stroke-dasharray" of "g": "a" is not a number
            <g stroke-linecap="flat"/>                 | "stroke-linecap" of "g": "flat" is not known here; write butt, round, square
            <g stroke-linejoin="x"/>                   | "stroke-linejoin" of "g": "x" is not known here; write miter, round, bevel
            <g font-family="Serif"/>                   | "font-family" of "g": "Serif" is not a font family; write text, heading or symbol
            <g font-size="9px"/>                       | "font-size" of "g": "9px" is not a type size; write points as 9.5pt or millimetres as 3.4
            <g font-size="0"/>                         | "font-size" of "g": "0" is too small a type size
            <text width="9" fit="small">a</text>       | "fit" of "text": "small" is not a type size; write points as 9.5pt or millimetres as 3.4
            <g font-weight="450"/>                     | "font-weight" of "g": "450" is not a weight; write normal, bold or 100, 200, ... 900
            <g text-anchor="left"/>                    | "text-anchor" of "g": "left" is not known here; write start, middle, end
            <g font-variant-numeric="tnum"/>           | "font-variant-numeric" of "g": "tnum" is not known here; write normal, tabular-nums
            <g transform="skewX(3)"/>                  | "transform" of "g": "skewX" is not a transform; write translate, rotate, scale or matrix
            <g transform="rotat(3)"/>                  | "transform" of "g": "rotat" is not a transform; did you mean "rotate"?; write translate, rotate, scale or matrix
            <g transform="rotate(3 4)"/>               | "transform" of "g": "rotate" does not take 2 numbers
            <g transform="scale()"/>                   | "transform" of "g": "scale" does not take 0 numbers
            <g transform="translate(3"/>               | "transform" of "g": "translate(3" lacks ")"
            <g transform="translate(a)"/>              | "transform" of "g": "translate(a)" has "a" where a number should be
            <g transform="translate"/>                 | "transform" of "g": "translate" lacks "("
            <path d="L1 2"/>                           | "d" of "path": a path begins with M, not with "L"
            <path d="M1"/>                             | "d" of "path": a number is missing after "M" at character 3
            <path d="M1 2 L3 x"/>                      | "d" of "path": a number is missing after "L" at character 9
            <path d="M1 2 A1 1 0 0 0 3 3"/>            | "d" of "path": "A" at character 6 is not a path command; write M, L, H, V, C, Q or Z
            <path d="M1 2 3" fill="none"/>             | "d" of "path": a number is missing after "M" at character 7
            harbour                                    | "harbour" stands outside a text element
            <g>tide</g>                                | "tide" stands outside a text element
            &tide;                                     | "&tide;" is not known in page markup; write the character itself or its number, as in &#189;
            """)
    void aFaultIsToldInPlainWords(String inner, String message) {
        assertEquals(message, saidOf(inner));
    }

    @Test
    void pagesMustHaveSensibleSizes() {
        assertEquals("\"page\" needs \"height\"", refused("<document><page width=\"9\"/></document>").getMessage());
        assertEquals("\"width\" of \"page\": \"0\" is not 1 to 5080 mm",
                refused("<document><page width=\"0\" height=\"9\"/></document>").getMessage());
        assertEquals("\"height\" of \"page\": \"9000\" is not 1 to 5080 mm",
                refused("<document><page width=\"9\" height=\"9000\"/></document>").getMessage());
    }

    @Test
    void theRootMustBeADocumentWithPages() {
        assertEquals("the document has no pages", refused("<document/>").getMessage());
        assertEquals("the markup begins with \"document\", not with \"page\"",
                refused("<page width=\"1\" height=\"1\"/>").getMessage());
        assertEquals("\"rect\" cannot stand in \"document\"",
                refused("<document><rect width=\"1\" height=\"1\"/></document>").getMessage());
    }

    @Test
    void aFaultIsFoundWhereItsTagOrTextBegins() {
        String markup = "<document>\n  <page width=\"210\" height=\"297\">\n    <g>\n      <rekt\n x=\"1\"/></g></page></document>";
        MarkupException fault = refused(markup);
        assertEquals(4, fault.line());
        assertEquals(7, fault.column());
        assertEquals(markup.indexOf("<rekt"), fault.characterOffset());

        String stray = "<document><page width=\"210\" height=\"297\"><g/>tide</page></document>";
        assertEquals(stray.indexOf("tide"), refused(stray).characterOffset());
    }

    @Test
    void whatIsNotXmlIsRefusedWithItsPlace() {
        MarkupException fault = refused("<document>\n<page width=\"9\" height=\"9\">\n</pag></document>");
        assertTrue(fault.getMessage().startsWith("this is not well-formed XML: "), fault.getMessage());
        assertEquals(3, fault.line());
        for (String markup : new String[] {"", "tide", "<document>", "<document><page width=9/></document>",
            "<document><page width=\"9\" height=\"9\"><text>\u0001</text></page></document>",
            "<document><page width=\"9\" width=\"9\" height=\"9\"/></document>"}) {
            assertTrue(refused(markup).getMessage().startsWith("this is not well-formed XML: "), markup);
        }
    }

    @Test
    void noDocumentTypeIsTakenAndNothingIsFetched(@TempDir Path folder) throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "the secret");
        for (String subset : new String[] {"", " SYSTEM \"" + secret.toUri() + "\"",
            " [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]",
            " [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY e \"&a;&a;&a;&a;\">]"}) {
            MarkupException fault = refused("<!DOCTYPE document" + subset
                    + "><document><page width=\"99\" height=\"99\"><text>&e;</text></page></document>");
            assertEquals("page markup has no document type; leave <!DOCTYPE out", fault.getMessage());
        }
    }

    @Test
    void xmlsOwnFiveEntitiesAndCharacterNumbersAreText() throws Exception {
        assertEquals("<&>”’\u03C8", Pressed.page("<text x=\"9\" y=\"9\">&lt;&amp;&gt;&quot;&apos;&#x3C8;</text>").text());
        assertEquals("a<b", Pressed.page("<text x=\"9\" y=\"9\"><!-- no --><![CDATA[a<b]]><?no no?></text>").text());
    }

    @Test
    void elementsMayNotStandTooDeep() {
        assertEquals("elements stand more than 256 deep", saidOf("<g>".repeat(300) + "</g>".repeat(300)));
    }

    @Test
    void aLongTextOfManyPartsIsOneText() throws Exception {
        // The XML reader hands long text over in parts; 30,000 characters are more than any of its buffers.
        String words = "tide ".repeat(6000).strip();
        Pressed pressed = Pressed.page("<text x=\"9\" y=\"9\" font-size=\"0.2pt\">" + words + "</text>");
        assertEquals(words.length(), pressed.letters().size());
    }

    @Test
    void whatTheStreamsThrowComesThrough() {
        IOException broken = new IOException("the cable is cut");
        Reader reader = new Reader() {
            private boolean begun;

            @Override
            public int read(char[] buffer, int offset, int length) throws IOException {
                if (begun) {
                    throw broken;
                }
                begun = true;
                "<document><page width=\"9\" height=\"9\">".getChars(0, 37, buffer, offset);
                return 37;
            }

            @Override
            public void close() {
            }
        };
        assertSame(broken, assertThrows(IOException.class,
                () -> Press.press(reader, new ByteArrayOutputStream(), PressSettings.plain())));
        Reader atOnce = new Reader() {
            @Override
            public int read(char[] buffer, int offset, int length) throws IOException {
                throw broken;
            }

            @Override
            public void close() {
            }
        };
        assertSame(broken, assertThrows(IOException.class,
                () -> Press.press(atOnce, new ByteArrayOutputStream(), PressSettings.plain())));
    }

    @Test
    void aFullDiskComesThroughWheneverItFills() throws Exception {
        String markup = "<document>" + "<page width=\"9\" height=\"9\"><text y=\"5\">a</text></page>".repeat(50)
                + "</document>";
        int whole = Pressed.markup(markup, PressSettings.plain()).bytes.length;
        for (int room : new int[] {0, 5, 100, whole / 2, whole - 1}) {
            IOException full = new IOException("the disk is full");
            OutputStream out = new OutputStream() {
                private int written;

                @Override
                public void write(int b) throws IOException {
                    if (++written > room) {
                        throw full;
                    }
                }
            };
            assertSame(full, assertThrows(IOException.class,
                    () -> Press.press(new StringReader(markup), out, PressSettings.plain())), "room " + room);
        }
    }
}
