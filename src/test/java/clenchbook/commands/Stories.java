package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Walks the stories of docs/when-something-went-wrong.md: types every command that stands there, in
 * its order, and looks for every line that is quoted.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class Stories {
  private static final Path PAGE = Path.of("docs/when-something-went-wrong.md");
  private static final String VISITS =
      "Date,Owner,Horse,Work,Charge,Reason\n2026-10-05,Anna Alder,Bess,Trim,,\n"
          + "2026-10-06,Ben Birch,Jet,Full set,,\n2026-10-07,Cora Cole,Dot,Trim,,\n"
          + "2026-10-08,Dan Dorn,Star,Trim,,\n";
  private static final String SETTINGS =
      "Setting,Value\nBusiness name,Alder Farriery\nCountry,GB\nCurrency,GBP\nLanguage,en\n"
          + "From address,office@alder.example\nPayment text,Please pay within 14 days.\n";
  private static final String PAYMENTS = "Date,Owner,Amount,Invoice,Kind\n";

  @TempDir private static Path octoberIsOut;
  @TempDir private Path folder;

  /** A command, and the lines that are quoted of its answer. */
  private record Quote(List<String> words, List<String> lines) {}

  /** What the farrier does before a command. */
  private interface Deed {
    void happen() throws IOException;
  }

  private static final Deed NOTHING = () -> {};

  /** Runs a command over a book, as it is typed. */
  abstract Typed typed(String command, Path book, String... options) throws IOException;

  @BeforeAll
  void october_is_out() throws IOException {
    Path book = Files.createDirectories(octoberIsOut.resolve("mybook"));
    Files.writeString(book.resolve("Settings.csv"), SETTINGS);
    Files.writeString(book.resolve("Work.csv"), "Work,Price\nTrim,45\nFull set,110\n");
    Files.writeString(
        book.resolve("Owners.csv"),
        "Owner,Email\nAnna Alder,anna@stable.example\nBen Birch,ben@stable.example\n"
            + "Cora Cole,cora@stable.example\nDan Dorn,dan@stable.example\n");
    Files.writeString(book.resolve("Payments.csv"), PAYMENTS);
    Files.writeString(book.resolve("Visits.csv"), VISITS);
    assertEquals(0, typed("month-end", book, "--month", "2026-10").exit());
    Files.copy(octoberIsOut.resolve("mybook.register.db"), octoberIsOut.resolve("before sending"));
    assertEquals(0, typed("send", book, "--month", "2026-10").exit());
  }

  @BeforeEach
  void the_book_as_it_was_then() throws IOException {
    copy(octoberIsOut, folder);
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : all.toList()) {
        Path target = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(target);
        } else {
          Files.copy(path, target);
        }
      }
    }
  }

  private void sheet(String name, String text) throws IOException {
    Files.writeString(folder.resolve("mybook").resolve(name + ".csv"), text);
  }

  private void visits(String from, String to) throws IOException {
    assertTrue(VISITS.contains(from), from);
    sheet("Visits", VISITS.replace(from, to));
  }

  private Deed moreVisits(String rows) {
    return () -> sheet("Visits", VISITS + rows);
  }

  private String file(String name) throws IOException {
    return Files.readString(folder.resolve("mybook reports").resolve(name));
  }

  /** Types the commands of a story, each after what is done before it. */
  private void walk(int story, Deed... before) throws IOException {
    List<Quote> quotes = quotes().getOrDefault(story, List.of());
    assertEquals(before.length, quotes.size(), "commands of story " + story);
    for (int turn = 0; turn < before.length; turn++) {
      before[turn].happen();
      Quote quote = quotes.get(turn);
      List<String> said = type(quote.words());
      int at = -1;
      for (String line : quote.lines()) {
        int found = said.subList(at + 1, said.size()).indexOf(line);
        assertTrue(found >= 0, quote.words() + " did not say: " + line + "\nbut " + said);
        at += found + 1;
      }
    }
  }

  private List<String> type(List<String> words) throws IOException {
    Path book = folder.resolve(words.get(1).replace(".xlsx", ""));
    List<String> options = new ArrayList<>(words.subList(2, words.size()));
    for (String place : List.of("--out", "--to")) {
      int at = options.indexOf(place);
      if (at >= 0) {
        options.set(at + 1, folder.resolve(options.get(at + 1)).toString());
      }
    }
    if (words.get(0).equals("restore")) {
      options.set(0, folder.resolve(options.get(0)).toString());
    }
    Typed run = typed(words.get(0), book, options.toArray(String[]::new));
    return (run.out() + run.err()).replace(folder + "/", "").lines().toList();
  }

  private static Map<Integer, List<Quote>> quotes() throws IOException {
    Map<Integer, List<Quote>> stories = new TreeMap<>();
    for (String section : Files.readString(PAGE).split("\n(?=## )")) {
      if (section.startsWith("## ")) {
        int story = Integer.parseInt(section.substring(3, section.indexOf('.')));
        stories.put(
            story,
            Pattern.compile("^```\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE)
                .matcher(section)
                .results()
                .map(MatchResult::group)
                .flatMap(block -> commands(block).stream())
                .toList());
      }
    }
    return stories;
  }

  private static List<Quote> commands(String block) {
    List<Quote> commands = new ArrayList<>();
    for (String command :
        block.replace("```\n", "").replace("```", "").split("(?m)^\\$ clenchbook ")) {
      if (!command.isBlank()) {
        List<String> lines = command.lines().toList();
        commands.add(new Quote(List.of(lines.get(0).split(" ")), lines.subList(1, lines.size())));
      }
    }
    return commands;
  }

  @Test
  void a_wrong_price_was_sent() throws IOException {
    walk(1, () -> visits("Bess,Trim,,", "Bess,Trim,55,"), NOTHING, NOTHING);
  }

  @Test
  void a_visit_was_forgotten() throws IOException {
    Path later = folder.resolve("later");
    walk(
        2,
        moreVisits("2026-10-14,Ben Birch,Jet,Trim,,\n"),
        () -> copy(folder.resolve("mybook.register.db"), later),
        NOTHING,
        () -> {
          Files.delete(folder.resolve("mybook.register.db"));
          copy(later, folder.resolve("mybook.register.db"));
        },
        NOTHING);
  }

  @Test
  void a_visit_was_billed_twice() throws IOException {
    String once = "2026-11-04,Cora Cole,Dot,Trim,,\n";
    moreVisits(once + once).happen();
    List<String> run = List.of("month-end", "mybook.xlsx", "--month", "2026-11");
    type(run);
    assertTrue(file("2026-11/problems.csv").contains(",duplicate visit"));
    type(List.of("send", "mybook.xlsx", "--month", "2026-11"));
    walk(3, moreVisits(once), NOTHING);
  }

  @Test
  void a_row_was_deleted() throws IOException {
    walk(
        4,
        () -> visits("2026-10-07,Cora Cole,Dot,Trim,,\n", ""),
        () -> sheet("Visits", VISITS),
        NOTHING);
    assertTrue(file("2026-11/figures/invoices.csv").contains("0.00,0.00,0.00,void,credit note"));
  }

  @Test
  void a_horse_was_sold() throws IOException {
    String row = "2026-10-08,Dan Dorn,Star,Trim,,";
    walk(
        5,
        () -> {
          sheet(
              "Horses",
              "Horse,Owner,From,Until\nStar,Dan Dorn,,2026-09-30\nStar,Eve Elm,2026-10-01,\n");
          visits(row, "2026-10-08,,Star,Trim,,");
        },
        NOTHING,
        () -> visits(row, "2026-10-08,,Star,Trim,,cancelled"),
        NOTHING,
        () -> visits(row, "2026-10-08,,Star,Trim,,"),
        NOTHING);
    String balances = file("2026-10/figures/balances.csv");
    assertTrue(balances.contains("Dan Dorn,0.00,0.00,0.00,0.00,"), balances);
    assertTrue(balances.contains("Eve Elm,0.00,45.00,0.00,45.00,"), balances);
  }

  @Test
  void an_owner_paid_too_much() throws IOException {
    String paid = PAYMENTS + "2026-11-10,Ben Birch,150,2026-0002,\n";
    walk(6, () -> sheet("Payments", paid));
    assertTrue(
        file("2026-11/figures/balances.csv").contains("Ben Birch,110.00,0.00,150.00,-40.00,"));
    assertTrue(file("2026-11/index.html").contains("£40.00 of credit taken off"));
    sheet("Payments", paid + "2026-11-28,Ben Birch,40,,refund\n");
    type(List.of("month-end", "mybook.xlsx", "--month", "2026-11"));
    assertTrue(file("2026-11/figures/balances.csv").contains("Ben Birch,110.00,0.00,110.00,0.00,"));
  }

  @Test
  void another_computer() throws IOException {
    walk(
        7,
        NOTHING,
        NOTHING,
        NOTHING,
        NOTHING,
        () -> {
          String invoice = "mybook reports/2026-10/invoices/2026-0002 Ben Birch.pdf";
          assertArrayEquals(
              Files.readAllBytes(folder.resolve(invoice)),
              Files.readAllBytes(folder.resolve("laptop").resolve(invoice)));
          Files.delete(folder.resolve("laptop/mybook.register.db"));
          Files.move(folder.resolve("laptop/mybook reports"), folder.resolve("behind too"));
        });
  }

  @Test
  void the_register_is_lost() throws IOException {
    walk(
        8,
        () -> {
          Files.delete(folder.resolve("mybook.register.db"));
          moreVisits("2026-11-14,Ben Birch,Jet,Trim,,\n").happen();
        },
        () -> Files.copy(folder.resolve("before sending"), folder.resolve("mybook.register.db")),
        NOTHING,
        () -> {
          Files.delete(folder.resolve("mybook.register.db"));
          sheet("Settings", SETTINGS + "Next invoice number,5\nOpening date,2026-11-01\n");
          sheet("Owners", "Owner,Opening balance\nAnna Alder,45\nBen Birch,110\n");
        },
        NOTHING);
    assertTrue(
        file("2026-11/figures/balances.csv").contains("Ben Birch,110.00,45.00,0.00,155.00,"));
  }

  @Test
  void the_book_was_renamed() throws IOException {
    walk(
        9,
        () -> Files.move(folder.resolve("mybook"), folder.resolve("shoeing")),
        () ->
            Files.move(
                folder.resolve("mybook.register.db"), folder.resolve("shoeing.register.db")));
  }

  @Test
  void an_owner_was_renamed() throws IOException {
    String now = Files.readString(folder.resolve("mybook/Owners.csv")).replace("Alder", "Archer");
    sheet("Owners", now);
    moreVisits("2026-11-09,Anna Archer,Bess,Trim,,\n").happen();
    type(List.of("month-end", "mybook.xlsx", "--month", "2026-11"));
    assertTrue(file("2026-11/problems.csv").contains(",owner renamed"));
    String balances = file("2026-11/figures/balances.csv");
    assertTrue(balances.contains("Anna Alder,45.00,0.00,0.00,45.00,"), balances);
    assertTrue(balances.contains("Anna Archer,0.00,45.00,0.00,45.00,"), balances);
    walk(
        10,
        NOTHING,
        () ->
            sheet(
                "Owners",
                now.replace("Email\n", "Email,Formerly\n")
                    .replace("anna@stable.example", "anna@stable.example,Anna Alder")),
        NOTHING);
    assertTrue(
        file("2026-11/figures/balances.csv").contains("Anna Archer,45.00,45.00,0.00,90.00,"));
    assertTrue(
        Files.exists(folder.resolve("mybook reports/2026-10/invoices/2026-0001 Anna Alder.pdf")));
  }
}
