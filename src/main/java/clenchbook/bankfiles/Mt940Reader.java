package clenchbook.bankfiles;

import clenchbook.matching.bank.BankStatement;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads MT940 customer statements, and MT942 interim reports, with or without the envelope of the
 * network, field by field. Source: SWIFT Standards, Category 9, MT 940 Customer Statement Message,
 * and the banks' guides named in docs/payments.md.
 */
final class Mt940Reader {
  private static final Pattern FIELD = Pattern.compile("^\\s?:(\\d{2}[A-Z]?):(.*)$");
  private static final Pattern BALANCE =
      Pattern.compile("^([CD])(\\d{6})([A-Z]{3})\\s*([\\d,.]{1,20})");
  private static final int MOST_LINES = 60;

  private final String file;
  private final Intake intake;
  private int place;
  private int entries;
  private String tag = "";
  private final List<String> lines = new ArrayList<>();
  private @Nullable Open open;
  private @Nullable Mt940Entry entry;

  /** A statement that has begun. */
  private static final class Open {
    private String account = "";
    private String number = "";
    private String currency = "";
    private Optional<BigDecimal> opening = Optional.empty();
    private Optional<BigDecimal> closing = Optional.empty();
    private Optional<LocalDate> from = Optional.empty();
    private Optional<LocalDate> to = Optional.empty();
    private Optional<LocalDate> last = Optional.empty();
  }

  Mt940Reader(String file, Intake intake) {
    this.file = file;
    this.intake = intake;
  }

  /** Reads to the end of the file. */
  void read(Reader reader) throws IOException {
    LineSource source = new LineSource(reader);
    String line = source.next();
    while (line != null) {
      line(line);
      line = source.next();
    }
    field();
    close();
    if (place == 0) {
      throw new UnreadableStatement(Message.of("bankfiles.noStatement"));
    }
  }

  private void line(String line) {
    int block = line.indexOf("{4:");
    String bare = block >= 0 ? line.substring(block + 3) : line;
    Matcher begins = FIELD.matcher(bare);
    if (begins.matches()) {
      field();
      tag = begins.group(1);
      lines.add(begins.group(2));
    } else if (isEnd(bare)) {
      field();
    } else if (!tag.isEmpty() && lines.size() < MOST_LINES) {
      lines.add(bare);
    }
  }

  /** The line that ends a message: a hyphen alone, or before what closes the envelope. */
  private static boolean isEnd(String line) {
    String bare = line.strip();
    return bare.equals("-") || bare.startsWith("-}") || bare.equals("-XXX");
  }

  /** Uses the field that was read up to here. */
  private void field() {
    if (!tag.isEmpty()) {
      String ended = tag;
      List<String> content = List.copyOf(lines);
      tag = "";
      lines.clear();
      use(ended, content);
    }
  }

  private void use(String field, List<String> content) {
    String first = content.get(0).strip();
    switch (field) {
      case "20" -> begin();
      case "25", "25P" -> statement().account = first.replace(" ", "");
      case "28", "28C" -> statement().number = first;
      case "60F", "60M" -> opening(first);
      case "61" -> {
        flush();
        entries++;
        entry = new Mt940Entry(Integer.toString(entries), content);
      }
      case "86" -> {
        if (entry != null) {
          entry.details(content);
          flush();
        }
      }
      case "62F", "62M" -> closing(first);
      default -> flush();
    }
  }

  private void begin() {
    flush();
    close();
    open = new Open();
  }

  private Open statement() {
    if (open == null) {
      open = new Open();
    }
    return open;
  }

  private void opening(String text) {
    Matcher balance = balance(text);
    Open now = statement();
    now.opening = Optional.of(amount(balance));
    now.from = day(balance);
    now.currency = balance.group(3);
  }

  private void closing(String text) {
    flush();
    Matcher balance = balance(text);
    Open now = statement();
    now.closing = Optional.of(amount(balance));
    now.to = day(balance);
  }

  private static Matcher balance(String text) {
    Matcher balance = BALANCE.matcher(text);
    if (!balance.find()) {
      throw new UnreadableStatement(Message.of("bankfiles.balance", cut(text)));
    }
    return balance;
  }

  private static BigDecimal amount(Matcher balance) {
    BigDecimal size = Mt940Entry.amount(balance.group(4));
    return balance.group(1).equals("D") ? size.negate() : size;
  }

  private static Optional<LocalDate> day(Matcher balance) {
    return Texts.compactDay(Mt940Entry.century(balance.group(2)));
  }

  private void flush() {
    if (entry != null) {
      Open now = statement();
      var made = entry.made(intake.nextStatement(), now.currency);
      intake.entry(made);
      now.last =
          now.last.filter(day -> day.isAfter(made.date())).or(() -> Optional.of(made.date()));
      entry = null;
    }
  }

  private void close() {
    flush();
    Open now = open;
    open = null;
    if (now == null) {
      return;
    }
    if (now.opening.isPresent() && now.closing.isEmpty()) {
      throw new UnreadableStatement(Message.of("bankfiles.cut.statement"));
    }
    place++;
    intake.statement(
        new BankStatement(
            file,
            place,
            now.number,
            now.account,
            now.currency,
            now.from,
            now.to.or(() -> now.last),
            now.opening,
            now.closing,
            now.from.isPresent(),
            now.from.isPresent()));
  }

  private static String cut(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "..." : text;
  }
}
