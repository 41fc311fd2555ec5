package clenchbook.reading.rates;

import clenchbook.tax.page.Translations;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The sentences of the preparer's page in other languages: one file a language, {@code
 * english,translation}.
 */
public final class PageTranslations {
  /** The languages of the page; English has a file for what stands in another language. */
  public static final List<String> LANGUAGES = List.of("en", "de", "fr");

  private static final CSVFormat FORMAT = RateFileReader.FORMAT.builder().setTrim(false).get();

  private PageTranslations() {}

  /** All of them, from the program's own resources. */
  public static Translations read() {
    Map<String, Map<String, String>> languages = new LinkedHashMap<>();
    LANGUAGES.forEach(language -> languages.put(language, sentences(language)));
    return new Translations(languages);
  }

  private static Map<String, String> sentences(String language) {
    String resource = "/page-words/" + language + ".csv";
    Map<String, String> sentences = new LinkedHashMap<>();
    try (Reader reader = open(resource);
        CSVParser parser = CSVParser.parse(reader, FORMAT)) {
      for (CSVRecord row : parser) {
        if (sentences.put(row.get("english"), row.get("translation")) != null) {
          throw new IllegalStateException(resource + " says twice: " + row.get("english"));
        }
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return sentences;
  }

  private static Reader open(String resource) {
    InputStream in = PageTranslations.class.getResourceAsStream(resource);
    if (in == null) {
      throw new IllegalStateException("missing from the program: " + resource);
    }
    return new InputStreamReader(in, StandardCharsets.UTF_8);
  }
}
