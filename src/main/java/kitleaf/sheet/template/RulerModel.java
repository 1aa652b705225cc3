package kitleaf.sheet.template;

import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.util.List;
import kitleaf.sheet.page.TextRuler;

/**
 * The ruler as templates see it: {@code ruler.widthMm(text, family, weight, sizePt)} and
 * {@code ruler.lines(text, family, weight, sizePt, widthMm)}, named here one by one. To find them by asking the class takes longer, the
 * first time, than a page does.
 */
final class RulerModel implements TemplateHashModel {

    private final TextRuler ruler;

    RulerModel(TextRuler ruler) {
        this.ruler = ruler;
    }

    @Override
    public TemplateModel get(String name) {
        return switch (name) {
            case "widthMm" -> (TemplateMethodModelEx) this::widthMm;
            case "lines" -> (TemplateMethodModelEx) this::lines;
            default -> null;
        };
    }

    @Override
    public boolean isEmpty() {
        return false;
    }

    private Object widthMm(List<?> asked) throws TemplateModelException {
        if (!texts(asked, 2, 4)) {
            throw new TemplateSlip("call.ruler-width");
        }
        return ruler.widthMm(text(asked, 0), text(asked, 1), (int) number(asked, 2), number(asked, 3));
    }

    private Object lines(List<?> asked) throws TemplateModelException {
        if (!texts(asked, 2, 5)) {
            throw new TemplateSlip("call.ruler-lines");
        }
        return ruler.lines(text(asked, 0), text(asked, 1), (int) number(asked, 2), number(asked, 3), number(asked, 4));
    }

    /** Whether so many texts were given, and numbers after them that make so many in all. */
    private static boolean texts(List<?> asked, int texts, int all) {
        boolean right = asked.size() == all;
        for (int i = 0; right && i < all; i++) {
            right = i < texts ? asked.get(i) instanceof TemplateScalarModel : asked.get(i) instanceof TemplateNumberModel;
        }
        return right;
    }

    private static String text(List<?> asked, int at) throws TemplateModelException {
        return ((TemplateScalarModel) asked.get(at)).getAsString();
    }

    private static double number(List<?> asked, int at) throws TemplateModelException {
        return ((TemplateNumberModel) asked.get(at)).getAsNumber().doubleValue();
    }
}
