package clenchbook.print.invoice;

import clenchbook.reports.letters.HowToPay;
import java.util.ArrayList;
import java.util.List;

/** Says how to pay, line by line. */
final class PaymentLines {
  private PaymentLines() {}

  /**
   * The lines.
   *
   * @param please the sentence they begin with
   * @param pay the ways to pay
   * @param reference what a transfer shall say; empty for none
   * @param wording the words
   * @return one text, lines broken
   */
  static String of(String please, HowToPay pay, String reference, LetterWording wording) {
    List<String> lines = new ArrayList<>(List.of(please));
    pay.text().ifPresent(lines::add);
    pay.iban().ifPresent(iban -> lines.add(wording.say("pay.iban", inFours(iban))));
    pay.bic().ifPresent(bic -> lines.add(wording.say("pay.bic", bic)));
    if (pay.iban().isPresent() && !reference.isBlank()) {
      lines.add(wording.say("pay.reference", reference));
    }
    pay.link().ifPresent(link -> lines.add(wording.say("pay.link", link)));
    return String.join("\n", lines);
  }

  private static String inFours(String iban) {
    return iban.replaceAll("\\s", "").replaceAll("(.{4})(?=.)", "$1\u00A0");
  }
}
