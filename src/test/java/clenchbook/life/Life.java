package clenchbook.life;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.DocumentState;
import clenchbook.life.LifeBook.Group;
import clenchbook.register.RegisterCheck;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Lives one sequence of events through the program and looks after every command at what a farrier
 * could never forgive: a visit billed twice, a number lost or given twice, an issued document
 * changed, a balance that plain addition does not give, a second run that says something else.
 */
final class Life {
  private static final YearMonth LAST = YearMonth.of(2027, 3);

  private final LifeBook book = new LifeBook();
  private final LifeProgram program;
  private final Path folder;
  private final Map<String, BilledDocument> issued = new HashMap<>();
  private final Map<String, String> issuedBytes = new HashMap<>();
  private final Map<Group, Integer> most = new HashMap<>();
  private final Map<Group, Set<Integer>> amounts = new HashMap<>();
  private Map<String, Integer> numbers = new HashMap<>();
  private int commands;

  Life(LifeProgram program, Path folder) {
    this.program = program;
    this.folder = folder;
  }

  /** What went wrong first; empty when all is well. */
  static Optional<String> fault(LifeProgram program, Path folder, List<LifeEvent> events) {
    try {
      new Life(program, folder).live(events);
      return Optional.empty();
    } catch (LifeFault fault) {
      return Optional.of(String.valueOf(fault.getMessage()));
    }
  }

