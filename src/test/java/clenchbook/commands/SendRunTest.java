package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentState;
import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.Machine;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.Terminal;
import clenchbook.delivery.CredentialReader;
import clenchbook.delivery.LoopbackCertificate;
import clenchbook.delivery.LoopbackSmtpServer;
import clenchbook.delivery.LoopbackSmtpServer.Act;
import clenchbook.delivery.LoopbackSmtpServer.Script;
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
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command send, from a small book to the outbox, the register and a mail server. */
class SendRunTest {
  private static final YearMonth OCTOBER = YearMonth.of(2026, 10);

  @TempDir static Path keys;
  private static LoopbackCertificate certificate;

  @TempDir Path folder;
  private Path book;
  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  @BeforeAll
  static void make_a_certificate() {
    certificate = LoopbackCertificate.of("localhost", keys);
  }

  @BeforeEach
  void write_a_book() throws IOException {
    book = Files.createDirectories(folder.resolve("book"));
    settings(0);
    write("Work", "Work,Price", "Full set,100", "Trim,40");
    write(
        "Owners",
        "Owner,Email,Language,Address",
        "Anna Alder,anna@stable.example,en,1 Mill Lane",
        "Jörg Öhler,joerg@stable.example,German,Hauptstraße 2",
        "Paper Pete,,en,\"3 Quiet Row, Upton\"",
        "Typo Tess,tess@stable,en,4 High St");
    visits("");
  }

  @Test
  void a_preview_writes_the_mails_and_marks_nothing() throws IOException {
    assertEquals(0, send(true, false));

    assertEquals(
        Set.of("Anna Alder.eml", "Jörg Öhler.eml", "print-list.csv", "run.json"),
        outbox().keySet());
    assertEquals(Set.of(DocumentState.DRAFT), states());
    assertTrue(said().contains("Preview: nothing was marked and nothing was sent."), said());
  }

  @Test
  void those_without_a_usable_address_are_on_the_print_list() throws IOException {
    send(true, false);

    assertEquals(
        "owner,invoice_name,address,numbers,files,reason\r\n"
            + "Paper Pete,Paper Pete,\"3 Quiet Row, Upton\",2026-0003,2026-0003 Paper Pete.pdf,"
            + "no mail address\r\n"
            + "Typo Tess,Typo Tess,4 High St,2026-0004,2026-0004 Typo Tess.pdf,"
            + "the mail address cannot be read: tess@stable\r\n",
        new String(outbox().get("print-list.csv"), StandardCharsets.UTF_8));
    assertTrue(said().contains("Typo Tess: the mail address cannot be read"), said());
  }

  @Test
  void sending_marks_all_of_the_month_issued_and_is_the_same_when_repeated() throws IOException {
    send(true, false);
    send(false, false);
    Map<String, byte[]> first = outbox();
    assertEquals(Set.of(DocumentState.ISSUED), states());

    send(false, false);

    Map<String, byte[]> second = outbox();
    assertEquals(first.keySet(), second.keySet());
    first.forEach((name, bytes) -> assertArrayEquals(bytes, second.get(name), name));
  }

  @Test
  void the_mail_is_in_the_owners_language_with_the_invoice_attached() throws Exception {
    send(true, false);
    send(false, false);

    MimeMessage mail = mail("Jörg Öhler.eml");
    assertEquals("Rechnung 2026-0002 von Alder Farriery, Oktober 2026", mail.getSubject());
    MimeMultipart parts = (MimeMultipart) mail.getContent();
    assertEquals(2, parts.getCount());
    assertEquals("2026-0002 Jörg Öhler.pdf", parts.getBodyPart(1).getFileName());
    try (InputStream stream = parts.getBodyPart(1).getInputStream();
        Register register = Register.open(folder.resolve("book.register.db"))) {
      assertArrayEquals(register.pdf("2026-0002").orElseThrow(), stream.readAllBytes());
    }
  }

  @Test
  void what_was_issued_goes_out_unchanged_though_the_book_has_changed() throws Exception {
    send(true, false);
    send(false, false);
    byte[] before = outbox().get("Anna Alder.eml");
    write("Work", "Work,Price", "Full set,120", "Trim,45");

    send(false, false);

    assertArrayEquals(before, outbox().get("Anna Alder.eml"));
  }

