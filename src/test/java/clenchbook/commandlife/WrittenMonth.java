package clenchbook.commandlife;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The files of one month, as the last command left them. */
record WrittenMonth(Path folder) {
  private static final List<String> FOLDERS = List.of("invoices", "statements");

  String page() throws IOException {
    return Files.readString(folder.resolve("index.html"));
  }

  List<Map<String, String>> figures(String name) {
    return WrittenFiles.csv(folder.resolve("figures/" + name + ".csv"));
  }

  List<String> states() {
    return figures("invoices").stream().map(row -> row.getOrDefault("state", "")).toList();
  }

  Map<String, Integer> balances() {
    Map<String, Integer> said = new TreeMap<>();
    for (Map<String, String> row : figures("balances")) {
      int balance = WrittenFiles.cents(row, "balance");
      assertEquals(
          balance,
          WrittenFiles.cents(row, "brought_forward")
              + WrittenFiles.cents(row, "invoiced")
              - WrittenFiles.cents(row, "paid"),
          row::toString);
      said.merge(row.getOrDefault("owner", ""), balance, Integer::sum);
    }
    said.values().removeIf(sum -> sum == 0);
    return said;
  }

  /** Each document of the month goes with a mail or with the print list, and lies there. */
  void allIsPosted() throws IOException {
    Path outbox = folder.resolve("outbox");
    StringBuilder post = new StringBuilder();
    for (Map<String, String> row : WrittenFiles.csv(outbox.resolve("print-list.csv"))) {
      post.append(row.get("numbers")).append('\n');
      for (String file : row.getOrDefault("files", "").split("; ")) {
        assertTrue(
            FOLDERS.stream().anyMatch(in -> Files.exists(folder.resolve(in).resolve(file))),
            "no such file: " + file);
      }
    }
    try (Stream<Path> mails = Files.list(outbox)) {
      for (Path mail : mails.filter(path -> path.toString().endsWith(".eml")).toList()) {
        post.append(Files.readString(mail));
      }
    }
    for (Map<String, String> row : figures("invoices")) {
      String number = row.getOrDefault("number", "");
      boolean counts = !"void".equals(row.get("state"));
      assertEquals(counts, post.indexOf(number) >= 0, number + ": is it posted?");
    }
  }
}
