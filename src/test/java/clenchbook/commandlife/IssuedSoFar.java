package clenchbook.commandlife;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What has been issued in a book's life: each document as it was first seen, for ever the same. */
final class IssuedSoFar {
  private final Map<String, Map<String, String>> issued = new TreeMap<>();
  private final Map<String, String> issuedPrint = new TreeMap<>();
  private final Map<String, Map<String, Integer>> billed = new TreeMap<>();

  List<String> numbers() {
    return List.copyOf(issued.keySet());
  }

  void look(WrittenMonth month, FarriersBook book) {
    Map<String, String> prints = WrittenFiles.digests(month.folder().resolve("invoices"));
    for (Map<String, String> row : month.figures("invoices")) {
      String number = row.getOrDefault("number", "");
      if (List.of("draft", "void").contains(row.get("state"))) {
        assertFalse(issued.containsKey(number), number + " was issued and is no more");
        continue;
      }
      Map<String, String> says = new TreeMap<>(row);
      List.of("state", "open").forEach(says::remove);
      assertEquals(issued.computeIfAbsent(number, unused -> says), says, "an issued one changed");
      List<String> print =
          prints.keySet().stream().filter(name -> name.startsWith(number + " ")).toList();
      assertEquals(1, print.size(), number + " has one print, not " + print);
      String digest = prints.getOrDefault(print.get(0), "");
      assertEquals(issuedPrint.computeIfAbsent(number, unused -> digest), digest, number);
    }
    notTooMuch(month, book);
  }

  /** What issued documents ask for a day and horse is never more than its rows ever did. */
  private void notTooMuch(WrittenMonth month, FarriersBook book) {
    month.figures("invoice-lines").stream()
        .filter(line -> issued.containsKey(line.getOrDefault("number", "")))
        .map(line -> line.getOrDefault("number", ""))
        .distinct()
        .forEach(billed::remove);
    for (Map<String, String> line : month.figures("invoice-lines")) {
      String number = line.getOrDefault("number", "");
      if (issued.containsKey(number)) {
        billed
            .computeIfAbsent(number, unused -> new TreeMap<>())
            .merge(
                line.get("date") + " " + line.get("horse"),
                WrittenFiles.cents(line, "net"),
                Integer::sum);
      }
    }
    billed()
        .forEach(
            (place, net) -> {
              assertTrue(net >= 0, place + " is billed at less than nothing: " + net);
              assertTrue(net <= book.mostAsked(place), place + " is billed too high: " + net);
            });
  }

  Map<String, Integer> billed() {
    Map<String, Integer> sums = new TreeMap<>();
    billed.values().forEach(each -> each.forEach((at, net) -> sums.merge(at, net, Integer::sum)));
    return sums;
  }
}
