package kitleaf.sheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import freemarker.template.SimpleNumber;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.words.Said;
import org.junit.jupiter.api.Test;

class ViewModelTests {

    /** A view such as layouts make. */
    public record Card(String title, Box box) {

        /** Its title twice. */
        public String twice() {
            return title + title;
        }

        /** A number more. */
        public double more(double than) {
            return than + 1;
        }

        /** Fails. */
        public String broken() {
            throw new IllegalStateException("no ink");
        }

        String own() {
            return title;
        }
    }

    private static TemplateHashModel card() throws TemplateModelException {
        return (TemplateHashModel) new ViewWrapper().wrap(new Card("Fog bell", new Box(1, 2, 3, 4)));
    }

    @Test
    void components_are_values_and_records_in_records_too() throws TemplateModelException {
        assertEquals("Fog bell", ((TemplateScalarModel) card().get("title")).getAsString());
        TemplateHashModel box = (TemplateHashModel) card().get("box");
        assertEquals(2.0, ((TemplateNumberModel) box.get("yMm")).getAsNumber());
    }

    /** FreeMarker's own model of it would show its methods, and start the bean introspector. */
    @Test
    void a_choice_is_its_name_and_nothing_else() throws TemplateModelException {
        Object choice = new ViewWrapper().wrap(Thread.State.NEW);
        assertEquals("NEW", ((TemplateScalarModel) choice).getAsString());
        assertFalse(choice instanceof TemplateHashModel);
    }

    @Test
    void public_methods_can_be_called() throws TemplateModelException {
        TemplateMethodModelEx twice = (TemplateMethodModelEx) card().get("twice");
        assertEquals("Fog bellFog bell", ((TemplateScalarModel) twice.exec(List.of())).getAsString());
        assertThrows(TemplateModelException.class, () -> twice.exec(List.of("x")));
    }

    @Test
    void methods_take_numbers_and_nothing_else() throws TemplateModelException {
        TemplateMethodModelEx more = (TemplateMethodModelEx) card().get("more");
        assertEquals(7.5, ((TemplateNumberModel) more.exec(List.of(new SimpleNumber(6.5)))).getAsNumber());
        assertThrows(TemplateModelException.class, () -> more.exec(List.of()));
        assertThrows(TemplateModelException.class, () -> more.exec(List.of(new SimpleScalar("6"))));
    }

    @Test
    void what_fails_is_a_fault_of_the_template() throws TemplateModelException {
        TemplateMethodModelEx broken = (TemplateMethodModelEx) card().get("broken");
        TemplateSlip fault = assertThrows(TemplateSlip.class, () -> broken.exec(List.of()));
        assertEquals(Said.of("call.failed", "broken", "java.lang.IllegalStateException: no ink"), fault.said());
    }

    @Test
    void nothing_else_is_shown() throws TemplateModelException {
        for (String name : List.of("own", "getClass", "class", "hashCode", "toString", "equals", "notify", "colour")) {
            assertNull(card().get(name), name);
        }
    }
}
