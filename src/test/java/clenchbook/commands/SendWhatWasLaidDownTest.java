package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.delivery.CredentialReader;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.register.Register;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes out is what was looked at; nobody gets an invoice that nobody has seen. */
class SendWhatWasLaidDownTest {
  private static final String VISITS =
      "Date,Owner,Horse,Work,Charge,Paid\n2026-10-05,Ruth,Bess,Trim,,\n"
          + "2026-10-06,Adam,Jet,Full set,90,\n";

  @TempDir private Path folder;
  private SmallFolderBook book;

  /** Adam has a mail address, Ruth gets hers on paper; numbers go by name. */
  @BeforeEach
  void a_book() throws IOException {
    book =
        SmallFolderBook.in(folder)
            .sheet(
                "Settings",
                SmallFolderBook.SETTINGS
                    + "From address,me@anvil.example\nUnits,metric\nDistance unit,km\n"
                    + "Date order,dmy\n")
            .sheet("Owners", "Owner,Email\nAdam,adam@stable.example\n")
            .sheet("Visits", VISITS);
  }

  private Typed monthEnd() {
    Typed run = Typed.type("month-end", book.path(), "--month", "2026-10");
    assertEquals(0, run.exit(), run.all());
    return run;
  }

  private Typed send(String... options) {
    List<String> words = new ArrayList<>(List.of("--month", "2026-10"));
    words.addAll(List.of(options));
    return Typed.type("send", book.path(), words.toArray(String[]::new));
  }

  private Typed sent() {
    Typed run = send();
    assertEquals(0, run.exit(), run.all());
    return run;
  }

  /** In one line, with each document named before it, and without a trace. */
  private void refused(String... lines) throws IOException {
    Map<String, String> files = Files.exists(book.reports()) ? book.files() : Map.of();
    List<BilledDocument> before = documents();
    Typed run = send();
    assertEquals(2, run.exit(), run.all());
    assertEquals(1, run.err().lines().count(), run.all());
    assertTrue(run.err().startsWith("nothing was issued: 2026-000"), run.all());
    assertEquals(List.of(lines), run.out().lines().toList());
    for (String line : lines) {
      assertTrue(run.err().contains(line.substring(0, "2026-0001".length())), run.all());
    }
    assertEquals(before, documents());
    assertEquals(files, Files.exists(book.reports()) ? book.files() : Map.of());
  }

  private List<BilledDocument> documents() {
    return Register.read(book.register());
  }

  private Set<DocumentState> states() {
    return Set.copyOf(documents().stream().map(BilledDocument::state).toList());
  }

  @Test
  void without_a_month_end_nothing_is_issued_and_no_register_begun() throws IOException {
    refused(
        "2026-0001 to Adam: GBP 108.00, not laid down yet",
        "2026-0002 to Ruth: GBP 48.00, not laid down yet");
    assertFalse(Files.exists(book.register()));
  }

  @Test
  void a_row_that_changed_since_is_named_with_both_amounts() throws IOException {
    monthEnd();
    book.sheet("Visits", VISITS.replace("Full set,90", "Full set,55"));
    refused("2026-0001 to Adam: GBP 66.00, laid down as GBP 108.00");
    monthEnd();
    sent();
    assertEquals(Set.of(DocumentState.ISSUED), states());
  }

  @Test
  void a_late_row_is_named_and_nothing_else_goes_out_either() throws IOException {
    monthEnd();
    book.sheet("Visits", VISITS + "2026-10-20,Zoe,Kit,Trim,,\n");
    refused("2026-0003 to Zoe: GBP 48.00, not laid down yet");
    assertEquals(Set.of(DocumentState.DRAFT), states());
  }

  @Test
  void a_deleted_row_leaves_nothing_to_send() throws IOException {
    monthEnd();
    book.sheet("Visits", VISITS.replace("2026-10-05,Ruth,Bess,Trim,,\n", ""));
    refused("2026-0002 to Ruth: nothing is left on it, laid down as GBP 48.00");
  }

  @Test
  void rows_changed_by_the_same_amount_are_seen_too() throws IOException {
    monthEnd();
    book.sheet("Visits", VISITS.replace("2026-10-05,Ruth,Bess", "2026-10-05,Ruth,Bessie"));
    refused("2026-0002 to Ruth: GBP 48.00, as laid down, but its lines changed");
  }

