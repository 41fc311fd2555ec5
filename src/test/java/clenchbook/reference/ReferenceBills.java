package clenchbook.reference;

import static clenchbook.reference.ReferenceLists.same;

import clenchbook.reference.ReferenceVisit.Payer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Invoices, their lines and taxes, and the balances of a first month. */
final class ReferenceBills {
  /**
   * One line before the invoice's net is split: what was charged, with tax where prices include it.
   */
  static final class Line {
    int row;
    String code = "";
    BigDecimal rate = BigDecimal.ZERO;
    BigDecimal charged = BigDecimal.ZERO;
    BigDecimal net = BigDecimal.ZERO;
  }

  /** The tax of one code at one rate on one invoice. */
  record Tax(String code, BigDecimal rate, BigDecimal net, BigDecimal tax) {}

  /** One owner's invoice. */
  static final class Invoice {
    String owner = "";
    LocalDate due;
    List<Line> lines = new ArrayList<>();
    List<Tax> taxes = new ArrayList<>();
    BigDecimal net = BigDecimal.ZERO;
    BigDecimal tax = BigDecimal.ZERO;

    BigDecimal gross() {
      return net.add(tax);
    }
  }

  /** One owner's balance. */
  static final class Balance {
    BigDecimal forward = BigDecimal.ZERO;
    BigDecimal invoiced = BigDecimal.ZERO;
    BigDecimal paid = BigDecimal.ZERO;

    BigDecimal balance() {
      return forward.add(invoiced).subtract(paid);
    }
  }

  final Map<String, Invoice> invoices = new TreeMap<>();
  final Map<String, Balance> balances = new TreeMap<>();
  private final PlainBook book;
  private final ReferenceLists lists;
  private final YearMonth month;
  private final boolean included;
  private final boolean taxed;

  ReferenceBills(PlainBook book, ReferenceLists lists, YearMonth month) {
    this.book = book;
    this.lists = lists;
    this.month = month;
    this.taxed = !same(book.setting("Tax regime"), "uk") || !book.setting("Tax number").isEmpty();
    this.included = taxed && same(book.setting("Prices include tax"), "yes");
  }

  void bill(List<ReferenceVisit> visits) {
    for (ReferenceVisit visit : visits) {
      if (YearMonth.from(visit.date).equals(month) && !visit.cancelled) {
        charge(visit);
      }
    }
    invoices.values().forEach(this::total);
    visits.stream()
        .filter(v -> YearMonth.from(v.date).equals(month) && !v.cancelled)
        .forEach(this::truck);
    payments();
  }

  private PlainRow owner(String name) {
    return book.sheet("Owners").stream()
        .filter(row -> same(row.text("Owner"), name))
        .findFirst()
        .orElse(null);
  }

  private void charge(ReferenceVisit visit) {
    BigDecimal typed = visit.row.figure("Charge");
    BigDecimal price = typed != null ? typed : visit.work.figure("Price");
    String code = taxed && visit.work != null ? visit.work.text("Tax") : "";
    BigDecimal goods =
        !taxed || visit.work == null || !visit.work.has("Taxed part")
            ? Cents.HUNDRED
            : visit.work.figure("Taxed part");
    BigDecimal exactNet = BigDecimal.ZERO;
    exactNet = exactNet.add(shared(visit, price, typed == null, code, goods));
    if (typed == null) {
      for (Map.Entry<String, BigDecimal> extra : visit.extras.entrySet()) {
        PlainRow material = lists.material(extra.getKey(), "", visit.date);
        if (material != null && material.has("Price")) {
          BigDecimal whole = Cents.round(material.figure("Price").multiply(extra.getValue()));
          exactNet = exactNet.add(shared(visit, whole, true, code, Cents.HUNDRED));
        }
      }
    }
    visit.chargeNet = Cents.round(exactNet);
  }

  /**
   * Shares, then the payer's discount, rounded, then goods and rest; gives the exact net of all.
   */
  private BigDecimal shared(
      ReferenceVisit visit, BigDecimal whole, boolean discounted, String code, BigDecimal goods) {
    List<BigDecimal> parts =
        Cents.split(Cents.round(whole), visit.payers.stream().map(Payer::weight).toList());
    BigDecimal exact = BigDecimal.ZERO;
    for (int i = 0; i < parts.size(); i++) {
      String name = visit.payers.get(i).name();
      PlainRow owner = owner(name);
      BigDecimal off =
          owner == null || !discounted
              ? BigDecimal.ZERO
              : owner.figure("Discount %", BigDecimal.ZERO);
      BigDecimal mine =
          Cents.round(parts.get(i).multiply(Cents.HUNDRED.subtract(off)).movePointLeft(2));
      boolean all = goods.compareTo(Cents.HUNDRED) == 0;
      BigDecimal taxedPart = all ? mine : Cents.round(mine.multiply(goods).movePointLeft(2));
      exact = exact.add(line(visit, name, taxedPart, code));
      if (!all) {
        exact = exact.add(line(visit, name, mine.subtract(taxedPart), ""));
      }
    }
    return exact;
  }

