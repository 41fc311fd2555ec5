package clenchbook;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasModifiers.Predicates.modifier;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noCodeUnits;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.CompositeArchRule;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Which part of the program may use which. The core touches no file, clock, locale, environment,
 * spreadsheet or PDF library. That each rule refuses what it forbids is seen in {@link
 * PlantedFaultTest}.
 */
class LayerTest {
  /** The core from the bottom up: a part may use those before it. */
  static final List<String> ORDER =
      List.of(
          "values",
          "texts",
          "statistics",
          "backup",
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
          "matching",
          "reports.month",
          "tax");

  static final List<String> SHELL =
      List.of(
          "reading", "bankfiles", "writing", "print", "register", "delivery", "commands", "cli");

  private static final String[] CORE = packages(ORDER);

  private static final String[] GUESSING = {"clenchbook.reading.proposal.."};

  private static String[] packages(List<String> parts) {
    return parts.stream().map(part -> "clenchbook." + part + "..").toArray(String[]::new);
  }

  /** A shell part that may know another beside its own. */
  private static final Map<String, List<String>> KNOWN = Map.of("writing", List.of("reading"));

  /** The parts in which an amount may be: nothing in them is binary floating point. */
  private static final String[] MONEY =
      packages(List.of("values.money", "book", "jobs", "costing", "billing", "tax"));

  static List<String> known(String part) {
    return KNOWN.getOrDefault(part, List.of());
  }

  private static final int MOST_TYPES_IN_A_PACKAGE = 30;

  private static JavaClasses classes;

  @BeforeAll
  static void read() {
    classes = mainClasses();
  }

  static JavaClasses mainClasses() {
    // The place of one main class is the place of all of them, and of no test.
    return new ClassFileImporter()
        .importUrl(
            clenchbook.cli.Clenchbook.class.getProtectionDomain().getCodeSource().getLocation());
  }

  /** Every rule by its name. */
  static Map<String, ArchRule> rules() {
    Map<String, ArchRule> rules = new LinkedHashMap<>();
    rules.put("the core uses no outside library of the shell", coreUsesNoOutsideLibrary());
    rules.put("the core asks nothing of the machine", coreAsksNothingOfTheMachine(CORE));
    rules.put("guesses of headings touch no file and ask nothing of the machine", guessing());
    for (int place = 0; place < ORDER.size() - 1; place++) {
      rules.put(
          ORDER.get(place) + " uses only what is beneath it",
          noClasses()
              .that(resideInAnyPackage("clenchbook." + ORDER.get(place) + ".."))
              .should()
              .dependOnClassesThat(
                  resideInAnyPackage(packages(ORDER.subList(place + 1, ORDER.size())))));
    }
    rules.put("no two packages use each other", noTwoPackagesUseEachOther());
    rules.put(
        "the core knows nothing of the shell",
        noClasses()
            .that(resideInAnyPackage(CORE))
            .should()
            .dependOnClassesThat(resideInAnyPackage(packages(SHELL))));
    for (String part : SHELL.subList(0, SHELL.size() - 2)) {
      List<String> others = new ArrayList<>(SHELL);
      others.remove(part);
      others.removeAll(known(part));
      rules.put(
          part + " knows no other part of the shell",
          noClasses()
              .that(resideInAnyPackage("clenchbook." + part + ".."))
              .should()
              .dependOnClassesThat(resideInAnyPackage(packages(others))));
    }
    rules.put(
        "only the register speaks to a database",
        noClasses()
            .that(DescribedPredicate.not(resideInAnyPackage("clenchbook.register..")))
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..")));
    rules.put(
        "only delivery speaks to a network",
        noClasses()
            .that(DescribedPredicate.not(resideInAnyPackage("clenchbook.delivery..")))
            .should()
            .dependOnClassesThat(
                resideInAnyPackage("java.net..", "javax.net..", "jakarta.mail..", "java.rmi..")
                    .or(
                        describe(
                            "channels to other machines",
                            type ->
                                type.getPackageName().equals("java.nio.channels")
                                    && type.getSimpleName()
                                        .matches("\\w*(Socket|Datagram)Channel")))));
    rules.put(
        "the register hands out no part of the database",
        noCodeUnits()
            .that()
            .arePublic()
            .and()
            .areDeclaredInClassesThat(
                resideInAnyPackage("clenchbook.register..").and(modifier(JavaModifier.PUBLIC)))
            .should(speakOfTheDatabase()));
    rules.put(
        "only the command line ends the process",
        noClasses()
            .that(DescribedPredicate.not(resideInAnyPackage("clenchbook.cli..")))
            .should()
            .callMethod(System.class, "exit", int.class));
    rules.put(
        "a country is known only in its own room and where regimes are listed",
        noClasses()
            .that(
                DescribedPredicate.not(
                    resideInAnyPackage("clenchbook.tax.jurisdiction..")
                        .or(
                            describe(
                                "the list of regimes",
                                type -> type.getSimpleName().equals("Jurisdictions")))))
            .should()
            .dependOnClassesThat(resideInAnyPackage("clenchbook.tax.jurisdiction.*..")));
    rules.put(
        "money is never a binary fraction",
        classes().that(resideInAnyPackage(MONEY)).should(new NoBinaryFractions()));
    rules.put("no package is a hall", classes().should(new NoHalls(MOST_TYPES_IN_A_PACKAGE)));
    return rules;
  }

  @TestFactory
  Stream<DynamicTest> every_rule_holds() {
    return rules().entrySet().stream()
        .map(rule -> DynamicTest.dynamicTest(rule.getKey(), () -> rule.getValue().check(classes)));
  }

  /** A room of the shell that decides: contents in, proposals out. */
  private static ArchRule guessing() {
    return CompositeArchRule.of(coreAsksNothingOfTheMachine(GUESSING))
        .and(
            noClasses()
                .that(resideInAnyPackage(GUESSING))
                .should()
                .dependOnClassesThat(
                    resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.sql..")
                        .or(
                            describe(
                                "what opens files",
                                type ->
                                    Set.of("TableFile", "TableSource")
                                        .contains(type.getSimpleName())))));
  }

  private static ArchRule coreUsesNoOutsideLibrary() {
    return noClasses()
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
  }

  private static ArchRule coreAsksNothingOfTheMachine(String... rooms) {
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
    return noClasses().that(resideInAnyPackage(rooms)).should().accessTargetWhere(asks);
  }

  private static ArchCondition<JavaCodeUnit> speakOfTheDatabase() {
    DescribedPredicate<JavaClass> database =
        resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..");
    return ArchCondition.from(
        describe(
            "take or return a part of the database",
            (JavaCodeUnit unit) ->
                database.test(unit.getRawReturnType())
                    || unit.getRawParameterTypes().stream().anyMatch(database)));
  }

  private static ArchRule noTwoPackagesUseEachOther() {
    return SlicesRuleDefinition.slices()
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
        .beFreeOfCycles();
  }
}
