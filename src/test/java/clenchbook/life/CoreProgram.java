package clenchbook.life;

import clenchbook.billing.Accounts;
import clenchbook.billing.BillingDecision;
import clenchbook.billing.LastAsked;
import clenchbook.billing.MonthBilling;
import clenchbook.billing.Unprepared;
import clenchbook.billing.corrections.BillingOptions;
import clenchbook.billing.corrections.Difference;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.Terminal;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The program's decisions, without printing: quick. */
final class CoreProgram implements LifeProgram {
  private static final int COULD_NOT_RUN = 2;

  private final LifeStore store;
  private final Map<String, BigDecimal> balances = new TreeMap<>();
  private String written = "";
  private String read = "";
  private Optional<OpenBook> opened = Optional.empty();

  CoreProgram(LifeStore store) {
    this.store = store;
  }

  private OpenBook open(Path book) {
    String text = text(book);
    if (!text.equals(read)) {
      opened = Optional.of(read(book));
      read = text;
    }
    return opened.orElseThrow();
  }

  private static String text(Path book) {
    StringBuilder text = new StringBuilder();
    try (Stream<Path> sheets = Files.list(book)) {
      for (Path sheet : sheets.sorted().toList()) {
        text.append(Files.readString(sheet)).append('\f');
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static OpenBook read(Path book) {
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    return OpenBook.read(
        book,
        new Machine(LocalDate.of(2027, 2, 1), Locale.UK, Optional.empty()),
        new Terminal(nowhere, nowhere, false));
  }

  @Override
  public int monthEnd(
      Path book, YearMonth month, boolean includeEarlier, Optional<String> correct) {
    OpenBook open = open(book);
    BillingDecision decision =
        MonthBilling.decide(
            open.jobs(),
            store.documents(),
            new BillingOptions(month, includeEarlier, correct, open.visitsHeld()));
    if (correct.isPresent() && corrected(decision, correct.get()).isEmpty()) {
      return COULD_NOT_RUN;
    }
    record(decision.documents());
    balances.clear();
    Accounts.of(open.jobs(), decision, month.atDay(1), month.atEndOfMonth())
        .forEach(account -> balances.put(account.owner(), account.balance()));
    written =
        decision.month() + "\n" + decision.differences() + "\n" + decision.unbilled() + balances;
    return 0;
  }

  private static List<Difference> corrected(BillingDecision decision, String number) {
    return decision.differences().stream()
        .filter(difference -> difference.kind() == Difference.Kind.CORRECTED)
        .filter(difference -> difference.number().equals(number))
        .toList();
  }

  /** Keeps the documents; the bytes of one say what it says once it is out. */
  private void record(List<BilledDocument> documents) {
    Set<String> fixed =
        store.documents().stream()
            .filter(document -> document.state().fixed())
            .map(BilledDocument::number)
            .collect(Collectors.toSet());
    Map<String, String> drafts = new TreeMap<>();
    documents.stream()
        .filter(document -> !fixed.contains(document.number()))
        .forEach(
            document ->
                drafts.put(document.number(), document.in(DocumentState.ISSUED).toString()));
    store.record(documents, drafts);
  }

  @Override
  public void killed(Path book, YearMonth month, int moment) {
    dying(moment, () -> monthEnd(book, month, false, Optional.empty()));
  }

  @Override
  public void killedSend(Path book, YearMonth month, int moment) {
    dying(moment, () -> send(book, month));
  }

  private void dying(int moment, Runnable run) {
    store.dieAt(moment);
    try {
      run.run();
    } catch (LifeStore.Killed expected) {
      // The next command finds what the killed one left.
    } finally {
      store.liveOn();
    }
  }

  @Override
  public int send(Path book, YearMonth month) {
    Optional<BillingDecision> decision = sound(book, month);
    decision.ifPresent(sent -> record(issued(sent.documents(), month)));
    return decision.isPresent() ? 0 : COULD_NOT_RUN;
  }

  @Override
  public Optional<List<BilledDocument>> ifSent(Path book, YearMonth month) {
    return sound(book, month).map(decision -> issued(decision.documents(), month));
  }

  @Override
  public int preview(Path book, YearMonth month) {
    record(asLastAsked(book, month).documents());
    return 0;
  }

  private BillingDecision asLastAsked(Path book, YearMonth month) {
    OpenBook open = open(book);
    return MonthBilling.decide(
        open.jobs(),
        store.documents(),
        LastAsked.of(open.jobs(), store.documents(), month, open.visitsHeld()));
  }

  /** The month as it would go out; empty where it is not as it was last laid down. */
  private Optional<BillingDecision> sound(Path book, YearMonth month) {
    BillingDecision decision = asLastAsked(book, month);
    return Unprepared.of(store.documents(), decision).isEmpty()
        ? Optional.of(decision)
        : Optional.empty();
  }

  private static List<BilledDocument> issued(List<BilledDocument> documents, YearMonth month) {
    return documents.stream()
        .map(
            document ->
                document.month().equals(month) && document.state() == DocumentState.DRAFT
                    ? document.in(DocumentState.ISSUED)
                    : document)
        .toList();
  }

  @Override
  public List<BilledDocument> documents() {
    return store.documents();
  }

  @Override
  public Map<String, String> bytes() {
    return store.bytes();
  }

  @Override
  public Map<String, BigDecimal> balances() {
    return balances;
  }

  @Override
  public String written() {
    return written;
  }
}
