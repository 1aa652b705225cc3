package kitleaf.sheet.template;

import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import java.util.List;
import kitleaf.sheet.page.TextRuler;

/**
 * {@code lines(text, sizePt, widthMm)} for templates: how many lines a text of the text face takes, by the
 * same measure the layout used, so that what follows it can be placed.
 */
final class LinesFunction implements TemplateMethodModelEx {

    private final TextRuler ruler;

    LinesFunction(TextRuler ruler) {
        this.ruler = ruler;
    }

    @Override
    public Object exec(@SuppressWarnings("rawtypes") List arguments) throws TemplateModelException {
        if (arguments.size() != 3) {
            throw new TemplateSlip("call.lines");
        }
        return ruler.lines(String.valueOf(arguments.get(0)), "text", 400, number(arguments.get(1)), number(arguments.get(2)));
    }

    private static double number(Object argument) throws TemplateModelException {
        if (argument instanceof TemplateNumberModel model) {
            return model.getAsNumber().doubleValue();
        }
        throw new TemplateSlip("call.lines");
    }
}