  @Test
  void a_name_can_write_no_header_and_no_path() throws Exception {
    write(
        "Owners",
        "Owner,Invoice name,Email",
        "\"../Eve\nBcc: thief@evil.example\",\"Eve\nX: y\",eve@stable.example");
    write(
        "Visits",
        "Date,Owner,Horse,Work",
        "2026-10-05,\"../Eve\nBcc: thief@evil.example\",Bess,Trim");

    send(true, false);

    List<String> mails = outbox().keySet().stream().filter(n -> n.endsWith(".eml")).toList();
    assertEquals(1, mails.size());
    MimeMessage mail = mail(mails.get(0));
    assertEquals(1, mail.getAllRecipients().length);
    assertTrue(mail.getHeader("To")[0].endsWith("<eve@stable.example>"), mail.getHeader("To")[0]);
    assertNull(mail.getHeader("Bcc"));
    assertNull(mail.getHeader("X"));
    assertFalse(Files.exists(folder.resolve("book reports/2026-10/Eve.eml")));
  }

  @Test
  void delivering_reaches_each_owner_once_and_the_invoices_are_delivered() throws IOException {
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, Script.NONE)) {
      settings(server.port());
      monthEnd(OCTOBER, false);
      assertEquals(0, send(false, true));
      assertEquals(0, send(false, true));

      assertEquals(1, server.takenFor("anna@stable.example"));
      assertEquals(1, server.takenFor("joerg@stable.example"));
      assertEquals(2, server.taken().size());
      assertEquals(
          List.of(
              DocumentState.DELIVERED,
              DocumentState.DELIVERED,
              DocumentState.ISSUED,
              DocumentState.ISSUED),
          documents().stream().map(BilledDocument::state).toList());
      assertTrue(said().contains("delivered: Anna Alder, 2026-10, 2026-0001"), said());
      assertTrue(said().contains("0 mails delivered, 2 before"), said());
    }
  }

  @Test
  void a_mail_nobody_knows_about_goes_again_only_by_name() throws IOException {
    Script script = Script.at("DOT", 1, Act.hangUp());
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, script)) {
      settings(server.port());
      monthEnd(OCTOBER, false);
      assertEquals(1, send(false, true));
      assertEquals(1, send(false, true));
      assertEquals(0, server.takenFor("anna@stable.example"));
      assertTrue(said().contains("unsure: Anna Alder"), said());

      assertThrows(RunFault.class, () -> send(false, true, "Anna Elder"));
      assertEquals(0, send(false, true, "anna alder"));

      assertEquals(1, server.takenFor("anna@stable.example"));
      assertEquals(1, server.takenFor("joerg@stable.example"));
    }
  }

  @Test
  void nothing_is_marked_where_the_password_is_for_another_server() throws IOException {
    write(
        "Settings",
        "Setting,Value",
        "From address,office@alder.example",
        "SMTP host,mail.evil.example",
        "SMTP user," + LoopbackSmtpServer.USER);

    RunFault fault = assertThrows(RunFault.class, () -> send(false, true));

    assertTrue(String.valueOf(fault.getMessage()).contains("it was not given"), fault::toString);
    assertFalse(String.valueOf(fault.getMessage()).contains(LoopbackSmtpServer.PASSWORD));
    assertFalse(Files.exists(folder.resolve("book.register.db")));
  }

  @Test
  void without_a_server_in_the_settings_nothing_is_delivered() throws IOException {
    write("Settings", "Setting,Value", "From address,office@alder.example");

    monthEnd(OCTOBER, false);
    assertThrows(RunFault.class, () -> send(false, true));
    assertEquals(0, send(false, false));
  }

  @Test
  void without_a_sender_all_is_printed() throws IOException {
    write("Settings", "Setting,Value", "Business name,Alder Farriery");

    monthEnd(OCTOBER, false);
    assertEquals(0, send(false, false));

    assertEquals(Set.of("print-list.csv", "run.json"), outbox().keySet());
  }

  @Test
  void what_month_end_included_from_earlier_months_stays_in_what_is_sent() throws IOException {
    monthEnd(YearMonth.of(2026, 9), false);
    send(YearMonth.of(2026, 9));
    visits("2026-09-20,Anna Alder,Forgotten,Trim");
    monthEnd(OCTOBER, true);
    String looked = invoiceLines("2026-10");

    send(false, false);
    monthEnd(OCTOBER, false);

    assertTrue(looked.contains("Forgotten"), looked);
    assertEquals(looked, invoiceLines("2026-10"));
  }

  private String invoiceLines(String month) throws IOException {
    return Files.readString(
        folder.resolve("book reports").resolve(month).resolve("figures/invoice-lines.csv"));
  }

  private void monthEnd(YearMonth month, boolean includeEarlier) {
    new MonthEndRun(
            new MonthEndRequest(
                book,
                month,
                Optional.empty(),
                RegisterChoice.USUAL,
                includeEarlier,
                Optional.empty(),
                Optional.empty()),
            machine(),
            terminal())
        .run();
  }

  private void send(YearMonth month) {
    run(request(month, false, false, Set.of()));
  }

  private int send(boolean preview, boolean deliver, String... again) {
    return run(request(OCTOBER, preview, deliver, Set.of(again)));
  }

  private SendRequest request(
      YearMonth month, boolean preview, boolean deliver, Set<String> again) {
    return new SendRequest(
        book,
        month,
        Optional.empty(),
        RegisterChoice.USUAL,
        preview,
        deliver,
        false,
        again,
        Protection.ANY_CERTIFICATE,
        Duration.ZERO);
  }

  private int run(SendRequest request) {
    Map<String, String> environment =
        Map.of(
            CredentialReader.HOST, "localhost",
            CredentialReader.USER, LoopbackSmtpServer.USER,
            CredentialReader.PASSWORD, LoopbackSmtpServer.PASSWORD);
    CredentialReader passwords = new CredentialReader(environment, folder.resolve("none"));
    return new SendRun(request, machine(), passwords, terminal()).run();
  }

  private static Machine machine() {
    return new Machine(LocalDate.of(2026, 11, 2), Locale.UK, Optional.empty());
  }

  private Terminal terminal() {
    PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
    return new Terminal(stream, stream, false);
  }

  private String said() {
    return said.toString(StandardCharsets.UTF_8);
  }

  private void settings(int port) throws IOException {
    write(
        "Settings",
        "Setting,Value",
        "Business name,Alder Farriery",
        "From address,office@alder.example",
        "Country,GB",
        "Currency,GBP",
        "Language,en",
        "SMTP host,localhost",
        "SMTP port," + (port == 0 ? "" : port),
        "SMTP user," + LoopbackSmtpServer.USER);
  }

  private void visits(String more) throws IOException {
    write(
        "Visits",
        "Date,Owner,Horse,Work",
        "2026-10-05,Anna Alder,Bess,Full set",
        "2026-10-06,Jörg Öhler,Donner,Trim",
        "2026-10-07,Paper Pete,Quill,Trim",
        "2026-10-08,Typo Tess,Comma,Trim",
        "2026-09-08,Anna Alder,Bess,Trim",
        more);
  }

  private void write(String sheet, String... lines) throws IOException {
    Files.writeString(book.resolve(sheet + ".csv"), String.join("\n", lines) + "\n");
  }

  private Map<String, byte[]> outbox() throws IOException {
    Path outbox = folder.resolve("book reports/2026-10/outbox");
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> list = Files.list(outbox)) {
      for (Path file : list.toList()) {
        files.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  private MimeMessage mail(String name) throws Exception {
    Path file = folder.resolve("book reports/2026-10/outbox").resolve(name);
    try (InputStream stream = Files.newInputStream(file)) {
      return new MimeMessage(Session.getInstance(new Properties()), stream);
    }
  }

  private List<BilledDocument> documents() {
    return Register.read(folder.resolve("book.register.db"));
  }

  private Set<DocumentState> states() {
    return Set.copyOf(documents().stream().map(BilledDocument::state).toList());
  }
}
