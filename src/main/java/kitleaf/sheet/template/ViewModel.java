package kitleaf.sheet.template;

import freemarker.template.ObjectWrapper;
import freemarker.template.SimpleNumber;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitleaf.sheet.page.Parts;

/**
 * A view record as a template sees it: {@code box.xMm} is a component, {@code box.rightMm()} and {@code type.floor(6)}
 * are public methods, whose arguments are numbers if any. What every Java object has is not shown.
 */
final class ViewModel implements TemplateHashModel {

    private static final Set<String> NOT_SHOWN = Set.of("hashCode", "toString", "equals");

    /** What a name stands for. */
    private record Shown(Method method, boolean component) {

        /** Spares the look at who calls, which takes longer than the call. */
        private Shown {
            method.setAccessible(true);
        }
    }

    private static final ClassValue<Map<String, Shown>> SHOWN = new ClassValue<>() {
        @Override
        protected Map<String, Shown> computeValue(Class<?> view) {
            Map<String, Shown> shown = new HashMap<>();
            for (Method method : view.getDeclaredMethods()) {
                int is = method.getModifiers();
                if (Modifier.isPublic(is) && !Modifier.isStatic(is) && Arrays.stream(method.getParameterTypes())
                        .allMatch(double.class::equals) && !NOT_SHOWN.contains(method.getName())) {
                    shown.put(method.getName(), new Shown(method, false));
                }
            }
            for (RecordComponent component : view.getRecordComponents()) {
                shown.put(component.getName(), new Shown(component.getAccessor(), true));
            }
            return shown;
        }
    };

    private final Record view;
    private final ObjectWrapper wrapper;

    ViewModel(Record view, ObjectWrapper wrapper) {
        this.view = view;
        this.wrapper = wrapper;
    }

    @Override
    public TemplateModel get(String name) throws TemplateModelException {
        Object part = view instanceof Parts parts ? parts.part(name) : null;
        if (part != null) {
            return model(part);
        }
        Shown shown = SHOWN.get(view.getClass()).get(name);
        if (shown == null) {
            return null;
        }
        Method method = shown.method();
        return shown.component() ? value(method) : (TemplateMethodModelEx) arguments -> value(method,
                numbers(name, arguments, method.getParameterCount()));
    }

    /** What most parts are needs no look at all that a part might be. */
    private TemplateModel model(Object part) throws TemplateModelException {
        if (part instanceof Double number) {
            return new SimpleNumber(number);
        }
        if (part instanceof String text) {
            return new SimpleScalar(text);
        }
        if (part instanceof Boolean flag) {
            return flag ? TemplateBooleanModel.TRUE : TemplateBooleanModel.FALSE;
        }
        return part instanceof Record record ? new ViewModel(record, wrapper) : wrapper.wrap(part);
    }

    private static Object[] numbers(String name, List<?> arguments, int count) throws TemplateModelException {
        if (arguments.size() != count) {
            throw count == 0 ? new TemplateSlip("call.takes.none", name)
                    : count == 1 ? new TemplateSlip("call.takes.one", name) : new TemplateSlip("call.takes.many", name, count);
        }
        Object[] numbers = new Object[count];
        for (int i = 0; i < count; i++) {
            if (!(arguments.get(i) instanceof TemplateNumberModel number)) {
                throw new TemplateSlip("call.no-numbers", name);
            }
            numbers[i] = number.getAsNumber().doubleValue();
        }
        return numbers;
    }

    @Override
    public boolean isEmpty() {
        return false;
    }

    private TemplateModel value(Method method, Object... arguments) throws TemplateModelException {
        try {
            return wrapper.wrap(method.invoke(view, arguments));
        } catch (InvocationTargetException e) {
            throw new TemplateSlip("call.failed", method.getName(), String.valueOf(e.getCause()));
        } catch (IllegalAccessException e) {
            throw new TemplateSlip("call.closed", method.getName());
        }
    }
}
