package clenchbook.print.invoice;

import clenchbook.reports.letters.Ageing;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.StatementDocument;
import clenchbook.reports.letters.StatementEntry;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the statement's template prints. */
public final class StatementPage {
  private static final String BALANCE = "balance";

  private final DocumentHead head;
  private final LetterWording wording;
  private final PrintFormats formats;
  private final Optional<LogoImage> logo;
  private final List<Map<String, Object>> rows = new ArrayList<>();

  /** Prints statements under this head, with the logo where there is one. */
  public StatementPage(DocumentHead head, Optional<LogoImage> logo) {
    this.head = head;
    this.logo = logo;
    this.wording = LetterWording.of(head.locale().language());
    this.formats = new PrintFormats(head.locale(), head.currency());
  }

  /** The statement's fields and rows, formatted for its language and country. */
  public PrintedPage of(StatementDocument statement) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put(wording.say("fact.date"), formats.longDate(head.date()));
    facts.put(wording.say("fact.balance"), formats.money(statement.balance()));
    String title = wording.say("title.statement");
    Map<String, Object> parts = LetterParts.of(head, facts, wording, logo);
    put(parts, "title", title);
    put(parts, "documentName", title);
    put(parts, "runningHead", LetterParts.runningHead(head, title));
    put(parts, "subtitle", period(statement.from(), head.date()));
    columns(parts);
    ageing(parts, statement.ageing());
    ending(parts, statement);
    broughtForward(statement);
    statement.entries().forEach(this::entry);
    keepTogether();
    balance(statement.balance());
    row("isEnd", BALANCE);
    return new PrintedPage(
        title + ", " + head.to().name(),
        parts,
        rows,
        LetterParts.notes(head, parts, statement.pay().link(), wording));
  }

  private String period(LocalDate from, LocalDate to) {
    return wording.say("subtitle.statement", formats.longDate(from), formats.longDate(to));
  }

  private void columns(Map<String, Object> parts) {
    String sign = formats.currencySign();
    put(parts, "columnDate", wording.say("column.date"));
    put(parts, "columnEntry", wording.say("column.entry"));
    put(parts, "columnCharged", wording.say("column.charged", sign));
    put(parts, "columnReceived", wording.say("column.received", sign));
    put(parts, "columnBalance", wording.say("column.balance", sign));
  }

  private void ageing(Map<String, Object> parts, Ageing ageing) {
    put(parts, "ageingHeading", wording.say("ageing.heading"));
    List<String> keys = List.of("ageing.current", "ageing.1to30", "ageing.31to60", "ageing.over60");
    List<BigDecimal> amounts =
        List.of(
            ageing.current(),
            ageing.pastDue1To30(),
            ageing.pastDue31To60(),
            ageing.pastDueOver60());
    for (int i = 0; i < keys.size(); i++) {
      put(parts, "ageingLabel" + i, wording.say(keys.get(i)));
      put(parts, "ageing" + i, formats.money(amounts.get(i)));
    }
  }

  private void ending(Map<String, Object> parts, StatementDocument statement) {
    boolean overdue = overdue(statement.asked()).signum() > 0;
    String upTo =
        statement
            .enteredUpTo()
            .map(day -> " " + wording.say("reminder.enteredUpTo", formats.longDate(day)))
            .orElse("");
    put(parts, "reminder", reminder(statement) + upTo);
    if (overdue) {
      statement
          .lateFeePercentPerMonth()
          .ifPresent(fee -> put(parts, "lateFee", wording.say("lateFee", formats.percent(fee))));
    }
    if (statement.balance().signum() > 0) {
      String please = wording.say("pay.balance", formats.money(statement.balance()));
      put(parts, "payHeading", wording.say("pay.heading"));
      put(parts, "payText", PaymentLines.of(please, statement.pay(), "", wording));
    }
  }

  private static BigDecimal overdue(Ageing ageing) {
    return ageing.pastDue1To30().add(ageing.pastDue31To60()).add(ageing.pastDueOver60());
  }

  /**
   * Speaks of the oldest part: gently at first, plainly at last, and only of what was past due when
   * payments were last entered; what fell due since may lie in the bank.
   */
  private String reminder(StatementDocument statement) {
    Ageing ageing = statement.asked();
    if (ageing.pastDueOver60().signum() > 0) {
      return wording.say("reminder.over60", formats.money(ageing.pastDueOver60()));
    }
    if (ageing.pastDue31To60().signum() > 0) {
      return wording.say("reminder.31to60", formats.money(ageing.pastDue31To60()));
    }
    if (ageing.pastDue1To30().signum() > 0) {
      return wording.say("reminder.1to30", formats.money(ageing.pastDue1To30()));
    }
    BigDecimal since = overdue(statement.ageing());
    if (since.signum() > 0) {
      return wording.say("reminder.since", formats.money(since));
    }
    return wording.say(statement.balance().signum() > 0 ? "reminder.open" : "reminder.none");
  }

  /** The head keeps two entries on its page, and so does the balance. */
  private void keepTogether() {
    for (int i = 0; i < rows.size(); i++) {
      if (i >= rows.size() - 2) {
        rows.get(i).put("block", BALANCE);
      } else if (i < 2) {
        rows.get(i).put("block", "first");
      }
    }
  }

  private void broughtForward(StatementDocument statement) {
    Map<String, Object> row = row("isLine", "line 0");
    put(row, "date", formats.shortDate(statement.from()));
    put(row, "entry", wording.say("entry.broughtForward"));
    put(row, "balance", formats.amount(statement.broughtForward()));
  }

  private void entry(StatementEntry entry) {
    Map<String, Object> row = row("isLine", "line " + rows.size());
    put(row, "date", formats.shortDate(entry.date()));
    put(row, "entry", wording.say(key(entry.kind()), entry.reference()));
    boolean charged = entry.amount().signum() > 0 || entry.kind() == StatementEntry.Kind.INVOICE;
    put(
        row,
        charged ? "charged" : "received",
        formats.amount(charged ? entry.amount() : entry.amount().negate()));
    put(row, "balance", formats.amount(entry.balance()));
  }

  private static String key(StatementEntry.Kind kind) {
    return switch (kind) {
      case INVOICE -> "entry.invoice";
      case CREDIT_NOTE -> "entry.creditNote";
      case PAID_AT_TRUCK -> "entry.paidAtTruck";
      case PAYMENT -> "entry.payment";
      case DEPOSIT -> "entry.deposit";
      case REFUND -> "entry.refund";
      case WRITTEN_OFF -> "entry.writtenOff";
    };
  }

  private void balance(BigDecimal balance) {
    Map<String, Object> row = row("isDue", BALANCE);
    String key =
        switch (balance.signum()) {
          case 1 -> "balance.due";
          case 0 -> "balance.nothing";
          default -> "balance.credit";
        };
    put(row, "label", wording.say(key));
    put(row, "amount", formats.money(balance.abs()));
  }

  private Map<String, Object> row(String kind, String block) {
    return LetterParts.row(rows, kind, block);
  }

  private static void put(Map<String, Object> row, String name, String text) {
    LetterParts.put(row, name, text);
  }
}
