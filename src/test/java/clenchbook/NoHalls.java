package clenchbook;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;

/** No package holds more files than a newcomer can take in. */
final class NoHalls extends ArchCondition<JavaClass> {
  private final int most;
  private final Map<String, Integer> counts = new TreeMap<>();

  NoHalls(int most) {
    super("stand in packages of at most " + most + " types");
    this.most = most;
  }

  @Override
  public void init(Collection<JavaClass> all) {
    counts.clear();
  }

  @Override
  public void check(JavaClass type, ConditionEvents events) {
    if (type.isTopLevelClass() && !type.getSimpleName().equals("package-info")) {
      counts.merge(type.getPackageName(), 1, Integer::sum);
    }
  }

  @Override
  public void finish(ConditionEvents events) {
    counts.forEach(
        (name, count) -> {
          if (count > most) {
            events.add(SimpleConditionEvent.violated(name, name + " holds " + count + " types"));
          }
        });
  }
}
