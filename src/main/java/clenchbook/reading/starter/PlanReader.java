package clenchbook.reading.starter;

import clenchbook.reading.words.StarterWords;
import java.util.ArrayList;
import java.util.List;

/** Makes the plan of one language of the list that all starters share. */
final class PlanReader {
  private final String language;
  private final boolean english;
  private final StarterWords names;
  private final StarterTexts texts;

  PlanReader(String language) {
    this.language = language;
    this.english = language.equals("en");
    this.names = StarterWords.of(language);
    this.texts = StarterTexts.load(language);
  }

  StarterPlan plan() {
    StarterPlan.Titles titles =
        new StarterPlan.Titles(
            texts.word("", "", "Start here"),
            names.heading("Settings", "Setting"),
            names.heading("Settings", "Value"),
            texts.word("", "", "setting note"),
            texts.word("", "", "value note"),
            texts.word("", "", "purpose"));
    List<StarterPlan.Sheet> sheets = StarterList.sheets().stream().map(this::sheet).toList();
    return new StarterPlan(language, texts.howTo(), titles, sheets);
  }

  private StarterPlan.Sheet sheet(StarterList.Sheet sheet) {
    String title = sheet.title();
    return new StarterPlan.Sheet(
        title,
        names.sheet(title),
        english ? sheet.purpose() : texts.purpose(title),
        sheet.columns().stream().map(column -> column(title, column)).toList(),
        sheet.examples().stream().map(cells -> example(sheet, cells)).toList(),
        sheet.settings().stream().map(line -> setting(title, line)).toList());
  }

  private StarterPlan.Column column(String sheet, StarterList.Column column) {
    return new StarterPlan.Column(
        column.heading(),
        names.heading(sheet, column.heading()),
        column.folded(),
        column.width(),
        column.kind(),
        offered(sheet, column.heading(), column.offered()),
        purpose(sheet, column.heading(), column.purpose()));
  }

  private StarterPlan.SettingLine setting(String sheet, List<String> line) {
    String title = line.get(0);
    return new StarterPlan.SettingLine(
        title,
        names.setting(title),
        offered(sheet, title, line.get(1)),
        purpose(sheet, title, line.get(2)));
  }

  private String purpose(String sheet, String name, String inEnglish) {
    return english ? inEnglish : texts.purpose(sheet, name);
  }

  /** A list of cells of another sheet, which has its own name, or words in quotes. */
  private String offered(String sheet, String heading, String list) {
    if (list.startsWith("=")) {
      int end = list.indexOf('!');
      String other = names.sheet(list.substring(1, end)).replace("'", "''");
      return "'" + other + "'" + list.substring(end);
    }
    if (list.isEmpty()) {
      return list;
    }
    List<String> words = new ArrayList<>();
    for (String word : list.substring(1, list.length() - 1).split(",")) {
      words.add(texts.word(sheet, heading, word));
    }
    return '"' + String.join(",", words) + '"';
  }

  private List<String> example(StarterList.Sheet sheet, List<String> cells) {
    List<String> own = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      StarterList.Column column = sheet.columns().get(i);
      own.add(texts.example(sheet.title(), column, cells.get(i)));
    }
    return own;
  }
}
