package clenchbook.einvoice;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The codes of the VATEX list, which say why no tax is charged.
 *
 * <p>Source: European Commission, VAT exemption reason code list (VATEX), as the EN 16931
 * validation artefacts 1.3.16 of CEN/TC 434 take them (rule BR-CL-22).
 */
public final class ExemptionCode {
  /** Reverse charge. */
  static final String REVERSE_CHARGE = "VATEX-EU-AE";

  /** Not subject to tax. */
  static final String OUTSIDE_SCOPE = "VATEX-EU-O";

  private static final String PREFIX = "VATEX-";
  private static final Set<String> KNOWN =
      Set.of(
          ("EU-79-C EU-132 EU-132-1A EU-132-1B EU-132-1C EU-132-1D EU-132-1E EU-132-1F EU-132-1G"
                  + " EU-132-1H EU-132-1I EU-132-1J EU-132-1K EU-132-1L EU-132-1M EU-132-1N"
                  + " EU-132-1O EU-132-1P EU-132-1Q EU-135-1 EU-143 EU-143-1A EU-143-1B EU-143-1C"
                  + " EU-143-1D EU-143-1E EU-143-1F EU-143-1FA EU-143-1G EU-143-1H EU-143-1I"
                  + " EU-143-1J EU-143-1K EU-143-1L EU-144 EU-146-1E EU-159 EU-309 EU-148 EU-148-A"
                  + " EU-148-B EU-148-C EU-148-D EU-148-E EU-148-F EU-148-G EU-151 EU-151-1A"
                  + " EU-151-1AA EU-151-1B EU-151-1C EU-151-1D EU-151-1E EU-G EU-O EU-IC EU-AE EU-D"
                  + " EU-F EU-I EU-J FR-FRANCHISE FR-CNWVAT EU-153 FR-CGI261-1 FR-CGI261-2"
                  + " FR-CGI261-3 FR-CGI261-4 FR-CGI261-5 FR-CGI261-7 FR-CGI261-8 FR-CGI261A"
                  + " FR-CGI261B FR-CGI261C-1 FR-CGI261C-2 FR-CGI261C-3 FR-CGI261D-1"
                  + " FR-CGI261D-1BIS FR-CGI261D-2 FR-CGI261D-3 FR-CGI261D-4 FR-CGI261E-1"
                  + " FR-CGI261E-2 FR-CGI277A FR-CGI275 FR-298SEXDECIESA FR-CGI295 FR-AE")
              .split(" "));

  private ExemptionCode() {}

  /**
   * Whether a reason is meant as a code.
   *
   * @param reason words or a code
   * @return true for a text without blanks that begins like the codes of the list
   */
  public static boolean meant(String reason) {
    return reason.strip().toUpperCase(Locale.ROOT).matches(PREFIX + "\\S+");
  }

  /**
   * The code.
   *
   * @param reason words or a code, in any case
   * @return the code in capitals; empty for words and for a code that the list does not know
   */
  public static Optional<String> of(String reason) {
    String code = reason.strip().toUpperCase(Locale.ROOT);
    return code.startsWith(PREFIX) && KNOWN.contains(code.substring(PREFIX.length()))
        ? Optional.of(code)
        : Optional.empty();
  }
}
