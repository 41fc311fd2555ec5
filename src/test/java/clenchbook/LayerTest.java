package clenchbook;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The core touches no file, clock, locale, environment, spreadsheet or PDF library. */
class LayerTest {
  /** The core from the bottom up: a part may use those before it. */
  private static final List<String> ORDER =
      List.of(
          "values",
          "statistics",
          "problem",
          "book",
          "reports.blocks",
          "reports.letters",
          "jobs",
          "schedule",
          "stock",
          "costing",
          "comparison",
          "workload",
          "billing",
          "einvoice",
          "reports.month",
          "tax");

  private static final List<String> SHELL =
      List.of("reading", "writing", "print", "register", "delivery", "commands", "cli");

  private static final String[] CORE = packages(ORDER);

  private static String[] packages(List<String> parts) {
    return parts.stream().map(part -> "clenchbook." + part + "..").toArray(String[]::new);
  }

  private static JavaClasses classes;

  @BeforeAll
  static void read() {
    // The place of one main class is the place of all of them, and of no test.
    classes =
        new ClassFileImporter()
            .importUrl(
                clenchbook.cli.Clenchbook.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation());
  }

  @Test
  void the_core_uses_no_file_network_database_spreadsheet_pdf_or_mail_library() {
    ArchRule rule =
        noClasses()
            .that(resideInAnyPackage(CORE))
            .should()
            .dependOnClassesThat(
                resideInAnyPackage(
                    "java.io..",
                    "java.nio.file..",
                    "java.nio.channels..",
                    "java.net..",
                    "java.sql..",
                    "javax.sql..",
                    "java.awt..",
                    "org.apache.poi..",
                    "org.apache.commons.csv..",
                    "com.fasterxml..",
                    "net.sf.jasperreports..",
                    "com.lowagie..",
                    "org.jfree..",
                    "org.apache.batik..",
                    "org.sqlite..",
                    "jakarta..",
                    "picocli.."));
    rule.check(classes);
  }

  @Test
  void the_core_asks_no_clock_locale_zone_or_environment() {
    Set<String> machine =
        Set.of(
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.lang.System.getenv",
            "java.lang.System.getProperty",
            "java.util.Locale.getDefault",
            "java.util.TimeZone.getDefault",
            "java.time.ZoneId.systemDefault",
            "java.lang.Math.random",
            "java.util.UUID.randomUUID");
    DescribedPredicate<JavaAccess<?>> asks =
        new DescribedPredicate<>("ask the machine") {
          @Override
          public boolean test(JavaAccess<?> access) {
            String owner = access.getTargetOwner().getName();
            String name = owner + "." + access.getName();
            boolean now = owner.startsWith("java.time.") && access.getName().equals("now");
            boolean chance =
                owner.equals("java.util.Random")
                    && access.getName().equals("<init>")
                    && access.getTarget().getFullName().endsWith("()");
            boolean stream =
                owner.equals("java.lang.System")
                    && Set.of("out", "err", "in").contains(access.getName());
            return machine.contains(name) || now || chance || stream;
          }
        };
    noClasses().that(resideInAnyPackage(CORE)).should().accessTargetWhere(asks).check(classes);
  }

  @Test
  void every_core_part_uses_only_those_beneath_it() {
    for (int place = 0; place < ORDER.size() - 1; place++) {
      noClasses()
          .that(resideInAnyPackage("clenchbook." + ORDER.get(place) + ".."))
          .should()
          .dependOnClassesThat(resideInAnyPackage(packages(ORDER.subList(place + 1, ORDER.size()))))
          .check(classes);
    }
  }

  @Test
  void no_two_packages_use_each_other() {
    SlicesRuleDefinition.slices()
        .assignedFrom(
            new SliceAssignment() {
              @Override
              public SliceIdentifier getIdentifierOf(JavaClass type) {
                return SliceIdentifier.of(type.getPackageName());
              }

              @Override
              public String getDescription() {
                return "each package";
              }
            })
        .should()
        .beFreeOfCycles()
        .check(classes);
  }

  @Test
  void the_core_knows_nothing_of_the_shell() {
    noClasses()
        .that(resideInAnyPackage(CORE))
        .should()
        .dependOnClassesThat(resideInAnyPackage(packages(SHELL)))
        .check(classes);
  }

  @Test
  void only_commands_and_cli_know_the_other_parts_of_the_shell() {
    Map<String, List<String>> known =
        Map.of("writing", List.of("reading"), "register", List.of("delivery"));
    for (String part : SHELL.subList(0, SHELL.size() - 2)) {
      List<String> others = new ArrayList<>(SHELL);
      others.remove(part);
      others.removeAll(known.getOrDefault(part, List.of()));
      noClasses()
          .that(resideInAnyPackage("clenchbook." + part + ".."))
          .should()
          .dependOnClassesThat(resideInAnyPackage(packages(others)))
          .check(classes);
    }
  }

  @Test
  void money_is_never_a_double() {
    noClasses()
        .that(
            resideInAnyPackage(
                "clenchbook.values.money..",
                "clenchbook.book..",
                "clenchbook.jobs..",
                "clenchbook.costing..",
                "clenchbook.billing..",
                "clenchbook.tax.."))
        .should()
        .dependOnClassesThat(
            new DescribedPredicate<JavaClass>("are binary floating point") {
              @Override
              public boolean test(JavaClass type) {
                return Set.of("double", "float", "java.lang.Double", "java.lang.Float")
                    .contains(type.getName());
              }
            })
        .check(classes);
  }
}
