package clenchbook.reference;

import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads a run's tables back and lists every figure that differs from the plain arithmetic. */
final class WrittenFigures {
  private static final CSVFormat TABLE =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
  private final Path figures;
  private final List<String> found = new ArrayList<>();

  private WrittenFigures(Path figures) {
    this.figures = figures;
  }

  static List<String> disagreements(Path figures, ReferenceMonth plain) throws IOException {
    WrittenFigures written = new WrittenFigures(figures);
    written.jobs(plain.visits);
    written.invoices(plain.bills);
    written.balances(plain.bills);
    return written.found;
  }

  private List<CSVRecord> rows(String table) throws IOException {
    try (Reader reader =
        Files.newBufferedReader(figures.resolve(table + ".csv"), StandardCharsets.UTF_8)) {
      return TABLE.parse(reader).getRecords();
    }
  }

  private void same(String what, Object plain, Object written) {
    if (!plain.equals(written)) {
      found.add(what + ": plain " + plain + ", written " + written);
    }
  }

  private void money(String what, BigDecimal plain, String written) {
    same(what, plain.setScale(2, RoundingMode.UNNECESSARY).toPlainString(), written);
  }

  /** Minutes are written to some decimals; as many as stand there must agree. */
  private void minutes(String what, BigDecimal plain, String written) {
    BigDecimal read = new BigDecimal(written);
    BigDecimal cut = plain.setScale(Math.max(read.scale(), 4), RoundingMode.HALF_UP);
    same(what, cut.stripTrailingZeros(), read.stripTrailingZeros());
  }

  private void jobs(List<ReferenceVisit> plain) throws IOException {
    Map<Integer, CSVRecord> written = new TreeMap<>();
    for (CSVRecord row : rows("jobs")) {
      written.put(Integer.valueOf(row.get("row")), row);
    }
    same(
        "rows of jobs.csv",
        plain.stream().map(visit -> visit.row.number).sorted().toList(),
        List.copyOf(written.keySet()));
    for (ReferenceVisit visit : plain) {
      job(visit, written.get(visit.row.number));
    }
  }

  private void job(ReferenceVisit visit, CSVRecord row) {
    String what = "jobs.csv row " + visit.row.number + " ";
    same(what + "date", visit.date.toString(), row.get("date"));
    same(what + "shoes", String.valueOf(visit.shoes), row.get("shoes"));
    money(what + "charge_net", visit.chargeNet, row.get("charge_net"));
    money(what + "materials", visit.materials, row.get("materials"));
    money(what + "gas", visit.gas, row.get("gas"));
    money(what + "sundries", visit.sundries, row.get("sundries"));
    money(what + "travel", visit.travel, row.get("travel"));
    money(what + "overhead", visit.overhead, row.get("overhead"));
    money(what + "labour", visit.labour, row.get("labour"));
    BigDecimal before = visit.marginBeforeLabour();
    money(what + "margin_before_labour", before, row.get("margin_before_labour"));
    money(
        what + "margin_after_labour",
        before.subtract(visit.labour),
        row.get("margin_after_labour"));
    minutes(what + "job_minutes", visit.jobMinutes, row.get("job_minutes"));
    minutes(what + "drive_minutes", visit.driveMinutes, row.get("drive_minutes"));
    if (visit.minutes().signum() > 0) {
      BigDecimal hourly = Cents.over(before.multiply(Cents.SIXTY), visit.minutes());
      money(what + "earned_per_hour", Cents.round(hourly), row.get("earned_per_hour"));
    }
    if (!visit.cancelled) {
      same(what + "measured", visit.measured, row.get("measured"));
    }
  }

  private void invoices(ReferenceBills plain) throws IOException {
    Map<String, String> numbers = new TreeMap<>();
    for (CSVRecord row : rows("invoices")) {
      String owner = row.get("owner");
      numbers.put(row.get("number"), owner);
      ReferenceBills.Invoice invoice = plain.invoices.get(owner);
      if (invoice == null) {
        found.add("invoices.csv: nothing is billed to " + owner);
        continue;
      }
      money(owner + " net", invoice.net, row.get("net"));
      money(owner + " tax", invoice.tax, row.get("tax"));
      money(owner + " gross", invoice.gross(), row.get("gross"));
      same(owner + " due", invoice.due.toString(), row.get("due"));
    }
    same(
        "owners of invoices.csv",
        List.copyOf(plain.invoices.keySet()),
        numbers.values().stream().sorted().toList());
    lines(plain, numbers);
    taxes(plain, numbers);
  }

  private void lines(ReferenceBills plain, Map<String, String> numbers) throws IOException {
    List<String> expected = new ArrayList<>();
    for (ReferenceBills.Invoice invoice : plain.invoices.values()) {
      for (ReferenceBills.Line line : invoice.lines) {
        if (line.net.signum() != 0) {
          expected.add(invoice.owner + " row " + line.row + " " + line.code + " " + line.net);
        }
      }
    }
    List<String> written = new ArrayList<>();
    for (CSVRecord row : rows("invoice-lines")) {
      if (new BigDecimal(row.get("net")).signum() != 0) {
        String owner = numbers.get(row.get("number"));
        written.add(
            owner + " row " + row.get("row") + " " + row.get("tax_code") + " " + row.get("net"));
      }
    }
    same(
        "invoice-lines.csv",
        expected.stream().sorted().toList(),
        written.stream().sorted().toList());
  }

  private void taxes(ReferenceBills plain, Map<String, String> numbers) throws IOException {
    List<String> expected = new ArrayList<>();
    for (ReferenceBills.Invoice invoice : plain.invoices.values()) {
      for (ReferenceBills.Tax tax : invoice.taxes) {
        if (!tax.code().isEmpty()) {
          expected.add(invoice.owner + " " + tax.code() + " " + tax.net() + " " + tax.tax());
        }
      }
    }
    List<String> written = new ArrayList<>();
    for (CSVRecord row : rows("tax")) {
      if (!row.get("tax_code").isEmpty()) {
        String owner = numbers.get(row.get("number"));
        written.add(
            owner + " " + row.get("tax_code") + " " + row.get("net") + " " + row.get("tax"));
      }
    }
    same("tax.csv", expected.stream().sorted().toList(), written.stream().sorted().toList());
  }

  private void balances(ReferenceBills plain) throws IOException {
    for (CSVRecord row : rows("balances")) {
      String owner = row.get("owner");
      ReferenceBills.Balance balance = plain.balances.get(owner);
      if (balance == null) {
        found.add("balances.csv: unknown " + owner);
        continue;
      }
      money(owner + " brought_forward", balance.forward, row.get("brought_forward"));
      money(owner + " invoiced", balance.invoiced, row.get("invoiced"));
      money(owner + " paid", balance.paid, row.get("paid"));
      money(owner + " balance", balance.balance(), row.get("balance"));
      BigDecimal ages =
          new BigDecimal(row.get("current"))
              .add(new BigDecimal(row.get("past_due_1_30")))
              .add(new BigDecimal(row.get("past_due_31_60")))
              .add(new BigDecimal(row.get("past_due_over_60")));
      money(owner + " ages", balance.balance(), ages.toPlainString());
    }
  }
}
