package kitleaf.sheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.SimpleNumber;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import java.util.BitSet;
import java.util.List;
import kitleaf.sheet.page.TextRuler;
import kitleaf.words.Said;
import org.junit.jupiter.api.Test;

class RulerModelTests {

    /** Tells what it was asked. */
    private static final TextRuler RULER = new TextRuler() {
        @Override
        public int codeModules(String text) {
            return 21;
        }

        @Override
        public int lines(String text, String family, int weight, double sizePt, double widthMm) {
            return text.length() + family.length() + weight + (int) (10 * sizePt) + (int) widthMm;
        }

        @Override
        public double widthMm(String text, String family, int weight, double sizePt) {
            return text.length() + family.length() + weight + sizePt;
        }
    };

    private static TemplateMethodModelEx method(String name) throws TemplateModelException {
        return (TemplateMethodModelEx) ((TemplateHashModel) new ViewWrapper().wrap(RULER)).get(name);
    }

    private static SimpleNumber number(double number) {
        return new SimpleNumber(number);
    }

    @Test
    void templates_measure_with_it() throws TemplateModelException {
        // 3 letters, 4 letters, 400, 9.5.
        assertEquals(416.5, method("widthMm").exec(List.of(new SimpleScalar("fog"), new SimpleScalar("text"), number(400), number(9.5))));
        // 3, 4, 400, 95 and 80.
        assertEquals(582, method("lines").exec(List.of(new SimpleScalar("fog"), new SimpleScalar("text"), number(400), number(9.5), number(80))));
    }

    @Test
    void they_see_nothing_else_of_it() throws TemplateModelException {
        assertNull(method("codeModules"));
        assertNull(method("getClass"));
        assertNull(method("class"));
    }

    @Test
    void what_it_cannot_measure_is_told() throws TemplateModelException {
        TemplateMethodModelEx width = method("widthMm");
        TemplateSlip few = assertThrows(TemplateSlip.class, () -> width.exec(List.of(new SimpleScalar("fog"))));
        assertEquals(Said.of("call.ruler-width"), few.said());
        TemplateMethodModelEx lines = method("lines");
        TemplateSlip text = assertThrows(TemplateSlip.class,
                () -> lines.exec(List.of(new SimpleScalar("fog"), new SimpleScalar("text"), new SimpleScalar("bold"), number(9.5), number(80))));
        assertEquals(Said.of("call.ruler-lines"), text.said());
    }

    @Test
    void what_FreeMarker_would_show_by_itself_is_nothing() throws TemplateModelException {
        // The list in the resources stands before FreeMarker's own.
        TemplateHashModel any = (TemplateHashModel) new DefaultObjectWrapper(Configuration.VERSION_2_3_34).wrap(new BitSet());
        assertNull(any.get("size"));
        assertNull(any.get("class"));
    }
}
