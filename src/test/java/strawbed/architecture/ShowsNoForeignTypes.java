package strawbed.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import java.util.stream.Stream;

/** Whether what others can call is made of the platform's types and our own. */
final class ShowsNoForeignTypes extends ArchCondition<JavaClass> {
    ShowsNoForeignTypes() {
        super("show only types of the platform and of Strawbed");
    }

    @Override
    public void check(JavaClass type, ConditionEvents events) {
        Stream<String> supertypes = type.getAllRawSuperclasses().stream()
                .filter(ShowsNoForeignTypes::isForeign)
                .map(parent -> type.getName() + " extends " + parent.getName());
        Stream<String> calls = type.getCodeUnits().stream()
                .filter(unit -> isShown(unit.getModifiers()))
                .flatMap(unit -> shown(unit)
                        .filter(ShowsNoForeignTypes::isForeign)
                        .map(foreign -> unit.getFullName() + " shows " + foreign.getName()));
        Stream<String> fields = type.getFields().stream()
                .filter(field -> isShown(field.getModifiers()))
                .flatMap(field -> of(field)
                        .filter(ShowsNoForeignTypes::isForeign)
                        .map(foreign -> field.getFullName() + " shows " + foreign.getName()));
        Stream.of(supertypes, calls, fields)
                .flatMap(found -> found)
                .forEach(found -> events.add(SimpleConditionEvent.violated(type, found)));
    }

    private static boolean isShown(Set<JavaModifier> modifiers) {
        return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
    }

    private static Stream<JavaClass> shown(JavaCodeUnit unit) {
        return Stream.of(
                        unit.getReturnType().getAllInvolvedRawTypes().stream(),
                        unit.getParameterTypes().stream()
                                .flatMap(parameter -> parameter.getAllInvolvedRawTypes().stream()),
                        unit.getThrowsClause().getTypes().stream())
                .flatMap(found -> found);
    }

    private static Stream<JavaClass> of(JavaField field) {
        return field.getType().getAllInvolvedRawTypes().stream();
    }

    private static boolean isForeign(JavaClass type) {
        String name = type.getBaseComponentType().getName();
        return name.contains(".") && Stream.of("java.", "javax.", "strawbed.").noneMatch(name::startsWith);
    }
}