  @Test
  void a_sheet_sorted_otherwise_and_a_row_of_another_month_change_nothing() throws IOException {
    monthEnd();
    book.sheet(
        "Visits",
        "Date,Owner,Horse,Work,Charge,Paid\n2026-11-03,Zoe,Kit,Trim,,\n"
            + "2026-10-06,Adam,Jet,Full set,90,\n2026-10-05,Ruth,Bess,Trim,,\n");
    sent();
  }

  @Test
  void a_payment_that_changes_what_is_printed_is_looked_at_first() throws IOException {
    monthEnd();
    book.payments("2026-10-28,Ruth,20,,\n");
    refused(
        "2026-0002 to Ruth: GBP 48.00, as laid down, but payments, an address or the layout on it"
            + " changed");
    monthEnd();
    book.payments("2026-10-28,Ruth,20,,\n2026-11-02,Ruth,20,,\n");
    sent();
  }

  @Test
  void an_invoice_that_a_payment_names_before_it_was_ever_seen_is_not_issued() throws IOException {
    monthEnd();
    book.sheet("Visits", VISITS + "2026-10-20,Zoe,Kit,Trim,,\n");
    book.payments("2026-11-01,Zoe,48,2026-0003,\n");
    refused("2026-0003 to Zoe: GBP 48.00, not laid down yet");
  }

  @Test
  void what_a_payment_issues_is_told_of_and_its_sharer_too() throws IOException {
    book.sheet("Horses", "Horse,Owner,Share %\nStar,Ruth,50\nStar,Zoe,50\n");
    book.sheet("Visits", VISITS + "2026-10-09,,Star,Trim,,\n");
    monthEnd();
    book.payments("2026-11-01,Ruth,72,2026-0002,\n");
    List<String> said = monthEnd().out().lines().toList();
    assertEquals(
        List.of(
            "2026-0002 to Ruth: GBP 72.00, issued because a payment names it",
            "2026-0003 to Zoe: GBP 24.00, issued with one that a payment names; see that it is"
                + " sent"),
        said.subList(1, said.size() - 1));
    assertTrue(said.get(said.size() - 1).startsWith("Next: "), said.toString());
    assertFalse(monthEnd().all().contains("a payment names"), "once");
  }

  @Test
  void a_preview_lays_down_what_is_sent_and_says_in_its_record_that_it_is_one() throws IOException {
    Typed preview = send("--preview");
    assertEquals(0, preview.exit(), preview.all());
    assertTrue(preview.out().contains("2026-0001 to Adam: GBP 108.00\n"), preview.all());
    assertTrue(preview.out().contains("to issue: 2 invoices, GBP 156.00 in all"), preview.all());
    assertEquals(Set.of(DocumentState.DRAFT), states());
    Map<String, String> files = book.files();
    assertTrue(files.containsKey("2026-10/invoices/2026-0002 Ruth.pdf"));
    assertTrue(files.get("2026-10/run.json").contains("\"preview\" : true"));
    assertTrue(files.get("2026-10/outbox/run.json").contains("\"preview\" : true"));
    send("--preview");
    assertEquals(files, book.files(), "the same again");

    sent();

    assertEquals(Set.of(DocumentState.ISSUED), states());
    assertTrue(book.files().get("2026-10/run.json").contains("\"preview\" : false"));
    assertEquals(files.get("2026-10/outbox/Adam.eml"), book.files().get("2026-10/outbox/Adam.eml"));
  }

  @Test
  void it_names_each_document_with_owner_and_amount_and_their_sum() throws IOException {
    monthEnd();
    List<String> said = sent().out().lines().toList();
    assertEquals("2026-0001 to Adam: GBP 108.00", said.get(0));
    assertEquals("2026-0002 to Ruth: GBP 48.00", said.get(1));
    assertEquals("to issue now: 2 invoices, GBP 156.00 in all", said.get(2));
    assertTrue(said.get(said.size() - 2).startsWith("2 documents issued"), said.toString());
    assertTrue(said.get(said.size() - 1).startsWith("Next: "), said.toString());
    assertEquals("2026-10: nothing is left to issue", sent().out().lines().toList().get(0));
  }

