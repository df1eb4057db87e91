package strawbed.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import org.jspecify.annotations.NullMarked;

/** Whether a class's package carries the mark itself: it does not pass on to packages inside. */
final class LivesInANullMarkedPackage extends ArchCondition<JavaClass> {
    LivesInANullMarkedPackage() {
        super("live in a package with @NullMarked");
    }

    @Override
    public void check(JavaClass type, ConditionEvents events) {
        boolean marked = type.getPackage().getPackageInfo().isAnnotatedWith(NullMarked.class);
        events.add(new SimpleConditionEvent(
                type, marked, type.getName() + " lives in " + type.getPackageName() + ", which is not marked"));
    }
}
