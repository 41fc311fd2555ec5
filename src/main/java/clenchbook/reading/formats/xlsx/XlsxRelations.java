package clenchbook.reading.formats.xlsx;

import clenchbook.reading.formats.parts.Parts;
import clenchbook.reading.formats.parts.Xml;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;

/** What a part of an office package points to. Links out of the package are left out. */
public final class XlsxRelations {
  private final Map<String, Relation> byId = new LinkedHashMap<>();
  private final Set<String> outside = new HashSet<>();

  /**
   * One pointer.
   *
   * @param type the last word of its type, the same in the transitional and the strict form
   * @param target the name of a part
   */
  record Relation(String type, String target) {}

  static XlsxRelations read(Parts parts, XMLInputFactory factory, String part) throws IOException {
    XlsxRelations relations = new XlsxRelations();
    int slash = part.lastIndexOf('/');
    String folder = part.substring(0, slash + 1);
    String name = folder + "_rels/" + part.substring(slash + 1) + ".rels";
    if (!parts.has(name)) {
      return relations;
    }
    try (Xml xml = Xml.open(factory, parts.open(name))) {
      while (xml.next()) {
        if (xml.starts("Relationship")) {
          relations.add(xml, folder);
        }
      }
    }
    return relations;
  }

  private void add(Xml xml, String folder) throws IOException {
    String type = xml.attribute("Type").orElse("");
    String target = xml.attribute("Target").orElse("");
    String id = xml.attribute("Id").orElse("");
    if (xml.attribute("TargetMode").orElse("").equalsIgnoreCase("External")) {
      outside.add(id);
    } else {
      String last = type.substring(type.lastIndexOf('/') + 1);
      byId.put(id, new Relation(last, resolve(folder, target)));
    }
  }

  /** A target beside its folder; {@code ..} goes up, never above the package. */
  public static String resolve(String folder, String target) {
    String slashed = target.replace('\\', '/');
    Deque<String> path = new ArrayDeque<>();
    for (String step : (slashed.startsWith("/") ? slashed : folder + slashed).split("/")) {
      if (step.equals("..")) {
        path.pollLast();
      } else if (!step.isEmpty() && !step.equals(".")) {
        path.addLast(step);
      }
    }
    return String.join("/", path);
  }

  Optional<Relation> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** Whether a pointer leads out of the package. */
  boolean leadsOutside(String id) {
    return outside.contains(id);
  }

  /** The first target of a type. */
  Optional<String> target(String type) {
    return byId.values().stream()
        .filter(relation -> relation.type().equals(type))
        .map(Relation::target)
        .findFirst();
  }
}
