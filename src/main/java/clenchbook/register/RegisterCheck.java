package clenchbook.register;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.billing.documents.DocumentLine;
import clenchbook.billing.documents.TaxTotal;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Verifies a register: no gap, no repeat, sums agree, credits name an invoice. */
public final class RegisterCheck {
  private RegisterCheck() {}

  /**
   * Verifies documents.
   *
   * @param documents all documents
   * @return what is wrong, one line each; empty when all is well
   */
  public static List<Message> faults(List<BilledDocument> documents) {
    List<Message> faults = new ArrayList<>();
    numbers(documents, faults);
    Map<String, BilledDocument> byNumber = new HashMap<>();
    documents.forEach(document -> byNumber.put(document.number(), document));
    for (BilledDocument document : documents) {
      sums(document, faults);
      if (!document.invoice() && !byNumber.containsKey(document.corrects())) {
        faults.add(Message.of("register.fault.unknownInvoice", document.number()));
      }
    }
    return faults;
  }

  private static void numbers(List<BilledDocument> documents, List<Message> faults) {
    Set<String> numbers = new HashSet<>();
    Map<String, Map<Integer, String>> series = new TreeMap<>();
    for (BilledDocument document : documents) {
      if (!numbers.add(document.number())) {
        faults.add(Message.of("register.fault.twice", document.number()));
      }
      series
          .computeIfAbsent(document.series(), unused -> new TreeMap<>())
          .put(document.sequence(), document.number());
    }
    series.forEach(
        (name, sequence) -> {
          int expected = sequence.keySet().iterator().next();
          for (Map.Entry<Integer, String> given : sequence.entrySet()) {
            if (!skipped(expected, given, numbers)) {
              faults.add(Message.of("register.fault.gap", name, Integer.toString(given.getKey())));
            }
            expected = given.getKey() + 1;
          }
        });
  }

  /** Numbers are passed over only where another series has given them already. */
  private static boolean skipped(int first, Map.Entry<Integer, String> given, Set<String> numbers) {
    String last = given.getKey().toString();
    int at = given.getValue().lastIndexOf(last);
    for (int missing = first; missing < given.getKey(); missing++) {
      int digits = Math.max(0, last.length() - Integer.toString(missing).length());
      String number =
          at < 0
              ? ""
              : given.getValue().substring(0, at)
                  + "0".repeat(digits)
                  + missing
                  + given.getValue().substring(at + last.length());
      boolean taken = numbers.contains(number) || numbers.contains(unpadded(number, missing));
      if (!taken) {
        return false;
      }
    }
    return true;
  }

  private static String unpadded(String number, int sequence) {
    return number.replaceFirst("0+(?=" + sequence + "(\\D|$))", "");
  }

  private static void sums(BilledDocument document, List<Message> faults) {
    BigDecimal lines =
        document.lines().stream().map(DocumentLine::net).reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal tax =
        document.taxes().stream().map(TaxTotal::tax).reduce(BigDecimal.ZERO, BigDecimal::add);
    if (lines.compareTo(document.net()) != 0) {
      faults.add(Message.of("register.fault.lines", document.number()));
    }
    if (tax.compareTo(document.tax()) != 0) {
      faults.add(Message.of("register.fault.taxes", document.number()));
    }
    if (document.net().add(document.tax()).compareTo(document.gross()) != 0) {
      faults.add(Message.of("register.fault.total", document.number()));
    }
  }
}
