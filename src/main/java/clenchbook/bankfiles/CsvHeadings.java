package clenchbook.bankfiles;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The words that head the columns of banks' CSV files in English, German, French, Spanish and
 * Dutch. The list is data: {@code bankfiles/headings.csv}. Common practice, no source.
 */
final class CsvHeadings {
  /** What a column holds. */
  enum Meaning {
    DATE,
    VALUE_DATE,
    AMOUNT,
    CREDIT,
    DEBIT,
    SIGN,
    WHO,
    PAYER,
    PAYEE,
    ACCOUNT,
    OWN_ACCOUNT,
    TEXT,
    REFERENCE,
    BANK_REFERENCE,
    CURRENCY,
    BALANCE,
    TYPE,
    STATUS
  }

  private static final Map<String, Meaning> WORDS = words();

  private CsvHeadings() {}

  private static Map<String, Meaning> words() {
    Map<String, Meaning> words = new HashMap<>();
    CSVFormat format = CSVFormat.Builder.create().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream stream = CsvHeadings.class.getResourceAsStream("/bankfiles/headings.csv")) {
      if (stream == null) {
        throw new IllegalStateException("the words of banks' headings are missing");
      }
      for (CSVRecord line :
          CSVParser.parse(new InputStreamReader(stream, StandardCharsets.UTF_8), format)) {
        Meaning meaning = Meaning.valueOf(line.get(0).toUpperCase(Locale.ROOT).replace(' ', '_'));
        words.putIfAbsent(line.get(1), meaning);
      }
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The columns of a row of headings, each meaning's in order from the left.
   *
   * @param cells the row
   * @return empty unless a date and some money are among them
   */
  static Optional<Map<Meaning, List<Integer>>> of(List<String> cells) {
    Map<Meaning, List<Integer>> columns = new EnumMap<>(Meaning.class);
    for (int column = 0; column < cells.size(); column++) {
      int place = column;
      meaning(cells.get(column))
          .ifPresent(
              found ->
                  columns.computeIfAbsent(found, unused -> new java.util.ArrayList<>()).add(place));
    }
    boolean dated = columns.containsKey(Meaning.DATE) || columns.containsKey(Meaning.VALUE_DATE);
    boolean money = columns.containsKey(Meaning.AMOUNT) || columns.containsKey(Meaning.CREDIT);
    return dated && money ? Optional.of(columns) : Optional.empty();
  }

  /** What a heading means: by its words, without case, accents, units in brackets and currency. */
  static Optional<Meaning> meaning(String heading) {
    String bare = bare(heading);
    Meaning found = WORDS.get(bare);
    if (found == null) {
      found =
          WORDS.get(bare.replaceAll("(^| )(in )?(eur|euro|gbp|usd|chf|cad|aud)( |$)", " ").strip());
    }
    return Optional.ofNullable(found).or(() -> oneOfSeveral(bare));
  }

  /** A text that a bank spreads over numbered columns, such as {@code Omschrijving-2}. */
  private static Optional<Meaning> oneOfSeveral(String bare) {
    Optional<Meaning> meaning =
        Optional.ofNullable(WORDS.get(bare.replaceFirst("\\s*\\d{1,2}$", "")));
    return meaning.filter(Meaning.TEXT::equals);
  }

  private static String bare(String heading) {
    String parted =
        Normalizer.normalize(heading.replace("ß", "ss"), Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}+", "");
    return parted.replaceAll("[(\\[].*?[)\\]]", " ").replaceAll("[^\\p{L}\\p{Nd}]+", " ").strip();
  }
}
