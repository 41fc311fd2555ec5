package clenchbook.reference;

import clenchbook.billing.accounts.Account;
import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.TaxTotal;
import clenchbook.costing.JobCost;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Lists every figure on which the program and the plain arithmetic differ. */
final class Disagreements {
  private final List<String> found = new ArrayList<>();

  static List<String> of(ReferenceMonth plain, ProgramMonth program) {
    Disagreements all = new Disagreements();
    all.jobs(plain.visits, program.costs());
    all.invoices(plain.bills, program.invoices());
    all.balances(plain.bills.balances, program.accounts());
    return all.found;
  }

  private void same(String what, BigDecimal plain, BigDecimal program) {
    if (plain.compareTo(program) != 0) {
      found.add(what + ": plain " + plain + ", program " + program);
    }
  }

  private void sameMinutes(String what, BigDecimal plain, BigDecimal program) {
    same(what, plain.setScale(6, RoundingMode.HALF_UP), program.setScale(6, RoundingMode.HALF_UP));
  }

  private void same(String what, Object plain, Object program) {
    if (!plain.equals(program)) {
      found.add(what + ": plain " + plain + ", program " + program);
    }
  }

  private void jobs(List<ReferenceVisit> plain, List<JobCost> program) {
    Map<Integer, JobCost> rows = new TreeMap<>();
    program.forEach(cost -> rows.put(cost.job().visit().source().row(), cost));
    same(
        "job rows",
        plain.stream().map(v -> v.row.number).sorted().toList(),
        List.copyOf(rows.keySet()));
    for (ReferenceVisit visit : plain) {
      JobCost cost = rows.get(visit.row.number);
      if (cost != null) {
        job(
            "row "
                + visit.row.number
                + " "
                + visit.date
                + " "
                + visit.horse
                + " "
                + visit.workName
                + " ",
            visit,
            cost);
      }
    }
  }

  private void job(String row, ReferenceVisit visit, JobCost cost) {
    same(row + "charge_net", visit.chargeNet, cost.chargeNet());
    same(row + "materials", visit.materials, cost.materials());
    same(row + "gas", visit.gas, cost.gas());
    same(row + "sundries", visit.sundries, cost.sundries());
    same(row + "travel", visit.travel, cost.travel());
    same(row + "overhead", visit.overhead, cost.overhead());
    same(row + "labour", visit.labour, cost.labour());
    same(row + "margin_before_labour", visit.marginBeforeLabour(), cost.marginBeforeLabour());
    same(
        row + "margin_after_labour",
        visit.marginBeforeLabour().subtract(visit.labour),
        cost.marginAfterLabour());
    sameMinutes(row + "job_minutes", visit.jobMinutes, cost.jobMinutes());
    sameMinutes(row + "drive_minutes", visit.driveMinutes, cost.driveMinutes());
    if (!visit.cancelled) {
      same(
          row + "measured",
          visit.measured,
          cost.job().minutes().measured().toString().toLowerCase(java.util.Locale.ROOT));
    }
    if (visit.minutes().signum() > 0) {
      BigDecimal plain =
          Cents.over(visit.marginBeforeLabour().multiply(Cents.SIXTY), visit.minutes());
      sameMinutes(
          row + "earned_per_hour",
          Cents.round(plain),
          cost.earnedPerHour().map(Cents::round).orElse(BigDecimal.ZERO));
    }
  }

  private void invoices(ReferenceBills plain, List<BilledDocument> program) {
    Map<String, BilledDocument> owners = new TreeMap<>();
    program.forEach(document -> owners.put(document.owner(), document));
    same("invoiced owners", List.copyOf(plain.invoices.keySet()), List.copyOf(owners.keySet()));
    for (ReferenceBills.Invoice invoice : plain.invoices.values()) {
      BilledDocument document = owners.get(invoice.owner);
      if (document != null) {
        invoice(invoice.owner + " ", invoice, document);
      }
    }
  }

  private void invoice(String owner, ReferenceBills.Invoice plain, BilledDocument program) {
    same(owner + "net", plain.net, program.net());
    same(owner + "tax", plain.tax, program.tax());
    same(owner + "gross", plain.gross(), program.gross());
    same(owner + "due", plain.due, program.due());
    List<String> lines = new ArrayList<>();
    plain.lines.forEach(line -> addLine(lines, line.row, line.code, line.net));
    List<String> printed = new ArrayList<>();
    for (DocumentLine line : program.lines()) {
      addLine(printed, line.row(), line.tax().code(), line.net());
    }
    same(owner + "lines", lines.stream().sorted().toList(), printed.stream().sorted().toList());
    List<String> taxes = new ArrayList<>();
    plain.taxes.stream()
        .filter(tax -> !tax.code().isEmpty())
        .forEach(tax -> addTax(taxes, tax.code(), tax.net(), tax.tax()));
    List<String> shown = new ArrayList<>();
    for (TaxTotal tax : program.taxes()) {
      if (!tax.code().isEmpty()) {
        addTax(shown, tax.code(), tax.net(), tax.tax());
      }
    }
    same(owner + "taxes", taxes.stream().sorted().toList(), shown.stream().sorted().toList());
  }

  /** A line of nought says nothing: goods that are none, or the rest of none. */
  private static void addLine(List<String> lines, int row, String code, BigDecimal net) {
    if (net.signum() != 0) {
      lines.add(row + " " + code + " " + net.setScale(2, RoundingMode.UNNECESSARY));
    }
  }

  private static void addTax(List<String> taxes, String code, BigDecimal net, BigDecimal tax) {
    taxes.add(
        code
            + " "
            + net.setScale(2, RoundingMode.UNNECESSARY)
            + " "
            + tax.setScale(2, RoundingMode.UNNECESSARY));
  }

  private void balances(Map<String, ReferenceBills.Balance> plain, List<Account> program) {
    Map<String, Account> owners = new TreeMap<>();
    program.forEach(account -> owners.put(account.owner(), account));
    for (Map.Entry<String, ReferenceBills.Balance> entry : plain.entrySet()) {
      ReferenceBills.Balance balance = entry.getValue();
      Account account = owners.remove(entry.getKey());
      String owner = "balance of " + entry.getKey() + " ";
      boolean blank =
          balance.forward.signum() == 0
              && balance.invoiced.signum() == 0
              && balance.paid.signum() == 0;
      if (account == null) {
        if (!blank) {
          found.add(owner + "is missing");
        }
        continue;
      }
      same(owner + "brought_forward", balance.forward, account.broughtForward());
      same(owner + "invoiced", balance.invoiced, account.invoiced());
      same(owner + "paid", balance.paid, account.paid());
      same(owner + "balance", balance.balance(), account.balance());
    }
    owners.keySet().forEach(owner -> found.add("balance of " + owner + " only in the program"));
  }
}
