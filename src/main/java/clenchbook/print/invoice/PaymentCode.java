package clenchbook.print.invoice;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The square code that a banking app reads to fill in a transfer in euro.
 *
 * <p>Source: European Payments Council, EPC069-12, Quick Response Code guidelines to enable data
 * capture for the initiation of a SEPA credit transfer; the limit of 331 bytes from memory.
 */
final class PaymentCode {
  private static final BigDecimal LEAST = new BigDecimal("0.01");
  private static final BigDecimal MOST = new BigDecimal("999999999.99");
  private static final int LONGEST_NAME = 70;
  private static final int LONGEST_TEXT = 140;
  private static final int LARGEST_PAYLOAD = 331;

  private PaymentCode() {}

  /**
   * The code's text.
   *
   * @param name whom the money goes to
   * @param iban the account
   * @param bic the bank; may be empty
   * @param amount in euro
   * @param reference what the transfer shall say
   * @return the text; empty where the rules don't allow a code, such as a wrong IBAN
   */
  static Optional<String> text(
      String name, String iban, String bic, BigDecimal amount, String reference) {
    String account = compact(iban);
    String bank = compact(bic);
    boolean allowed =
        isIban(account)
            && (bank.isEmpty() || bank.length() == 8 || bank.length() == 11)
            && !name.isBlank()
            && amount.compareTo(LEAST) >= 0
            && amount.compareTo(MOST) <= 0;
    if (!allowed) {
      return Optional.empty();
    }
    String text =
        String.join(
            "\n",
            List.of(
                "BCD",
                "002",
                "1",
                "SCT",
                bank,
                cut(name, LONGEST_NAME),
                account,
                "EUR" + amount.stripTrailingZeros().toPlainString(),
                "",
                "",
                cut(reference, LONGEST_TEXT)));
    boolean fits = text.getBytes(StandardCharsets.UTF_8).length <= LARGEST_PAYLOAD;
    return fits ? Optional.of(text) : Optional.empty();
  }

  /** The code's squares, with the quiet margin left off. */
  static BitMatrix squares(String text) {
    // The bytes are UTF-8 as the text itself says; a mark for it in the code would confuse some
    // apps.
    String bytes = new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    Map<EncodeHintType, Object> hints =
        Map.of(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, 0);
    try {
      return new QRCodeWriter().encode(bytes, BarcodeFormat.QR_CODE, 0, 0, hints);
    } catch (WriterException e) {
      throw new IllegalArgumentException("331 bytes fit into a code of level M", e);
    }
  }

  /** Whether the check digits are right: ISO 13616, remainder 97-10 of ISO 7064. */
  static boolean isIban(String account) {
    if (!account.matches("[A-Z]{2}[0-9]{2}[A-Z0-9]{11,30}")) {
      return false;
    }
    StringBuilder digits = new StringBuilder();
    (account.substring(4) + account.substring(0, 4))
        .chars()
        .forEach(c -> digits.append(Character.getNumericValue(c)));
    return new BigInteger(digits.toString()).mod(BigInteger.valueOf(97)).intValue() == 1;
  }

  private static String compact(String code) {
    return code.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
  }

  private static String cut(String text, int length) {
    String line = text.replaceAll("\\s+", " ").strip();
    int end = Math.min(length, line.length());
    boolean splitsPair = end < line.length() && Character.isLowSurrogate(line.charAt(end));
    return line.substring(0, splitsPair ? end - 1 : end);
  }
}
