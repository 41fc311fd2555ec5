package clenchbook;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The core touches no file, clock, locale, environment, spreadsheet or PDF library. */
class LayerTest {
  private static final String[] CORE = {
    "clenchbook.money..",
    "clenchbook.measure..",
    "clenchbook.problem..",
    "clenchbook.book..",
    "clenchbook.job..",
    "clenchbook.charge..",
    "clenchbook.rates..",
    "clenchbook.costing..",
    "clenchbook.comparison..",
    "clenchbook.workload..",
    "clenchbook.stock..",
    "clenchbook.duelist..",
    "clenchbook.billing..",
    "clenchbook.yearend..",
    "clenchbook.report..",
    "clenchbook.month.."
  };

  /** From the bottom up: a package may use those before it. */
  private static final List<String> ORDER =
      List.of(
          "measure",
          "money",
          "problem",
          "book",
          "report",
          "job",
          "rates",
          "charge",
          "duelist",
          "stock",
          "costing",
          "comparison",
          "workload",
          "billing",
          "month",
          "yearend");

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
  void every_core_package_uses_only_those_beneath_it() {
    for (int place = 0; place < ORDER.size(); place++) {
      String[] above =
          ORDER.subList(place + 1, ORDER.size()).stream()
              .map(name -> "clenchbook." + name + "..")
              .toArray(String[]::new);
      if (above.length > 0) {
        noClasses()
            .that(resideInAnyPackage("clenchbook." + ORDER.get(place) + ".."))
            .should()
            .dependOnClassesThat(resideInAnyPackage(above))
            .check(classes);
      }
    }
  }

  @Test
  void the_core_knows_nothing_of_the_shell() {
    noClasses()
        .that(resideInAnyPackage(CORE))
        .should()
        .dependOnClassesThat(
            resideInAnyPackage(
                "clenchbook.workbook..",
                "clenchbook.ratefiles..",
                "clenchbook.document..",
                "clenchbook.register..",
                "clenchbook.delivery..",
                "clenchbook.run..",
                "clenchbook.cli.."))
        .check(classes);
  }

  @Test
  void only_run_and_cli_know_the_other_shell_packages() {
    String[] parts = {"workbook", "ratefiles", "document", "delivery"};
    for (String part : parts) {
      DescribedPredicate<JavaClass> others =
          resideInAnyPackage(
              "clenchbook.workbook..",
              "clenchbook.ratefiles..",
              "clenchbook.document..",
              "clenchbook.register..",
              "clenchbook.delivery..",
              "clenchbook.run..",
              "clenchbook.cli..");
      DescribedPredicate<JavaClass> own = resideInAnyPackage("clenchbook." + part + "..");
      noClasses()
          .that(own)
          .should()
          .dependOnClassesThat(others.and(DescribedPredicate.not(own)))
          .check(classes);
    }
  }

  @Test
  void money_is_never_a_double() {
    noClasses()
        .that(
            resideInAnyPackage(
                "clenchbook.money..",
                "clenchbook.book..",
                "clenchbook.job..",
                "clenchbook.charge..",
                "clenchbook.costing..",
                "clenchbook.billing..",
                "clenchbook.yearend.."))
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
