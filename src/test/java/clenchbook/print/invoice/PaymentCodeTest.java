package clenchbook.print.invoice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.values.CreditorReference;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Payload as in European Payments Council, EPC069-12 version 2.1 (2012), section on the data
 * content; the accounts are the valid and invalid examples of ISO 13616 texts, from memory.
 */
class PaymentCodeTest {
  private static final String IBAN = "DE71 1102 2033 0123 4567 89";

  @Test
  void the_text_has_the_lines_of_the_guideline() {
    assertEquals(
        "BCD\n"
            + "002\n"
            + "1\n"
            + "SCT\n"
            + "BHBLDEHHXXX\n"
            + "Franz Mustermänn\n"
            + "DE71110220330123456789\n"
            + "EUR12.3\n\n\n"
            + "2026-0041",
        PaymentCode.text(
                "Franz Mustermänn",
                IBAN,
                "BHBLDEHHXXX",
                new BigDecimal("12.30"),
                Optional.empty(),
                "2026-0041")
            .orElseThrow());
  }

  /** EPC069-12: the structured line or the unstructured one, never both. */
  @Test
  void a_creditor_reference_stands_in_the_structured_line_alone() {
    String text =
        PaymentCode.text(
                "Ann",
                IBAN,
                "",
                new BigDecimal("12.30"),
                CreditorReference.of("2026-0001"),
                "2026-0001")
            .orElseThrow();
    assertTrue(text.endsWith("\nEUR12.3\n\nRF3120260001\n"), text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "0.004", "-1", "1000000000.00"})
  void an_amount_beyond_the_limits_gets_no_code(String amount) {
    assertTrue(
        PaymentCode.text("A", IBAN, "", new BigDecimal(amount), Optional.empty(), "1").isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "DE71110220330123456788", "DE7111022033012345678", "<script>"})
  void a_wrong_account_gets_no_code(String iban) {
    assertTrue(PaymentCode.text("A", iban, "", BigDecimal.TEN, Optional.empty(), "1").isEmpty());
  }

  @Test
  void a_wrong_bank_code_or_no_name_gets_no_code() {
    assertTrue(PaymentCode.text("A", IBAN, "ABC", BigDecimal.TEN, Optional.empty(), "1").isEmpty());
    assertTrue(PaymentCode.text(" ", IBAN, "", BigDecimal.TEN, Optional.empty(), "1").isEmpty());
  }

  @Test
  void a_reader_reads_the_code_back() throws Exception {
    String text =
        PaymentCode.text(
                "Ružena Żubr", IBAN, "", new BigDecimal("292.50"), Optional.empty(), "2026-0041")
            .orElseThrow();
    BitMatrix squares = PaymentCode.squares(text);
    BinaryBitmap picture = new BinaryBitmap(new GlobalHistogramBinarizer(new Enlarged(squares)));
    byte[] read = new QRCodeReader().decode(picture).getText().getBytes(StandardCharsets.UTF_8);
    assertEquals(text, new String(read, StandardCharsets.UTF_8));
  }

  /** Eight points to a square and a margin, as a camera would see it. */
  private static final class Enlarged extends LuminanceSource {
    private static final int SIDE = 8;
    private final BitMatrix squares;

    Enlarged(BitMatrix squares) {
      super((squares.getWidth() + 8) * SIDE, (squares.getHeight() + 8) * SIDE);
      this.squares = squares;
    }

    @Override
    public byte[] getRow(int y, byte[] row) {
      byte[] line = new byte[getWidth()];
      for (int x = 0; x < getWidth(); x++) {
        line[x] = isDark(x / SIDE - 4, y / SIDE - 4) ? 0 : (byte) 0xFF;
      }
      return line;
    }

    private boolean isDark(int x, int y) {
      boolean inside = x >= 0 && y >= 0 && x < squares.getWidth() && y < squares.getHeight();
      return inside && squares.get(x, y);
    }

    @Override
    public byte[] getMatrix() {
      byte[] all = new byte[getWidth() * getHeight()];
      for (int y = 0; y < getHeight(); y++) {
        System.arraycopy(getRow(y, new byte[0]), 0, all, y * getWidth(), getWidth());
      }
      return all;
    }
  }
}
