package clenchbook;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchPredicates.are;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The flow is one way, the core touches nothing outside itself, and the build says so. */
@AnalyzeClasses(packages = "clenchbook", importOptions = LayersTest.ProgramOnly.class)
class LayersTest {
  /** Leaves the tests out, wherever the build puts them. */
  static final class ProgramOnly implements ImportOption {
    @Override
    public boolean includes(Location location) {
      return !location.contains("/test-classes/") && !location.contains("/test/");
    }
  }

  private static final String[] CORE = {
    "clenchbook.money..",
    "clenchbook.measure..",
    "clenchbook.problem..",
    "clenchbook.book..",
    "clenchbook.job..",
    "clenchbook.charge..",
    "clenchbook.rates..",
    "clenchbook.stock..",
    "clenchbook.costing..",
    "clenchbook.comparison..",
    "clenchbook.workload..",
    "clenchbook.duelist..",
    "clenchbook.billing..",
    "clenchbook.yearend..",
    "clenchbook.report..",
    "clenchbook.month.."
  };

  private static final String[] SHELL = {
    "clenchbook.workbook..",
    "clenchbook.ratefiles..",
    "clenchbook.document..",
    "clenchbook.delivery..",
    "clenchbook.register..",
    "clenchbook.run..",
    "clenchbook.cli.."
  };

  /** Packages whose every figure is money or a count: no binary fraction may stand in them. */
  private static final String[] EXACT = {
    "clenchbook.money..",
    "clenchbook.book..",
    "clenchbook.job..",
    "clenchbook.charge..",
    "clenchbook.costing..",
    "clenchbook.billing..",
    "clenchbook.yearend.."
  };

  @ArchTest
  static final ArchRule every_class_is_core_or_shell =
      classes().should().resideInAnyPackage(join(CORE, SHELL));

  @ArchTest
  static final ArchRule the_core_knows_no_shell =
      noClasses()
          .that()
          .resideInAnyPackage(CORE)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(SHELL);

  @ArchTest
  static final ArchRule the_core_touches_no_file_network_database_or_document_library =
      noClasses()
          .that()
          .resideInAnyPackage(CORE)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.io..",
              "java.nio.file..",
              "java.nio.channels..",
              "java.net..",
              "java.sql..",
              "javax.swing..",
              "org.apache.poi..",
              "org.apache.commons.csv..",
              "net.sf.jasperreports..",
              "com.lowagie..",
              "com.github.librepdf..",
              "org.jfree..",
              "org.apache.batik..",
              "com.google.zxing..",
              "jakarta.mail..",
              "org.sqlite..",
              "picocli..");

  @ArchTest
  static final ArchRule the_core_reads_no_clock_locale_environment_or_terminal =
      noClasses()
          .that()
          .resideInAnyPackage(CORE)
          .should()
          .callMethodWhere(asksTheMachine())
          .orShould()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");

  /** The register keeps the ledger that delivery asks for, so it alone may see delivery's terms. */
  @ArchTest
  static void only_run_and_cli_know_other_shell_packages(JavaClasses program) {
    List<String> parts = List.of("workbook", "ratefiles", "document", "delivery", "register");
    for (String part : parts) {
      String[] others =
          java.util.stream.Stream.concat(parts.stream(), java.util.stream.Stream.of("run", "cli"))
              .filter(other -> !other.equals(part))
              .filter(other -> !part.equals("register") || !other.equals("delivery"))
              .map(other -> "clenchbook." + other + "..")
              .toArray(String[]::new);
      noClasses()
          .that()
          .resideInAPackage("clenchbook." + part + "..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(others)
          .check(program);
    }
  }

  @ArchTest
  static final ArchRule packages_go_round_in_no_circle =
      SlicesRuleDefinition.slices().matching("clenchbook.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule only_the_command_line_ends_the_process =
      noClasses()
          .that()
          .resideOutsideOfPackage("clenchbook.cli..")
          .should()
          .callMethod(System.class, "exit", int.class);

  @ArchTest
  static final ArchRule money_is_never_a_binary_fraction =
      fields()
          .that()
          .areDeclaredInClassesThat(are(resideInAnyPackage(EXACT)))
          .should()
          .notHaveRawType(double.class)
          .andShould()
          .notHaveRawType(float.class)
          .andShould()
          .notHaveRawType(Double.class);

  private static String[] join(String[] one, String[] other) {
    return java.util.stream.Stream.of(one, other)
        .flatMap(java.util.Arrays::stream)
        .toArray(String[]::new);
  }

  private static DescribedPredicate<JavaMethodCall> asksTheMachine() {
    return DescribedPredicate.describe(
        "ask the clock, the locale, the zone or the environment",
        call -> machine(call.getTarget()));
  }

  private static boolean machine(AccessTarget target) {
    String owner = target.getOwner().getName();
    String method = target.getName();
    boolean now = owner.startsWith("java.time.") && Set.of("now", "systemDefault").contains(method);
    boolean locale = owner.equals(Locale.class.getName()) && method.equals("getDefault");
    boolean system =
        owner.equals("java.lang.System")
            && Set.of("getenv", "getProperty", "currentTimeMillis", "nanoTime").contains(method);
    boolean random = owner.equals("java.lang.Math") && method.equals("random");
    return now || locale || system || random;
  }
}
