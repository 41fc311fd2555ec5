package clenchbook.reading.starter;

import clenchbook.reading.words.StarterWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the list that all starters share, with the words of one language. */
final class PlanReader {
  private static final String SETTINGS = "Settings";

  private final String language;
  private final StarterWords names;
  private final StarterTexts english = StarterTexts.load("en");
  private final Optional<StarterTexts> texts;
  private final List<StarterPlan.Sheet> sheets = new ArrayList<>();
  private List<List<String>> examples = new ArrayList<>();
  private List<String> firstExample = new ArrayList<>();
  private String title = "";

  PlanReader(String language) {
    this.language = language;
    this.names = StarterWords.of(language);
    this.texts =
        language.equals("en") ? Optional.empty() : Optional.of(StarterTexts.load(language));
  }

  StarterPlan plan() {
    StarterTexts.resource("starter.txt").lines().forEach(this::take);
    endExamples();
    StarterTexts own = texts.orElse(english);
    return new StarterPlan(
        language,
        own.howTo(),
        new StarterPlan.Titles(
            own.word("", "", "Start here"),
            names.heading(SETTINGS, "Setting"),
            names.heading(SETTINGS, "Value"),
            own.word("", "", "setting note"),
            own.word("", "", "value note"),
            own.word("", "", "purpose")),
        sheets);
  }

  private void take(String line) {
    if (line.startsWith("[")) {
      endExamples();
      int end = line.indexOf(']');
      title = line.substring(1, end);
      String purpose = line.substring(end + 1).strip();
      examples = new ArrayList<>();
      sheets.add(
          new StarterPlan.Sheet(
              title,
              names.sheet(title),
              texts.map(own -> own.purpose(title)).orElse(purpose),
              new ArrayList<>(),
              examples,
              new ArrayList<>()));
    } else if (line.startsWith("+")) {
      examples.add(example(parts(line.substring(1))));
    } else if (!line.isBlank() && !line.startsWith("#")) {
      add(sheets.get(sheets.size() - 1), parts(line));
    }
  }

  /** The first example row stands with the columns. */
  private void endExamples() {
    if (!firstExample.isEmpty()) {
      examples.add(0, example(firstExample));
    }
    firstExample = new ArrayList<>();
  }

  private void add(StarterPlan.Sheet sheet, List<String> parts) {
    if (title.equals(SETTINGS)) {
      String name = parts.get(0);
      sheet
          .settings()
          .add(
              new StarterPlan.SettingLine(
                  name, names.setting(name), offered(name, parts.get(1)), purpose(name, parts.get(2))));
      return;
    }
    boolean folded = parts.get(0).startsWith("~");
    String heading = folded ? parts.get(0).substring(1) : parts.get(0);
    sheet
        .columns()
        .add(
            new StarterPlan.Column(
                heading,
                names.heading(title, heading),
                folded,
                Integer.parseInt(parts.get(1)),
                parts.get(2),
                offered(heading, parts.get(3)),
                purpose(heading, parts.get(5))));
    firstExample.add(parts.get(4));
  }

  private String purpose(String name, String english) {
    return texts.map(own -> own.purpose(title, name)).orElse(english);
  }

  /** A list of cells of another sheet, which has its own name, or words in quotes. */
  private String offered(String heading, String list) {
    if (list.startsWith("=")) {
      int end = list.indexOf('!');
      return "'" + names.sheet(list.substring(1, end)).replace("'", "''") + "'" + list.substring(end);
    }
    if (list.isEmpty()) {
      return list;
    }
    List<String> words = new ArrayList<>();
    for (String word : list.replace("\"", "").split(",")) {
      words.add(word(heading, word));
    }
    return "\"" + String.join(",", words) + "\"";
  }

  private List<String> example(List<String> cells) {
    List<StarterPlan.Column> columns = sheets.get(sheets.size() - 1).columns();
    List<String> own = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      StarterPlan.Column column = columns.get(i);
      boolean word = column.kind().equals("text") && !cells.get(i).isEmpty();
      own.add(word ? word(column.heading(), cells.get(i)) : cells.get(i));
    }
    return own;
  }

  private String word(String heading, String english) {
    return texts.map(own -> own.word(title, heading, english)).orElse(english);
  }

  private static List<String> parts(String line) {
    List<String> parts = new ArrayList<>();
    for (String part : line.split("\\|", -1)) {
      parts.add(part.strip());
    }
    return parts;
  }
}
