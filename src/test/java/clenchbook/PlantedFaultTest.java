package clenchbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Each rule of {@link LayerTest} refuses what it forbids: the fault is planted, and it is seen. */
class PlantedFaultTest {
  @TempDir Path folder;

  /** For each rule the sources that break it, by the name of the type. */
  private static Map<String, List<Map<String, String>>> faults() {
    Map<String, List<Map<String, String>>> faults = new LinkedHashMap<>();
    faults.put(
        "the core uses no outside library of the shell",
        List.of(
            planted("billing.Planted", "java.nio.file.Path place;"),
            planted("tax.Planted", "java.awt.Color colour;"),
            planted("values.Planted", "java.sql.Date day;")));
    faults.put(
        "the core asks nothing of the machine",
        List.of(
            planted("jobs.Planted", "Object a = java.time.LocalDate.now();"),
            planted("book.Planted", "Object a = java.util.Locale.getDefault();"),
            planted("stock.Planted", "Object a = System.getenv(\"HOME\");"),
            planted("reports.month.Planted", "Object a = new java.util.Random();"),
            planted("costing.Planted", "Object a = System.out;")));
    faults.put(
        "guesses of headings touch no file and ask nothing of the machine",
        List.of(
            planted("reading.proposal.Planted", "java.nio.file.Path place;"),
            planted("reading.proposal.Planted", "Object a = java.util.Locale.getDefault();"),
            planted("reading.proposal.Planted", "Object a = new java.util.Random();")));
    for (int place = 0; place < LayerTest.ORDER.size() - 1; place++) {
      String lower = LayerTest.ORDER.get(place);
      String upper = LayerTest.ORDER.get(place + 1);
      faults.put(
          lower + " uses only what is beneath it",
          List.of(
              both(
                  planted(lower + ".Planted", "clenchbook." + upper + ".Above above;"),
                  planted(upper + ".Above", ""))));
    }
    faults.put(
        "no two packages use each other",
        List.of(
            both(
                planted("print.one.Planted", "clenchbook.print.two.Other other;"),
                planted("print.two.Other", "clenchbook.print.one.Planted back;"))));
    faults.put(
        "the core knows nothing of the shell",
        List.of(
            both(
                planted("schedule.Planted", "clenchbook.print.Page page;"),
                planted("print.Page", ""))));
    for (String part : LayerTest.SHELL.subList(0, LayerTest.SHELL.size() - 2)) {
      List<Map<String, String>> uses = new ArrayList<>();
      for (String other : LayerTest.SHELL) {
        if (!LayerTest.known(part).contains(other) && !other.equals(part)) {
          uses.add(
              both(
                  planted(part + ".Planted", "clenchbook." + other + ".Other other;"),
                  planted(other + ".Other", "")));
        }
      }
      faults.put(part + " knows no other part of the shell", uses);
    }
    faults.put(
        "only the register speaks to a database",
        List.of(planted("commands.Planted", "java.sql.Connection connection;")));
    faults.put(
        "only delivery speaks to a network",
        List.of(
            planted("cli.Planted", "java.net.http.HttpClient client;"),
            planted("print.Planted", "Object a = java.net.URI.create(\"https://a.example\");"),
            planted("commands.Planted", "java.nio.channels.SocketChannel channel;"),
            planted("reading.Planted", "javax.net.ssl.SSLSocket socket;")));
    faults.put(
        "the register hands out no part of the database",
        List.of(
            planted("register.Planted", "public java.sql.Connection open() { return null; }"),
            planted("register.Planted", "public void take(java.sql.Statement statement) {}")));
    faults.put(
        "only the command line ends the process",
        List.of(planted("commands.Planted", "void end() { System.exit(1); }")));
    faults.put(
        "a country is known only in its own room and where regimes are listed",
        List.of(
            both(
                planted("tax.income.Planted", "clenchbook.tax.jurisdiction.xx.Country country;"),
                planted("tax.jurisdiction.xx.Country", ""))));
    faults.put(
        "money is never a binary fraction",
        List.of(
            planted("billing.Planted", "private double amount;"),
            planted("tax.Planted", "private float[] amounts;"),
            planted("jobs.charge.Planted", "double charge() { return 0; }"),
            planted("values.money.Planted", "void take(double amount) {}"),
            planted("costing.Planted", "Object a = java.math.BigDecimal.ONE.doubleValue() > 1;"),
            planted("book.Planted", "Object a = java.math.BigDecimal.valueOf(0.1);"),
            planted("tax.rates.Planted", "java.util.function.Supplier<Double> a; Double b;")));
    faults.put("no package is a hall", List.of(hall()));
    return faults;
  }

  private static Map<String, String> planted(String type, String member) {
    String name = type.substring(type.lastIndexOf('.') + 1);
    String room = "clenchbook." + type.substring(0, type.lastIndexOf('.'));
    return Map.of(
        type,
        "package "
            + room
            + "; public class "
            + name
            + " { public "
            + name
            + "() {} "
            + member
            + " }");
  }

  private static Map<String, String> both(Map<String, String> one, Map<String, String> other) {
    Map<String, String> all = new LinkedHashMap<>(one);
    all.putAll(other);
    return all;
  }

  private static Map<String, String> hall() {
    Map<String, String> all = new LinkedHashMap<>();
    for (int type = 0; type <= 30; type++) {
      all.putAll(planted("stock.hall.Planted" + type, ""));
    }
    return all;
  }

  @TestFactory
  Stream<DynamicTest> each_rule_sees_what_it_forbids() {
    Map<String, ArchRule> rules = LayerTest.rules();
    return faults().entrySet().stream()
        .map(
            fault ->
                DynamicTest.dynamicTest(
                    fault.getKey(),
                    () -> {
                      for (Map<String, String> sources : fault.getValue()) {
                        assertTrue(
                            rules
                                .get(fault.getKey())
                                .allowEmptyShould(true)
                                .evaluate(compiled(sources))
                                .hasViolation(),
                            "passes: " + sources);
                      }
                    }));
  }

  @Test
  void every_rule_has_its_planted_fault() {
    assertEquals(new TreeSet<>(LayerTest.rules().keySet()), new TreeSet<>(faults().keySet()));
  }

  @Test
  void what_is_allowed_is_not_refused() throws IOException {
    JavaClasses sound =
        compiled(planted("tax.Planted", "java.math.BigDecimal amount; int count; String word;"));
    LayerTest.rules()
        .forEach(
            (name, rule) ->
                assertFalse(rule.allowEmptyShould(true).evaluate(sound).hasViolation(), name));
  }

  private JavaClasses compiled(Map<String, String> sources) throws IOException {
    Path place = Files.createTempDirectory(folder, "planted");
    List<String> arguments = new ArrayList<>(List.of("-proc:none", "-d", place.toString()));
    for (Map.Entry<String, String> source : sources.entrySet()) {
      Path file = place.resolve(source.getKey().replace('.', '/') + ".java");
      Files.createDirectories(file.getParent());
      arguments.add(Files.writeString(file, source.getValue()).toString());
    }
    int outcome =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, arguments.toArray(String[]::new));
    assertEquals(0, outcome, () -> "does not compile: " + sources);
    return new ClassFileImporter().importPath(place);
  }
}
