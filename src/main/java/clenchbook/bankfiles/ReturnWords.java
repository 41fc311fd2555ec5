package clenchbook.bankfiles;

import clenchbook.matching.bank.BankEntry.Standing;
import java.util.regex.Pattern;

/**
 * What banks call money that came back, where no code says so, in five languages. Common practice,
 * no source.
 */
final class ReturnWords {
  private static final Pattern RETURNED =
      Pattern.compile(
          "(?iu)\\b(R(Ü|UE|U)CK(LASTSCHRIFT|BUCHUNG|GABE|RUF|(Ü|UE|U)BERWEISUNG)\\w*|RETOURE|STORNO\\w*|RETURNED("
              + " CHEQUE| CHECK| ITEM| PAYMENT| DIRECT DEBIT)?|UNPAID( CHEQUE|"
              + " ITEM)?|BOUNCED|CHARGEBACK|REVERSAL|REJET\\w*|IMPAY(É|E)E?S?|REJETÉ?|RETOUR (DE"
              + " )?(CHÈQUE|VIREMENT|"
              + "PRÉLÈVEMENT)|DEVOLUCI(Ó|O)N|DEVUELT[OA]|IMPAGAD[OA]|STORNERING|TERUGBOEKING"
              + "|GESTORNEERD|ONBETAALD)\\b");

  private ReturnWords() {}

  static Standing standing(String text) {
    return RETURNED.matcher(text).find() ? Standing.RETURNED : Standing.BOOKED;
  }
}
