package clenchbook.tax;

import clenchbook.tax.expenses.CategoryMap;
import clenchbook.tax.jurisdiction.Jurisdiction;
import clenchbook.texts.Message;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What pages say for English words that stand in files: classes of assets, why a cost does not
 * count. A word that neither the program nor the country translates stands as it is.
 */
final class FileWords {
  private static final Pattern YEARS = Pattern.compile("(\\d+) years");

  private static final Map<String, Message> COMMON =
      Map.ofEntries(
          Map.entry("private", Message.of("tax.left.private")),
          Map.entry("asset", Message.of("tax.left.asset")),
          Map.entry("not allowed", Message.of("tax.left.notAllowed")),
          Map.entry("tax paid over", Message.of("tax.left.taxPaidOver")),
          Map.entry(CategoryMap.UNKNOWN, Message.of("tax.line.unmapped")));

  private final Map<String, Message> words;

  FileWords(Jurisdiction jurisdiction) {
    this.words = new HashMap<>(COMMON);
    words.putAll(jurisdiction.words());
  }

  /** What a page says for a word; nothing for a blank one. */
  Message said(String word) {
    Matcher years = YEARS.matcher(word);
    if (years.matches()) {
      return Message.of("tax.asset.years", Integer.valueOf(years.group(1)));
    }
    return words.getOrDefault(word, Message.literal(word));
  }
}
