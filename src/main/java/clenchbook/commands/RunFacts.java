package clenchbook.commands;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.commands.opening.OpenBook;
import clenchbook.problem.Problem;
import clenchbook.problem.Severity;
import clenchbook.reports.month.BookFigures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What {@code run.json} says before the list of files. */
final class RunFacts {
  private RunFacts() {}

  /** The version of the program, from its jar; empty when it runs from classes. */
  static String version() {
    String version = RunFacts.class.getPackage().getImplementationVersion();
    return version == null ? "" : version;
  }

  static Map<String, Object> of(String command, Map<String, Object> asked, OpenBook open) {
    Map<String, Object> facts = new LinkedHashMap<>();
    facts.put("program", "clenchbook");
    facts.put("version", version());
    facts.put("command", command);
    facts.putAll(asked);
    facts.put("workbook_sha256", open.sha256());
    open.understood().headingsFile().ifPresent(name -> facts.put("headings", name));
    settings(facts, open.book().settings());
    facts.put("counts", counts(open));
    return facts;
  }

  private static void settings(Map<String, Object> facts, Settings settings) {
    Map<String, Object> inForce = new LinkedHashMap<>();
    List<String> defaults = new ArrayList<>();
    for (Setting setting : Setting.values()) {
      String value = settings.text(setting);
      if (settings.isGiven(setting)) {
        inForce.put(setting.title(), value);
      } else if (!value.isEmpty()) {
        inForce.put(setting.title(), value);
        defaults.add(setting.title());
      }
    }
    facts.put("settings", inForce);
    facts.put("defaults", defaults);
  }

  private static Map<String, Object> counts(OpenBook open) {
    Map<String, Object> counts = new LinkedHashMap<>();
    open.book()
        .controls()
        .forEach(
            control -> {
              int held = BookFigures.held(control.sheet(), open.problems());
              Map<String, Object> rows = new LinkedHashMap<>();
              rows.put("rows", control.rows());
              rows.put("used", control.rows() - held - control.ignored());
              rows.put("held", held);
              rows.put("ignored", control.ignored());
              counts.put(control.sheet(), rows);
            });
    for (Severity severity : Severity.values()) {
      counts.put("problems " + severity.word(), count(open.problems(), severity));
    }
    return counts;
  }

  private static long count(List<Problem> problems, Severity severity) {
    return problems.stream().filter(problem -> problem.severity() == severity).count();
  }
}
