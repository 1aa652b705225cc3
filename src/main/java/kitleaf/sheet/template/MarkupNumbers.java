package kitleaf.sheet.template;

import freemarker.core.Environment;
import freemarker.core.TemplateNumberFormat;
import freemarker.core.TemplateNumberFormatFactory;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import java.util.Locale;
import kitleaf.sheet.page.NumberText;

/** Writes the numbers of templates as {@link NumberText} has them. */
final class MarkupNumbers extends TemplateNumberFormatFactory {

    /** What templates know it by, as {@code @length}. */
    static final String NAME = "length";

    @Override
    public TemplateNumberFormat get(String parameters, Locale locale, Environment environment) {
        return new Format();
    }

    private static final class Format extends TemplateNumberFormat {

        @Override
        public String formatToPlainText(TemplateNumberModel number) throws TemplateModelException {
            return NumberText.of(number.getAsNumber());
        }

        @Override
        public boolean isLocaleBound() {
            return false;
        }

        @Override
        public String getDescription() {
            return "up to six decimals";
        }
    }
}