  private BigDecimal line(ReferenceVisit visit, String payer, BigDecimal charged, String code) {
    Line line = new Line();
    line.row = visit.row.number;
    line.code = code;
    line.rate = lists.rate(code, visit.date);
    line.charged = charged;
    invoices.computeIfAbsent(payer, this::opened).lines.add(line);
    return exactNet(line);
  }

  private Invoice opened(String payer) {
    Invoice invoice = new Invoice();
    invoice.owner = payer;
    PlainRow owner = owner(payer);
    BigDecimal terms = owner == null ? null : owner.figure("Terms days");
    terms = terms == null ? book.setting("Terms days", "14") : terms;
    invoice.due = month.atEndOfMonth().plusDays(terms.longValueExact());
    return invoice;
  }

  private BigDecimal exactNet(Line line) {
    return included ? Cents.over(line.charged, BigDecimal.ONE.add(line.rate)) : line.charged;
  }

  private boolean exempt(String payer) {
    PlainRow owner = owner(payer);
    return owner != null && same(owner.text("Tax exempt"), "yes");
  }

  private void total(Invoice invoice) {
    boolean exempt = exempt(invoice.owner);
    boolean perLine = same(book.setting("Tax on"), "line");
    Map<String, List<Line>> codes = new LinkedHashMap<>();
    for (Line line : invoice.lines) {
      codes
          .computeIfAbsent(line.code + "|" + line.rate.stripTrailingZeros(), k -> new ArrayList<>())
          .add(line);
    }
    for (List<Line> lines : codes.values()) {
      BigDecimal tax = perLine ? lineByLine(lines) : together(lines);
      BigDecimal net = Cents.sum(lines.stream().map(line -> line.net).toList());
      tax = exempt ? BigDecimal.ZERO.setScale(2, RoundingMode.UNNECESSARY) : tax;
      invoice.taxes.add(new Tax(lines.get(0).code, lines.get(0).rate, net, tax));
      invoice.net = invoice.net.add(net);
      invoice.tax = invoice.tax.add(tax);
    }
    balance(invoice.owner).invoiced = invoice.gross();
  }

  private BigDecimal lineByLine(List<Line> lines) {
    BigDecimal tax = BigDecimal.ZERO;
    for (Line line : lines) {
      line.net = Cents.round(exactNet(line));
      tax =
          tax.add(
              included
                  ? line.charged.subtract(line.net)
                  : Cents.round(line.net.multiply(line.rate)));
    }
    return tax;
  }

  private BigDecimal together(List<Line> lines) {
    BigDecimal charged = Cents.sum(lines.stream().map(line -> line.charged).toList());
    BigDecimal rate = BigDecimal.ONE.add(lines.get(0).rate);
    BigDecimal net = included ? Cents.round(Cents.over(charged, rate)) : charged;
    List<BigDecimal> nets = Cents.split(net, lines.stream().map(line -> line.charged).toList());
    for (int i = 0; i < lines.size(); i++) {
      lines.get(i).net = nets.get(i);
    }
    return included ? charged.subtract(net) : Cents.round(net.multiply(lines.get(0).rate));
  }

  private Balance balance(String owner) {
    return balances.computeIfAbsent(
        owner,
        name -> {
          Balance balance = new Balance();
          PlainRow row = owner(name);
          balance.forward =
              row == null ? BigDecimal.ZERO : row.figure("Opening balance", BigDecimal.ZERO);
          return balance;
        });
  }

  /** What was taken at the truck: from the one payer, or from the sharers by their shares. */
  private void truck(ReferenceVisit visit) {
    BigDecimal paid = visit.row.figure("Paid");
    if (paid == null) {
      return;
    }
    List<BigDecimal> parts =
        Cents.split(Cents.round(paid), visit.payers.stream().map(Payer::weight).toList());
    for (int i = 0; i < parts.size(); i++) {
      Balance balance = balance(visit.payers.get(i).name());
      balance.paid = balance.paid.add(parts.get(i));
    }
  }

  /** The month's payments; earlier ones do not count, for the books open with this month. */
  private void payments() {
    for (PlainRow row : book.sheet("Owners")) {
      balance(row.text("Owner"));
    }
    for (PlainRow row : book.sheet("Payments")) {
      LocalDate day = row.date("Date", book.setting("Date order"));
      if (day == null || !YearMonth.from(day).equals(month) || same(row.text("Kind"), "tip")) {
        continue;
      }
      BigDecimal amount = row.figure("Amount", BigDecimal.ZERO);
      Balance balance = balance(row.text("Owner"));
      balance.paid =
          same(row.text("Kind"), "refund")
              ? balance.paid.subtract(amount)
              : balance.paid.add(amount);
    }
  }
}
