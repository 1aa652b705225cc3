package kitleaf.sheet.template;

import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;

/**
 * What templates may ask of an object: Kitleaf's own methods that take nothing but numbers and words, which are how view records tell
 * what they hold. Nothing of Java's own, so that no template reaches classes, files or threads through what it is shown.
 */
final class ViewsOnly implements MemberAccessPolicy {

    private static final String OURS = "kitleaf.";

    @Override
    public ClassMemberAccessPolicy forClass(Class<?> contextClass) {
        return new ClassMemberAccessPolicy() {
            @Override
            public boolean isMethodExposed(Method method) {
                return method.getDeclaringClass().getName().startsWith(OURS) && Arrays.stream(method.getParameterTypes())
                        .allMatch(type -> type.isPrimitive() || type == String.class)
                        && !Modifier.isStatic(method.getModifiers()) && method.getReturnType() != void.class;
            }

            @Override
            public boolean isConstructorExposed(Constructor<?> constructor) {
                return false;
            }

            @Override
            public boolean isFieldExposed(Field field) {
                return false;
            }
        };
    }

    @Override
    public boolean isToStringAlwaysExposed() {
        return true;
    }
}
