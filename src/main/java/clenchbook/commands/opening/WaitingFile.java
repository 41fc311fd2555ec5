package clenchbook.commands.opening;

import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.matching.PaymentFiles;
import clenchbook.matching.WaitingPayments;
import clenchbook.texts.Message;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads what the last run of {@code payments} laid out to be pasted. */
public final class WaitingFile {
  /** Where it lies below the folder of reports. */
  public static final String PATH = "payments/payments-to-add.csv";

  private static final long LARGEST = 64L << 20;
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private WaitingFile() {}

  /**
   * What waits to be pasted.
   *
   * @param reports the folder of reports
   * @param payments the rows of Payments
   * @param terminal told where the file can't be read; then nothing waits
   * @return none where no such file lies there
   */
  public static WaitingPayments read(Path reports, List<Payment> payments, Terminal terminal) {
    Path file = reports.resolve(PATH);
    if (!Files.isRegularFile(file)) {
      return WaitingPayments.NONE;
    }
    try {
      if (Files.size(file) > LARGEST) {
        throw new IOException("it is larger than any farrier's");
      }
      return WaitingPayments.of(rows(file), payments);
    } catch (IOException | UncheckedIOException | IllegalArgumentException | DateTimeException e) {
      terminal.warn(Message.of("commands.waitingUnread", PATH));
      return WaitingPayments.NONE;
    }
  }

  private static List<WaitingPayments.Row> rows(Path file) throws IOException {
    List<WaitingPayments.Row> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, FORMAT)) {
      if (!parser.getHeaderNames().containsAll(PaymentFiles.TO_ADD)) {
        throw new IOException("it has other columns");
      }
      for (CSVRecord row : parser) {
        rows.add(
            new WaitingPayments.Row(
                LocalDate.parse(row.get("Date")),
                written(row.get("Owner")),
                new BigDecimal(row.get("Amount")),
                written(row.get("Invoice")),
                kind(row.get("Kind")),
                written(row.get("Reference")),
                Integer.parseInt(row.get("sure"))));
      }
    }
    return rows;
  }

  /** Without the mark that kept a spreadsheet from taking it for a formula. */
  private static String written(String cell) {
    return cell.startsWith("'") ? cell.substring(1) : cell;
  }

  private static PaymentKind kind(String word) {
    Optional<PaymentKind> kind =
        Arrays.stream(PaymentKind.values()).filter(each -> each.word().equals(word)).findFirst();
    return kind.orElseThrow(() -> new IllegalArgumentException("no kind: " + word));
  }
}
