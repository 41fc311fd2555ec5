package clenchbook.print.invoice;

import clenchbook.values.CreditorReference;
import clenchbook.values.Iban;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.math.BigDecimal;
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
   * @param reference the structured reference, written in the line that banks check
   * @param number what the transfer shall say where there is none
   * @return the text; empty where the rules don't allow a code, such as a wrong IBAN
   */
  static Optional<String> text(
      String name,
      String iban,
      String bic,
      BigDecimal amount,
      Optional<CreditorReference> reference,
      String number) {
    String account = compact(iban);
    String bank = compact(bic);
    boolean allowed =
        Iban.of(account).isPresent()
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
                reference.map(CreditorReference::compact).orElse(""),
                reference.isPresent() ? "" : cut(number, LONGEST_TEXT)));
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