  @Test
  void every_file_that_is_named_lies_there_with_the_registers_bytes() throws Exception {
    book.monthEnd("2026-09");
    monthEnd();
    Files.delete(book.reports().resolve("2026-10/invoices/2026-0002 Ruth.pdf"));
    Files.writeString(book.reports().resolve("2026-10/invoices/2026-0001 Adam.pdf"), "spoilt");

    sent();

    String list = Files.readString(book.reports().resolve("2026-10/outbox/print-list.csv"));
    assertTrue(list.contains(",2026-0002,2026-0002 Ruth.pdf,"), list);
    for (MimeMessage mail : mails()) {
      MimeMultipart parts = (MimeMultipart) mail.getContent();
      for (int part = 1; part < parts.getCount(); part++) {
        String name = parts.getBodyPart(part).getFileName();
        try (InputStream stream = parts.getBodyPart(part).getInputStream()) {
          assertArrayEquals(Files.readAllBytes(named(name)), stream.readAllBytes(), name);
        }
      }
    }
    try (Register register = Register.open(book.register())) {
      for (String name : List.of("2026-0001 Adam.pdf", "2026-0002 Ruth.pdf")) {
        assertArrayEquals(
            register.pdf(name.substring(0, 9)).orElseThrow(),
            Files.readAllBytes(book.reports().resolve("2026-10/invoices").resolve(name)));
      }
    }
  }

  @Test
  void a_statement_too_is_named_as_it_lies_there() throws Exception {
    book.sheet("Visits", VISITS + "2026-09-07,Ruth,Bess,Trim,,\n2026-09-07,Adam,Jet,Trim,,\n");
    book.monthEnd("2026-09");
    monthEnd();
    sent();
    String list = Files.readString(book.reports().resolve("2026-10/outbox/print-list.csv"));
    assertTrue(list.contains(",2026-0004 Ruth.pdf; Ruth.pdf,"), list);
    MimeMultipart parts = (MimeMultipart) mails().get(0).getContent();
    assertEquals("Adam.pdf", parts.getBodyPart(2).getFileName());
    assertTrue(Files.exists(book.reports().resolve("2026-10/statements/Adam.pdf")));
    assertTrue(Files.exists(book.reports().resolve("2026-10/statements/Ruth.pdf")));
  }

  private Path named(String name) throws IOException {
    try (Stream<Path> all = Files.walk(book.reports().resolve("2026-10"))) {
      return all.filter(path -> path.getFileName().toString().equals(name))
          .findFirst()
          .orElseThrow(() -> new AssertionError(name + " is named and lies nowhere"));
    }
  }

  private List<MimeMessage> mails() throws Exception {
    List<MimeMessage> mails = new ArrayList<>();
    try (Stream<Path> all = Files.list(book.reports().resolve("2026-10/outbox"))) {
      for (Path path : all.filter(each -> each.toString().endsWith(".eml")).toList()) {
        try (InputStream stream = Files.newInputStream(path)) {
          mails.add(new MimeMessage(Session.getInstance(new Properties()), stream));
        }
      }
    }
    return mails;
  }

  @Test
  void two_invoices_of_one_owner_are_both_named() throws Exception {
    monthEnd();
    sent();
    book.sheet("Visits", VISITS + "2026-10-20,Adam,Jet,Trim,,\n2026-10-21,Ruth,Bess,Full set,,\n");
    monthEnd();
    Typed again = sent();
    assertTrue(
        again.out().contains(", those of documents issued before among them\n"), again.all());

    MimeMessage mail = mails().get(0);
    assertEquals("Invoice 2026-0001, 2026-0003 from Anvil & Rasp, October 2026", mail.getSubject());
    MimeMultipart parts = (MimeMultipart) mail.getContent();
    MimeMultipart words = (MimeMultipart) parts.getBodyPart(0).getContent();
    String text = String.valueOf(words.getBodyPart(0).getContent());
    assertTrue(text.contains("invoice 2026-0001, 2026-0003"), text);
    assertTrue(text.contains("It comes to £156.00."), text);
    assertEquals("2026-0001 Adam.pdf", parts.getBodyPart(1).getFileName());
    assertEquals("2026-0003 Adam.pdf", parts.getBodyPart(2).getFileName());
    String list = Files.readString(book.reports().resolve("2026-10/outbox/print-list.csv"));
    assertTrue(list.contains(",2026-0002 2026-0004,2026-0002 Ruth.pdf; 2026-0004 Ruth.pdf,"), list);
  }