  /** Something that must never happen. */
  private static final class LifeFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    LifeFault(String message) {
      super(message);
    }
  }

  private void live(List<LifeEvent> events) {
    for (LifeEvent event : events) {
      happen(event);
    }
    settle();
  }

  private void happen(LifeEvent event) {
    YearMonth month = LifeBook.MONTHS.get(event.one() % LifeBook.MONTHS.size());
    switch (event.kind()) {
      case MONTH_END -> monthEnd(month, false, Optional.empty());
      case EARLIER -> monthEnd(month, true, Optional.empty());
      case CORRECT -> correct(event, month);
      case SEND -> send(month);
      case KILLED -> {
        write();
        program.killed(folder, month);
        look();
      }
      default -> book.happen(event, numbers());
    }
  }

  private List<String> numbers() {
    return program.documents().stream().map(BilledDocument::number).toList();
  }

  private void write() {
    book.write(folder);
    book.asked()
        .forEach(
            (group, cents) -> {
              most.merge(group, cents, Math::max);
              amounts.computeIfAbsent(group, unused -> new HashSet<>()).add(cents);
            });
    commands++;
  }

  private void monthEnd(YearMonth month, boolean earlier, Optional<String> correct) {
    write();
    if (program.monthEnd(folder, month, earlier, correct) == 2) {
      look();
      return;
    }
    look();
    balances(month);
    String written = program.written();
    List<BilledDocument> documents = program.documents();
    Map<String, String> bytes = program.bytes();
    expect(program.monthEnd(folder, month, earlier, correct) != 2, "repeated, it could not run");
    expect(
        written.equals(program.written()),
        "the same again wrote something else: "
            + month
            + "\n"
            + written
            + "\n"
            + program.written());
    expect(documents.equals(program.documents()), "the same again decided otherwise: " + month);
    expect(bytes.equals(program.bytes()), "the same again printed otherwise: " + month);
  }

  private void correct(LifeEvent event, YearMonth month) {
    List<String> numbers = numbers();
    if (!numbers.isEmpty()) {
      monthEnd(month, false, Optional.of(numbers.get(event.two() % numbers.size())));
    }
  }

  private void send(YearMonth month) {
    write();
    List<BilledDocument> before = program.documents();
    int exit = program.send(folder, month);
    look();
    if (exit == 2) {
      expect(before.equals(program.documents()), "refused, and yet something changed");
    } else {
      boolean drafts =
          program.documents().stream()
              .anyMatch(d -> d.month().equals(month) && d.state() == DocumentState.DRAFT);
      expect(!drafts, "sent, and yet a draft is left");
    }
  }

  /** What must hold after every command. */
  private void look() {
    List<BilledDocument> documents = program.documents();
    List<String> faults = RegisterCheck.faults(documents);
    expect(faults.isEmpty(), faults.toString());
    Map<String, Integer> sequences = new HashMap<>();
    documents.forEach(document -> sequences.put(document.number(), document.sequence()));
    expect(sequences.keySet().containsAll(numbers.keySet()), "a number is lost");
    numbers = sequences;
    for (BilledDocument document : documents) {
      if (document.state().fixed()) {
        BilledDocument first = issued.computeIfAbsent(document.number(), unused -> document);
        expect(first.in(document.state()).equals(document), document.number() + " changed");
        String bytes = program.bytes().getOrDefault(document.number(), "");
        String firstBytes = issuedBytes.computeIfAbsent(document.number(), unused -> bytes);
        expect(firstBytes.equals(bytes), document.number() + " is printed otherwise");
      }
    }
    billed()
        .forEach(
            (group, cents) ->
                expect(
                    cents >= 0 && cents <= most.getOrDefault(group, 0),
                    group + " is billed at " + cents + ", at most " + most.get(group)));
  }

  /** What issued documents ask for, by day, horse and Work. */
  private Map<Group, Integer> billed() {
    Map<Group, Integer> billed = new HashMap<>();
    for (BilledDocument document : program.documents()) {
      if (document.state().fixed()) {
        for (DocumentLine line : document.lines()) {
          Group group = new Group(line.visit().date(), line.visit().horse(), line.visit().work());
          billed.merge(group, cents(line.amount()), Integer::sum);
        }
      }
    }
    return billed;
  }

  private static int cents(BigDecimal amount) {
    return amount.movePointRight(2).intValueExact();
  }

  private void balances(YearMonth month) {
    LocalDate last = month.atEndOfMonth();
    LocalDate opening =
        program.documents().stream()
            .map(BilledDocument::month)
            .filter(other -> other.isBefore(month))
            .min(Comparator.naturalOrder())
            .orElse(month)
            .atDay(1);
    Map<String, Integer> sums = new TreeMap<>();
    program.balances().keySet().forEach(owner -> sums.put(owner, 0));
    program.documents().stream()
        .filter(document -> document.counts() && !document.date().isAfter(last))
        .forEach(document -> sums.merge(document.owner(), cents(document.gross()), Integer::sum));
    book.paid(opening, last).forEach((owner, cents) -> sums.merge(owner, -cents, Integer::sum));
    Map<String, Integer> said = new TreeMap<>();
    program.balances().forEach((owner, balance) -> said.put(owner, cents(balance)));
    sums.values().removeIf(cents -> cents == 0);
    said.values().removeIf(cents -> cents == 0);
    expect(sums.equals(said), month + ": plain addition " + sums + ", balances " + said);
  }

  /** Runs and sends every month in turn until nothing is left to do; then all must agree. */
  private void settle() {
    book.freeHeldRows();
    List<YearMonth> months = new ArrayList<>(LifeBook.MONTHS);
    months.add(LAST);
    for (int time = 0; time < 2; time++) {
      for (YearMonth month : months) {
        monthEnd(month, true, Optional.empty());
        send(month);
        expect(
            program.documents().stream()
                .noneMatch(d -> d.month().equals(month) && d.state() == DocumentState.DRAFT),
            month + " cannot be sent right after its month-end");
      }
    }
    Map<Group, Integer> asked = book.asked();
    Map<Group, Integer> billed = billed();
    Set<Group> groups = new HashSet<>(asked.keySet());
    groups.addAll(billed.keySet());
    for (Group group : groups) {
      int out = billed.getOrDefault(group, 0);
      boolean right =
          book.typed(group)
              ? out == asked.getOrDefault(group, 0)
              : amounts.getOrDefault(group, Set.of()).contains(out);
      expect(
          right,
          "in the end "
              + group
              + " is billed at "
              + out
              + ", the book asks for "
              + asked.getOrDefault(group, 0));
    }
    expect(commands > 0, "nothing was run");
  }

  private static void expect(boolean holds, String otherwise) {
    if (!holds) {
      throw new LifeFault(otherwise);
    }
  }
}
