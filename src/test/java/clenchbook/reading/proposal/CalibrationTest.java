package clenchbook.reading.proposal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.reading.BookReader;
import clenchbook.reading.ReadOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Books whose headings are renamed at random: of what is called so and so sure, how much is right.
 * Common practice, no source.
 */
class CalibrationTest {
  @TempDir Path folder;

  /** Right and wrong by tens of per cent; what was to be found and what of it was. */
  private static final class Tally {
    final Map<Integer, int[]> tens = new TreeMap<>();
    final Map<RenamedBook.Way, int[]> ways = new TreeMap<>();
    final List<String> wrong = new ArrayList<>();
    int books;

    void count(RenamedBook book, String name, List<Proposal> proposals) {
      books++;
      for (Proposal row : proposals) {
        String key = RenamedBook.key(row.sheet(), row.mine());
        RenamedBook.Truth truth = book.truths.get(key);
        if (truth == null) {
          continue;
        }
        int[] way = ways.computeIfAbsent(truth.way(), unused -> new int[3]);
        boolean said = !row.means().isEmpty();
        boolean right = row.means().equals(truth.meaning());
        way[said ? right ? 0 : 1 : 2]++;
        if (said) {
          tens.computeIfAbsent(row.sure() / 10 * 10, unused -> new int[2])[right ? 0 : 1]++;
          if (!right) {
            wrong.add(row.sure() + " " + name + " " + row + " but " + truth);
          }
        }
      }
    }

    /** What was called so sure, or surer, and is wrong. */
    List<String> wrongAt(int sure) {
      return wrong.stream().filter(line -> Integer.parseInt(line.substring(0, 2)) >= sure).toList();
    }

    /** Of a hundred names that have a meaning and are no nonsense, how many were found. */
    int found() {
      int right = 0;
      int all = 0;
      for (Map.Entry<RenamedBook.Way, int[]> way : ways.entrySet()) {
        boolean counts =
            way.getKey() != RenamedBook.Way.NONSENSE && way.getKey() != RenamedBook.Way.TEMPTING;
        right += counts ? way.getValue()[0] : 0;
        all += counts ? way.getValue()[0] + way.getValue()[1] + way.getValue()[2] : 0;
      }
      return all == 0 ? 0 : right * 100 / all;
    }

    String table() {
      StringBuilder table = new StringBuilder(books + " books\n");
      tens.forEach(
          (ten, counts) ->
              table.append(
                  String.format(
                      Locale.ROOT,
                      "| %d to %d | %d | %d | %.1f %% |%n",
                      ten,
                      ten + 9,
                      counts[0] + counts[1],
                      counts[0],
                      100.0 * counts[0] / (counts[0] + counts[1]))));
      ways.forEach(
          (way, counts) ->
              table.append(
                  String.format(
                      Locale.ROOT,
                      "%s: right %d, wrong %d, left open %d%n",
                      way,
                      counts[0],
                      counts[1],
                      counts[2])));
      return table.toString();
    }
  }

  private void add(Tally tally, PlainBook plain, long seed, boolean heldOut) throws IOException {
    RenamedBook renamed = new RenamedBook(plain, seed, heldOut);
    Path file = folder.resolve("book.xlsx");
    Files.write(file, renamed.book.bytes());
    tally.count(renamed, plain.name() + " " + seed, propose(file));
  }

  private static List<Proposal> propose(Path file) throws IOException {
    return BookReader.propose(file, ReadOptions.of(Locale.UK));
  }

  /** Books by seeds, each of the eight renamed so many times. */
  private Tally tally(long firstSeed, int rounds, boolean heldOut) throws IOException {
    Tally tally = new Tally();
    List<PlainBook> books = PlainBook.all();
    for (int round = 0; round < rounds; round++) {
      for (int i = 0; i < books.size(); i++) {
        add(tally, books.get(i), firstSeed + round * 100L + i, heldOut);
      }
    }
    return tally;
  }

  @Test
  void nothing_that_is_called_ninety_sure_is_wrong_and_two_of_three_are_found() throws IOException {
    Tally tally = tally(500, 3, false);
    assertEquals(List.of(), tally.wrongAt(90));
    assertTrue(tally.found() >= 66, tally.table());
    assertEquals(24, tally.books);
  }

  @Test
  void a_wrong_meaning_would_be_counted() throws IOException {
    RenamedBook renamed = new RenamedBook(PlainBook.small("en"), 7, false);
    Path file = folder.resolve("book.xlsx");
    Files.write(file, renamed.book.bytes());
    renamed.truths.replaceAll((key, truth) -> new RenamedBook.Truth("Lost", truth.way()));
    Tally tally = new Tally();
    tally.count(renamed, "planted", propose(file));
    assertTrue(tally.wrongAt(60).size() > 3, tally.table());
  }

  /** The table of docs/own-words.md: seeds and words that no weight was set by. */
  @Test
  @Tag("demand")
  void of_held_out_books_nothing_that_is_called_ninety_sure_is_wrong() throws IOException {
    boolean heldOut = !Boolean.getBoolean("tuning");
    long seed = heldOut ? 500_000 : 1_000;
    Tally tally = tally(seed, Integer.getInteger("rounds", 25), heldOut);
    System.out.println(tally.table());
    tally.wrong.forEach(System.out::println);
    assertEquals(List.of(), tally.wrongAt(90));
    assertTrue(tally.found() >= 66, tally.table());
  }
}
