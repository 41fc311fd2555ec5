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
import java.util.stream.Stream;

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

  private static final List<String> FOLDERS = List.of("../invoices", "../statements");

  private final Random random;
  private final BookOnDisk format;
  private final FarriersBook book;
  private final List<String> story = new ArrayList<>();
  private final Map<String, Map<String, String>> issued = new TreeMap<>();
  private final Map<String, String> issuedPrint = new TreeMap<>();
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
    posted(month);
    assertFalse(states(month).contains("draft"), "sent, and yet a draft is left");
    assertFalse(page(month).contains(">draft<"), "the page says draft");
    numbersGoOn(month);
  }

  private void preview(YearMonth month) throws IOException {
    done(type("send", month, "--preview"));
    posted(month);
    numbersGoOn(month);
    laidDown = month.toString();
  }

  private void correct(YearMonth month) throws IOException {
    if (issued.isEmpty()) {
      return;
    }
    List<String> from = List.copyOf(issued.keySet());
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

  private String page(YearMonth month) throws IOException {
    return Files.readString(reports().resolve(month.toString()).resolve("index.html"));
  }

  private List<Map<String, String>> figures(YearMonth month, String name) {
    return WrittenFiles.csv(reports().resolve(month + "/figures/" + name + ".csv"));
  }

  private List<String> states(YearMonth month) {
    return figures(month, "invoices").stream().map(row -> row.getOrDefault("state", "")).toList();
  }

  private void look(YearMonth month) throws IOException {
    documents = WrittenFiles.csv(folder.resolve("register/document.csv"));
    numbersGoOn(month);
    balances(month);
    List<Map<String, String>> differences = figures(month, "differences");
    assertEquals(new HashSet<>(differences).size(), differences.size(), "a difference told twice");
  }

  /** Numbers without gap or repeat, issued ones for ever the same, no visit billed too high. */
  private void numbersGoOn(YearMonth month) throws IOException {
    List<String> wrong = new ArrayList<>();
    assertTrue(WrittenFiles.addTables(page(month), wrong) > 0, "the page has no sum");
    assertEquals(List.of(), wrong, "a table of the page does not add up");
    issuedStayed(month);
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

  private void issuedStayed(YearMonth month) {
    Map<String, String> prints =
        WrittenFiles.digests(reports().resolve(month.toString()).resolve("invoices"));
    for (Map<String, String> row : figures(month, "invoices")) {
      String number = row.getOrDefault("number", "");
      if (List.of("draft", "void").contains(row.get("state"))) {
        assertFalse(issued.containsKey(number), number + " was issued and is no more");
        continue;
      }
      Map<String, String> says = new TreeMap<>(row);
      List.of("state", "open").forEach(says::remove);
      assertEquals(issued.computeIfAbsent(number, unused -> says), says, "an issued one changed");
      List<String> print =
          prints.keySet().stream().filter(name -> name.startsWith(number + " ")).toList();
      assertEquals(1, print.size(), number + " has one print, not " + print);
      String digest = prints.getOrDefault(print.get(0), "");
      assertEquals(issuedPrint.computeIfAbsent(number, unused -> digest), digest, number);
    }
    notTooMuch(month);
  }

  private final Map<String, Map<String, Integer>> billed = new TreeMap<>();

  /** What issued documents ask for a day and horse is never more than its rows ever did. */
  private void notTooMuch(YearMonth month) {
    figures(month, "invoice-lines").stream()
        .filter(line -> issued.containsKey(line.getOrDefault("number", "")))
        .map(line -> line.getOrDefault("number", ""))
        .distinct()
        .forEach(billed::remove);
    for (Map<String, String> line : figures(month, "invoice-lines")) {
      String number = line.getOrDefault("number", "");
      if (issued.containsKey(number)) {
        billed
            .computeIfAbsent(number, unused -> new TreeMap<>())
            .merge(
                line.get("date") + " " + line.get("horse"),
                WrittenFiles.cents(line, "net"),
                Integer::sum);
      }
    }
    billed()
        .forEach(
            (place, net) -> {
              assertTrue(net >= 0, place + " is billed at less than nothing: " + net);
              assertTrue(net <= book.mostAsked(place), place + " is billed too high: " + net);
            });
  }

  private Map<String, Integer> billed() {
    Map<String, Integer> sums = new TreeMap<>();
    billed.values().forEach(each -> each.forEach((at, net) -> sums.merge(at, net, Integer::sum)));
    return sums;
  }

  /** Each account adds up, and is what was billed up to then less what was paid. */
  private void balances(YearMonth month) {
    LocalDate last = month.atEndOfMonth();
    Map<String, Integer> expected = new TreeMap<>();
    for (Map<String, String> row : documents) {
      if (!"VOID".equals(row.get("state"))
          && !LocalDate.parse(row.getOrDefault("date", "")).isAfter(last)) {
        expected.merge(row.getOrDefault("owner", ""), WrittenFiles.cents(row, "gross"), Integer::sum);
      }
    }
    book.paid(last).forEach((owner, sum) -> expected.merge(owner, -sum, Integer::sum));
    expected.values().removeIf(sum -> sum == 0);
    assertEquals(expected, said(month), "balances of " + month);
  }

  private Map<String, Integer> said(YearMonth month) {
    Map<String, Integer> said = new TreeMap<>();
    for (Map<String, String> row : figures(month, "balances")) {
      int balance = WrittenFiles.cents(row, "balance");
      assertEquals(
          balance,
          WrittenFiles.cents(row, "brought_forward")
              + WrittenFiles.cents(row, "invoiced")
              - WrittenFiles.cents(row, "paid"),
          row::toString);
      said.merge(row.getOrDefault("owner", ""), balance, Integer::sum);
    }
    said.values().removeIf(sum -> sum == 0);
    return said;
  }

  /** Each document of the month goes with a mail or with the print list, and lies there. */
  private void posted(YearMonth month) throws IOException {
    Path outbox = reports().resolve(month.toString()).resolve("outbox");
    StringBuilder post = new StringBuilder();
    for (Map<String, String> row : WrittenFiles.csv(outbox.resolve("print-list.csv"))) {
      post.append(row.get("numbers")).append('\n');
      for (String file : row.getOrDefault("files", "").split("; ")) {
        assertTrue(
            FOLDERS.stream().anyMatch(in -> Files.exists(outbox.resolve(in).resolve(file))),
            "no such file: " + file);
      }
    }
    try (Stream<Path> mails = Files.list(outbox)) {
      for (Path mail : mails.filter(path -> path.toString().endsWith(".eml")).toList()) {
        post.append(Files.readString(mail));
      }
    }
    for (Map<String, String> row : figures(month, "invoices")) {
      String number = row.getOrDefault("number", "");
      boolean counts = !"void".equals(row.get("state"));
      assertEquals(counts, post.indexOf(number) >= 0, number + ": is it posted?");
    }
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
    assertEquals(owed, said(end), "what is owed in the end");
    Map<String, Integer> asked = book.nets();
    Map<String, Integer> sums = billed();
    asked.values().removeIf(sum -> sum == 0);
    sums.values().removeIf(sum -> sum == 0);
    assertEquals(asked, sums, "what is billed in the end");
    assertEquals(documents.size(), new TreeSet<>(numbers()).size(), "a number was given twice");
  }
}
