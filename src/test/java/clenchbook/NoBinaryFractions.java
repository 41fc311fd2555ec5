package clenchbook;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A class holds, takes, gives and asks for no {@code double} or {@code float}: neither as the type
 * of a field, of a parameter or of what a method gives, nor in what it calls.
 */
final class NoBinaryFractions extends ArchCondition<JavaClass> {
  private static final Set<String> BINARY =
      Set.of("double", "float", "java.lang.Double", "java.lang.Float");

  NoBinaryFractions() {
    super("hold, take, give and ask for no binary fraction");
  }

  @Override
  public void check(JavaClass type, ConditionEvents events) {
    for (JavaField field : type.getFields()) {
      judge(type, field.getFullName(), Stream.of(field.getRawType()), events);
    }
    for (JavaCodeUnit unit : type.getCodeUnits()) {
      judge(
          type,
          unit.getFullName(),
          types(unit.getRawReturnType(), unit.getRawParameterTypes()),
          events);
      unit.getCallsFromSelf()
          .forEach(
              call -> {
                CodeUnitCallTarget target = call.getTarget();
                judge(
                    type,
                    unit.getFullName() + " calls " + target.getFullName(),
                    types(target.getRawReturnType(), target.getRawParameterTypes()),
                    events);
              });
      unit.getFieldAccesses()
          .forEach(
              access ->
                  judge(
                      type,
                      unit.getFullName() + " uses " + access.getTarget().getFullName(),
                      Stream.of(access.getTarget().getRawType()),
                      events));
    }
  }

  private static Stream<JavaClass> types(JavaClass given, List<JavaClass> taken) {
    return Stream.concat(Stream.of(given), taken.stream());
  }

  private static void judge(
      JavaClass type, String where, Stream<JavaClass> types, ConditionEvents events) {
    if (types.anyMatch(each -> BINARY.contains(each.getBaseComponentType().getName()))) {
      events.add(SimpleConditionEvent.violated(type, where + " is a binary fraction"));
    }
  }
}
