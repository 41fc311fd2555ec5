package clenchbook.reference;

import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;

/** All figures of one month of one workbook, as the books would have them at the first run. */
final class ReferenceMonth {
  final List<ReferenceVisit> visits;
  final ReferenceBills bills;

  ReferenceMonth(Path file, YearMonth month) throws IOException {
    PlainBook book = new PlainBook(file);
    ReferenceLists lists = new ReferenceLists(book);
    List<ReferenceVisit> all = new ReferenceVisits(book, lists).all();
    new ReferenceStock(book, lists).walk(all);
    new ReferenceCosts(book, all, month).work();
    bills = new ReferenceBills(book, lists, month);
    bills.bill(all);
    visits = all.stream().filter(visit -> YearMonth.from(visit.date).equals(month)).toList();
    visits.stream().filter(visit -> visit.cancelled).forEach(ReferenceMonth::blank);
  }

  private static void blank(ReferenceVisit visit) {
    visit.parts.clear();
    visit.shoes = 0;
  }
}
