package kitleaf.sheet.template;

import freemarker.template.TemplateModelException;
import kitleaf.words.Said;

/** A template calls something of Kitleaf's wrongly; where it does so, FreeMarker notes. */
final class TemplateSlip extends TemplateModelException {

    private static final long serialVersionUID = 1L;

    private final transient Said said;

    TemplateSlip(String key, Object... slots) {
        super(key);
        this.said = Said.of(key, slots);
    }

    /** What is wrong. */
    Said said() {
        return said;
    }
}