  @Test
  void an_invoice_and_a_credit_note_are_both_named_in_the_subject() throws Exception {
    monthEnd();
    sent();
    book.sheet("Visits", VISITS.replace("Full set,90", "Full set,55"));
    Typed correction =
        Typed.type("month-end", book.path(), "--month", "2026-10", "--correct", "2026-0001");
    assertEquals(0, correction.exit(), correction.all());
    sent();
    assertEquals(
        "Invoice 2026-0001, 2026-0003 and credit note 2026-0004 from Anvil & Rasp, October 2026",
        mails().get(0).getSubject());
  }

  @Test
  void page_and_figures_are_up_to_date_after_sending_and_stay_so() throws IOException {
    monthEnd();
    assertFalse(page().contains("outbox/"), "there is none yet");
    sent();
    assertTrue(page().contains(">issued<"), page());
    assertFalse(page().contains(">draft<"), page());
    assertTrue(page().contains("To send: 0 documents"), page());
    assertTrue(page().contains("<a href=\"./outbox/\">The outbox</a>"), page());
    assertTrue(page().contains("href=\"./outbox/Adam.eml\""), page());
    assertTrue(page().contains("href=\"./outbox/print-list.csv\""), page());
    String invoices = Files.readString(book.reports().resolve("2026-10/figures/invoices.csv"));
    assertTrue(invoices.contains("90.00,18.00,108.00,issued,"), invoices);
    Map<String, String> files = book.files();
    sent();
    assertEquals(files, book.files(), "sent again, the same files");
  }

  @Test
  void what_the_page_adds_up_adds_up_and_each_invoice_links_to_its_pdf() throws IOException {
    book.payments("2026-10-20,Maeve,30,,\n2026-10-28,Ruth,20.50,,\n");
    monthEnd();
    sent();
    String page = page();
    assertEquals(List.of("£108.00", "−£30.00", "£27.50", "£105.50"), cells(page, "Balance"), page);
    assertTrue(page.contains("All balances: 3 owners, £30.00 of credit taken off"), page);
    assertEquals(List.of("£108.00", "£48.00", "£156.00"), cells(page, "Total"), page);
    for (String owner : List.of("2026-0001%20Adam", "2026-0002%20Ruth")) {
      String name = owner.substring("2026-0001%20".length());
      String link = "<a href=\"./invoices/" + owner + ".pdf\">" + name + "</a>";
      assertTrue(page.contains("<td>" + link + "</td>"), page);
    }
  }

  private static List<String> cells(String page, String column) {
    return Pattern.compile("data-label=\"" + column + "\">([^<]*)<")
        .matcher(page)
        .results()
        .map(cell -> cell.group(1))
        .toList();
  }

  private String page() throws IOException {
    return Files.readString(book.reports().resolve("2026-10/index.html"));
  }

  @Test
  void people_are_asked_for_a_yes_and_a_no_issues_nothing() throws IOException {
    monthEnd();
    Map<String, String> files = book.files();
    for (String answer : List.of("no", "", "maybe")) {
      RunFault fault = assertThrows(RunFault.class, () -> asked(false, () -> Optional.of(answer)));
      assertTrue(String.valueOf(fault.getMessage()).contains("nothing was issued"), answer);
    }
    assertThrows(RunFault.class, () -> asked(false, Optional::empty));
    assertEquals(Set.of(DocumentState.DRAFT), states());
    assertEquals(files, book.files());

    String said = asked(false, () -> Optional.of("Ja"));
    assertTrue(said.contains("Issue them? They never change after that. (yes/no)"), said);
    assertEquals(Set.of(DocumentState.ISSUED), states());
    asked(
        false,
        () -> {
          throw new AssertionError("nothing is left to ask for");
        });
  }

  @Test
  void the_option_yes_asks_nobody() throws IOException {
    monthEnd();
    asked(
        true,
        () -> {
          throw new AssertionError("asked");
        });
    assertEquals(Set.of(DocumentState.ISSUED), states());
  }

  private String asked(boolean yes, Supplier<Optional<String>> answers) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
    new SendRun(
            new SendRequest(
                book.path(),
                YearMonth.of(2026, 10),
                Optional.empty(),
                RegisterChoice.USUAL,
                false,
                false,
                yes,
                Set.of(),
                Protection.CHECKED,
                Duration.ZERO),
            SmallFolderBook.machine(),
            new CredentialReader(Map.of(), folder.resolve("none")),
            new Terminal(stream, stream, true, answers))
        .run();
    return said.toString(StandardCharsets.UTF_8);
  }
}
