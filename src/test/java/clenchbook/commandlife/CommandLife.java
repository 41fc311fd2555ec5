package clenchbook.commandlife;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.commands.Typed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * One book's life, typed at the command line: real files in, real files out, and after each command
 * a look at what was written. It knows nothing of the program but what stands in its contract.
 */
final class CommandLife {
  private static final List<YearMonth> ALL =
      List.of(
          FarriersBook.FIRST,
          FarriersBook.FIRST.plusMonths(1),
          FarriersBook.FIRST.plusMonths(2),
          FarriersBook.FIRST.plusMonths(3));

  private final Random random;
  private final BookOnDisk format;
  private final FarriersBook book;
  private final List<String> story = new ArrayList<>();
  private final IssuedSoFar issued = new IssuedSoFar();
  private Path folder;
  private List<Map<String, String>> documents = List.of();
  private String laidDown = "";
  private Map<String, List<List<Object>>> saved = Map.of();
  private int moves;

  CommandLife(long seed, Path folder) {
    this.random = new Random(seed);
    this.folder = folder.resolve("first computer");
    this.format = BookOnDisk.values()[(int) (seed % 3)];
    FarriersBook.Tax[] taxes = FarriersBook.Tax.values();
    this.book = new FarriersBook(random, taxes[(int) (seed / 3 % 3)]);
    story.add("seed " + seed + ", " + format);
  }

  void live(int length) throws IOException {
    Files.createDirectories(folder);
    try {
      for (int event = 0; event < length; event++) {
        happen();
      }
      settle();
    } catch (AssertionError fault) {
      throw new AssertionError(String.join("\n", story) + "\n" + fault.getMessage(), fault);
    }
  }

  private void happen() throws IOException {
    YearMonth month = book.anyMonth();
    switch (random.nextInt(10)) {
      case 0, 1 -> monthEnd(month, random.nextInt(3) == 0);
      case 2 -> monthEnd(month, true, "--include-earlier");
      case 3, 4 -> {
        monthEnd(month, false);
        send(month);
      }
      case 5 -> send(month);
      case 6 -> preview(month);
      case 7 -> correct(month);
      case 8 -> anotherComputer();
      default -> {}
    }
    for (int change = random.nextInt(4); change > 0; change--) {
      story.add("  " + book.change(numbers()));
      laidDown = "";
    }
  }

  private List<String> numbers() {
    return documents.stream().map(row -> row.getOrDefault("number", "")).toList();
  }

  private Path file() {
    return folder.resolve(format.fileName());
  }

  private Path reports() {
    return folder.resolve("mybook reports");
  }

  /** Files that are otherwise than before, or there only before or only now. */
  private Set<String> changed(Map<String, String> before) {
    Map<String, String> now = WrittenFiles.digests(reports());
    Set<String> names = new TreeSet<>(before.keySet());
    names.addAll(now.keySet());
    names.removeIf(name -> Objects.equals(before.get(name), now.get(name)));
    return names;
  }

  private Path register() {
    return folder.resolve("mybook.register.db");
  }

  /** Runs a command over the book as it is now; whatever comes, the book itself is left alone. */
  private Typed type(String command, YearMonth month, String... options) throws IOException {
    save();
    book.asks();
    List<String> words = new ArrayList<>(List.of("--month", month.toString()));
    words.addAll(List.of(options));
    // So few rows may well all have been deleted; RegisterGuardTest sees to other books' registers.
    words.add("--same-book");
    story.add(command + " " + words);
    Map<String, String> before = WrittenFiles.digests(file());
    Typed run = Typed.type(command, file(), words.toArray(String[]::new));
    assertEquals(before, WrittenFiles.digests(file()), "the book was written");
    assertFalse(run.all().matches("(?s).*(Exception|went wrong|\n\tat ).*"), run::all);
    return run;
  }

  /** Saves the book if it has changed; a spreadsheet notes the time in it. */
  private void save() throws IOException {
    Map<String, List<List<Object>>> now = book.sheets();
    if (!now.equals(saved)) {
      format.write(file(), now);
      saved = now;
    }
  }

  private void done(Typed run) {
    assertEquals(book.holdsRows() ? 1 : 0, run.exit(), run::all);
  }

  private void monthEnd(YearMonth month, boolean twice, String... options) throws IOException {
    List<String> words = new ArrayList<>(List.of(options));
    words.addAll(List.of("--export-register", folder.resolve("register").toString()));
    String[] all = words.toArray(String[]::new);
    done(type("month-end", month, all));
    look(month);
    if (twice) {
      Map<String, String> before = WrittenFiles.digests(reports());
      done(type("month-end", month, all));
      assertEquals(Set.of(), changed(before), "the same again wrote other files");
    }
    laidDown = month.toString();
  }

