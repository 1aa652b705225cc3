package kitleaf.sheet.template;

import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import kitleaf.sheet.page.TextRuler;

/**
 * Shows templates what layouts make: view records by their components, choices by their names, the ruler by its measures, all else
 * as FreeMarker does. Its own wrapper for records and choices asks the bean introspector, which takes longer to start than a page
 * takes to print, and looks a method up anew for every value.
 */
final class ViewWrapper extends DefaultObjectWrapper {

    ViewWrapper() {
        super(Configuration.VERSION_2_3_34);
        setIterableSupport(true);
        setMemberAccessPolicy(new ViewsOnly());
        writeProtect();
    }

    @Override
    protected TemplateModel handleUnknownType(Object object) throws TemplateModelException {
        if (object instanceof Record view) {
            return new ViewModel(view, this);
        }
        if (object instanceof Enum<?> choice) {
            return new SimpleScalar(choice.name());
        }
        return object instanceof TextRuler ruler ? new RulerModel(ruler) : super.handleUnknownType(object);
    }
}
