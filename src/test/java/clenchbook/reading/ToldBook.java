package clenchbook.reading;

import clenchbook.book.Book;
import clenchbook.book.Setting;
import java.util.ArrayList;
import java.util.List;

/** Everything in a book as lines, without the places it was read from: to compare two readings. */
final class ToldBook {
  private ToldBook() {}

  static String of(ReadResult result) {
    Book book = result.book();
    List<String> lines = new ArrayList<>();
    List<List<?>> lists =
        List.of(
            book.visits(),
            book.work(),
            book.materials(),
            book.owners(),
            book.horses(),
            book.places(),
            book.trips(),
            book.purchases(),
            book.payments(),
            book.assets(),
            book.counts(),
            book.taxRates(),
            book.strain());
    for (List<?> list : lists) {
      list.forEach(row -> lines.add(row.toString().replaceFirst("source=SourceRow\\[.*?}]", "")));
    }
    for (Setting setting : Setting.values()) {
      lines.add(setting + "=" + book.settings().text(setting));
    }
    book.controls().stream().map(Object::toString).sorted().forEach(lines::add);
    result.problems().stream().map(p -> p.kind() + " " + p.at()).sorted().forEach(lines::add);
    return String.join("\n", lines);
  }
}