  private void send(YearMonth month) throws IOException {
    Map<String, String> before = WrittenFiles.digests(reports());
    Map<String, String> registerBefore = WrittenFiles.digests(register());
    Typed run = type("send", month, "--yes");
    if (run.exit() == 2) {
      assertTrue(!laidDown.equals(month.toString()), "just laid down: " + run.all());
      assertEquals(Set.of(), changed(before), "refused, and yet files changed");
      assertEquals(registerBefore, WrittenFiles.digests(register()), "refused, yet recorded");
      return;
    }
    done(run);
    written(month).allIsPosted();
    assertFalse(written(month).states().contains("draft"), "sent, and yet a draft is left");
    assertFalse(written(month).page().contains(">draft<"), "the page says draft");
    numbersGoOn(month);
  }

  private void preview(YearMonth month) throws IOException {
    done(type("send", month, "--preview"));
    written(month).allIsPosted();
    numbersGoOn(month);
    laidDown = month.toString();
  }

  private void correct(YearMonth month) throws IOException {
    if (issued.numbers().isEmpty()) {
      return;
    }
    List<String> from = issued.numbers();
    String number = from.get(random.nextInt(from.size()));
    Map<String, String> before = WrittenFiles.digests(reports());
    Map<String, String> registerBefore = WrittenFiles.digests(register());
    Typed run = type("month-end", month, "--correct", number);
    if (run.exit() == 2) {
      assertEquals(1, run.err().lines().filter(line -> line.startsWith("--correct")).count());
      assertEquals(Set.of(), changed(before), "refused, and yet files changed");
      assertEquals(registerBefore, WrittenFiles.digests(register()), "refused, yet recorded");
      return;
    }
    done(run);
    numbersGoOn(month);
    laidDown = month.toString();
  }

  private void anotherComputer() throws IOException {
    if (Files.exists(register())) {
      story.add("another computer, without the reports");
      Path next = Files.createDirectories(folder.resolveSibling("computer " + ++moves));
      Files.move(register(), next.resolve("mybook.register.db"));
      folder = next;
      saved = Map.of();
    }
  }

  private WrittenMonth written(YearMonth month) {
    return new WrittenMonth(reports().resolve(month.toString()));
  }

  private void look(YearMonth month) throws IOException {
    documents = WrittenFiles.csv(folder.resolve("register/document.csv"));
    numbersGoOn(month);
    balances(month);
    List<Map<String, String>> differences = written(month).figures("differences");
    assertEquals(new HashSet<>(differences).size(), differences.size(), "a difference told twice");
  }

  /** Numbers without gap or repeat, issued ones for ever the same, no visit billed too high. */
  private void numbersGoOn(YearMonth month) throws IOException {
    List<String> wrong = new ArrayList<>();
    assertTrue(WrittenFiles.addTables(written(month).page(), wrong) > 0, "the page has no sum");
    assertEquals(List.of(), wrong, "a table of the page does not add up");
    issued.look(written(month), book);
    sequences()
        .forEach(
            (series, given) ->
                assertEquals(
                    IntStream.rangeClosed(1, given.size()).boxed().toList(),
                    given.stream().sorted().toList(),
                    series + " has a gap or a repeat"));
  }

  private Map<String, List<Integer>> sequences() {
    Map<String, List<Integer>> sequences = new TreeMap<>();
    for (Map<String, String> row : documents) {
      sequences
          .computeIfAbsent(row.getOrDefault("series", ""), unused -> new ArrayList<>())
          .add(Integer.parseInt(row.getOrDefault("sequence", "")));
    }
    return sequences;
  }

  /** Each account adds up, and is what was billed up to then less what was paid. */
  private void balances(YearMonth month) {
    LocalDate last = month.atEndOfMonth();
    Map<String, Integer> expected = new TreeMap<>();
    for (Map<String, String> row : documents) {
      if (!"VOID".equals(row.get("state"))
          && !LocalDate.parse(row.getOrDefault("date", "")).isAfter(last)) {
        expected.merge(
            row.getOrDefault("owner", ""), WrittenFiles.cents(row, "gross"), Integer::sum);
      }
    }
    book.paid(last).forEach((owner, sum) -> expected.merge(owner, -sum, Integer::sum));
    expected.values().removeIf(sum -> sum == 0);
    assertEquals(expected, written(month).balances(), "balances of " + month);
  }

  /** Runs and sends every month in turn; then all that is out is what the rows ask for. */
  private void settle() throws IOException {
    book.freeHeldRows();
    for (int time = 0; time < 2; time++) {
      for (YearMonth month : ALL) {
        monthEnd(month, false, "--include-earlier");
        send(month);
      }
    }
    YearMonth end = ALL.get(ALL.size() - 1);
    Map<String, Integer> owed = book.owed();
    owed.values().removeIf(sum -> sum == 0);
    assertEquals(owed, written(end).balances(), "what is owed in the end");
    Map<String, Integer> asked = book.nets();
    Map<String, Integer> sums = issued.billed();
    asked.values().removeIf(sum -> sum == 0);
    sums.values().removeIf(sum -> sum == 0);
    assertEquals(asked, sums, "what is billed in the end");
    assertEquals(documents.size(), new TreeSet<>(numbers()).size(), "a number was given twice");
  }
}
