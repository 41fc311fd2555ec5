package clenchbook.life;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.register.RegisterCheck;
import clenchbook.texts.Message;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Lives one sequence of events through the program and looks after every command at what a farrier
 * could never forgive: a visit billed twice, or about to be if a month were sent now, a number lost
 * or given twice, an issued document changed, a balance that plain addition does not give, a second
 * run that says something else.
 */
final class Life {
  private static final YearMonth LAST = YearMonth.of(2027, 3);

  private final LifeBook book = new LifeBook();
  private final LifeModel model = new LifeModel();
  private final LifeProgram program;
  private final Path folder;
  private final List<String> story = new ArrayList<>();
  private final Map<String, BilledDocument> issued = new HashMap<>();
  private final Map<String, String> issuedBytes = new HashMap<>();
  private final Map<String, Integer> last = new HashMap<>();
  private List<BilledDocument> probed = List.of();
  private int commands;

  Life(LifeProgram program, Path folder) {
    this.program = program;
    this.folder = folder;
  }

  /** What went wrong first, and the story up to there; empty when all is well. */
  static Optional<String> fault(LifeProgram program, Path folder, List<LifeEvent> events) {
    Life life = new Life(program, folder);
    try {
      life.live(events);
      return Optional.empty();
    } catch (LifeFault fault) {
      return Optional.of(fault.getMessage() + "\n  " + String.join("\n  ", life.story));
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
    YearMonth month = LifeBook.MONTHS.get(event.month(book.touchedMonth(), LifeBook.MONTHS.size()));
    switch (event.kind()) {
      case MONTH_END -> monthEnd(month, false, Optional.empty());
      case EARLIER -> monthEnd(month, true, Optional.empty());
      case CORRECT -> correct(event, month);
      case SEND -> send(month);
      case PREVIEW -> preview(month);
      case KILLED, KILLED_SEND -> killed(event, month);
      default -> story.add(event.kind() + " " + book.happen(event, numbers()));
    }
  }

  private void killed(LifeEvent event, YearMonth month) {
    write("killed: " + (event.kind() == LifeEvent.Kind.KILLED ? "month-end " : "send ") + month);
    if (event.kind() == LifeEvent.Kind.KILLED) {
      program.killed(folder, month, event.two());
    } else {
      program.killedSend(folder, month, event.two());
    }
    look(Optional.empty());
  }

  private List<String> numbers() {
    return program.documents().stream().map(BilledDocument::number).toList();
  }

  private void write(String command) {
    story.add(command);
    book.write(folder);
    model.meets(book);
    commands++;
  }

  private void monthEnd(YearMonth month, boolean earlier, Optional<String> correct) {
    write(
        "month-end "
            + month
            + (earlier ? " --include-earlier" : "")
            + correct.map(number -> " --correct " + number).orElse(""));
    if (program.monthEnd(folder, month, earlier, correct) == 2) {
      look(Optional.empty());
      return;
    }
    look(Optional.of(month));
    balances(month);
    String written = program.written();
    List<BilledDocument> documents = program.documents();
    Map<String, String> bytes = program.bytes();
    expect(program.monthEnd(folder, month, earlier, correct) != 2, "repeated, it could not run");
    String again = "the same again: " + inWords(program.documents());
    expect(documents.equals(program.documents()), again);
    expect(written.equals(program.written()), "the same again wrote something else: " + month);
    expect(bytes.equals(program.bytes()), "the same again printed otherwise: " + month);
  }

  private void correct(LifeEvent event, YearMonth month) {
    List<String> numbers = numbers();
    if (!numbers.isEmpty()) {
      int which = event.two() % numbers.size();
      monthEnd(month, false, Optional.of(numbers.get(numbers.size() - 1 - which)));
    }
  }

  private void send(YearMonth month) {
    write("send " + month);
    List<BilledDocument> before = program.documents();
    int exit = program.send(folder, month);
    look(Optional.empty());
    if (exit == 2) {
      expect(before.equals(program.documents()), "refused, and yet something changed");
      return;
    }
    expect(!drafted(month), "sent, and yet a draft is left");
    List<BilledDocument> sent = program.documents();
    expect(program.send(folder, month) != 2, month + " sent again, it could not run");
    expect(sent.equals(program.documents()), month + " sent again changed something");
  }

  private void preview(YearMonth month) {
    write("send --preview " + month);
    program.preview(folder, month);
    look(Optional.of(month));
    Map<String, String> bytes = program.bytes();
    program.preview(folder, month);
    expect(bytes.equals(program.bytes()), "the same preview again printed otherwise: " + month);
  }

  private boolean drafted(YearMonth month) {
    return program.documents().stream()
        .anyMatch(d -> d.month().equals(month) && d.state() == DocumentState.DRAFT);
  }

  /**
   * What must hold after every command.
   *
   * @param run the month that was laid down anew
   */
  private void look(Optional<YearMonth> run) {
    List<BilledDocument> documents = program.documents();
    story.set(story.size() - 1, last() + "  ->  " + inWords(documents));
    List<Message> faults = RegisterCheck.faults(documents);
    expect(faults.isEmpty(), faults.toString());
    numbers(documents);
    documents.stream().filter(document -> document.state().fixed()).forEach(this::unchanged);
    model.faults(documents, run).ifPresent(Life::fail);
    if (!documents.equals(probed)) {
      probed = documents;
      for (YearMonth month : LifeBook.MONTHS) {
        program
            .ifSent(folder, month)
            .flatMap(model::billedTwice)
            .ifPresent(fault -> fail("if " + month + " were sent now, " + fault));
      }
    }
  }

  private String last() {
    return story.get(story.size() - 1);
  }

  private static String inWords(List<BilledDocument> documents) {
    return String.join(
        ", ",
        documents.stream()
            .map(
                each ->
                    each.number() + " " + each.owner() + " " + each.gross() + " " + each.state())
            .toList());
  }

  /** From 1 on in each year, none left out, none given twice, none lost. */
  private void numbers(List<BilledDocument> documents) {
    Map<String, Set<Integer>> years = new TreeMap<>();
    for (BilledDocument document : documents) {
      String[] number = document.number().split("-", 2);
      int sequence = Integer.parseInt(number[1]);
      boolean first = years.computeIfAbsent(number[0], unused -> new TreeSet<>()).add(sequence);
      expect(first, document.number() + " is given twice");
    }
    years.forEach(
        (year, all) -> expect(all.size() == Collections.max(all), year + " has gaps: " + all));
    years.forEach(
        (year, all) ->
            expect(all.size() >= last.getOrDefault(year, 0), year + " has lost a number"));
    years.forEach((year, all) -> last.put(year, all.size()));
  }

  private void unchanged(BilledDocument document) {
    BilledDocument first = issued.computeIfAbsent(document.number(), unused -> document);
    expect(first.in(document.state()).equals(document), document.number() + " changed");
    String bytes = program.bytes().getOrDefault(document.number(), "");
    String firstBytes = issuedBytes.computeIfAbsent(document.number(), unused -> bytes);
    expect(firstBytes.equals(bytes), document.number() + " is printed otherwise");
  }

  /** Balances are what was billed up to the month's last day less what was paid by then. */
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
    program.documents().stream()
        .filter(document -> document.counts() && !document.date().isAfter(last))
        .forEach(
            document ->
                sums.merge(
                    book.terms().account(document.owner()),
                    LiveVisits.cents(document.gross()),
                    Integer::sum));
    book.paid(opening, last).forEach((owner, cents) -> sums.merge(owner, -cents, Integer::sum));
    Map<String, Integer> said = new TreeMap<>();
    program.balances().forEach((owner, balance) -> said.put(owner, LiveVisits.cents(balance)));
    sums.values().removeIf(cents -> cents == 0);
    said.values().removeIf(cents -> cents == 0);
    expect(sums.equals(said), month + ": plain addition " + sums + ", balances " + said);
  }

  /** Runs and sends every month in turn until nothing is left to do; then all must agree. */
  private void settle() {
    book.freeHeldRows();
    story.add("in the end no row is held");
    List<YearMonth> months = new ArrayList<>(LifeBook.MONTHS);
    months.add(LAST);
    for (int time = 0; time < 2; time++) {
      for (YearMonth month : months) {
        monthEnd(month, true, Optional.empty());
        send(month);
        expect(!drafted(month), month + " cannot be sent right after its month-end");
      }
    }
    model.unsettled(book, program.documents()).ifPresent(Life::fail);
    expect(commands > 0, "nothing was run");
  }

  private static void expect(boolean holds, String otherwise) {
    if (!holds) {
      fail(otherwise);
    }
  }

  private static void fail(String fault) {
    throw new LifeFault(fault);
  }
}
