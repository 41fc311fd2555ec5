package clenchbook.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.jobs.WrittenBook;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands on a document's lines; the rules are the program's own, the amounts on paper. */
class LineMakerTest {
  private static final String ROW = "Date: 2026-10-05, Horse: Bess, Owner: Ruth, Work: Full set, ";

  private static WrittenBook book() {
    return new WrittenBook()
        .work("Work: Full set, Price: 100")
        .material("Item: pads, Kind: pad, Price: 10")
        .material("Item: studs, Kind: stud, Price: 2")
        .material("Item: plain, Kind: keg, Size: 0, Unit cost: 8");
  }

  private static Job job(WrittenBook book) {
    return book.jobs().all().get(0);
  }

  private static Map<String, List<DocumentLine>> lines(WrittenBook book) {
    Jobs jobs = book.jobs();
    LineMaker maker = new LineMaker(jobs.index(), job -> VisitKey.of(job, 1));
    return maker.byPayer(jobs.all().get(0));
  }

  /** A typed Charge is final and includes the extras: what they are decides nothing then. */
  @ParameterizedTest
  @CsvSource({
    "'Charge: 80, Extras: pads:2', charge=80",
    "'Charge: 80.50', charge=80.5",
    "'Charge: list', list",
    "'Charge: list, Extras: Pads:2; studs:8', list;pads =2;studs =8"
  })
  void what_of_the_row_decides_the_charge_is_kept_with_the_line(String cells, String own) {
    assertEquals(own, LineMaker.own(job(book().visit(ROW + cells))));
  }

  @ParameterizedTest
  @CsvSource({
    "'Shoes: 4, Shoe: plain, Size: 0', 4 × plain 0",
    "'Shoe: plain:2; plain:2, Size: 0:2; 00:2', 2 × plain 0; 2 × plain 00",
    "'Shoes: 4, Size: 0', 4 × 0",
    "'Shoes: 4, Shoe: plain', 4 × plain",
    "'Shoes: 4', 4 ×",
    "'Shoes: 0', ''"
  })
  void the_shoes_stand_in_words(String cells, String words) {
    List<DocumentLine> lines = lines(book().visit(ROW + cells)).get("Ruth");
    assertEquals(words, lines.get(0).shoeing());
  }

  @Test
  void each_payer_has_lines_of_their_own_and_all_of_them_are_what_is_charged() {
    WrittenBook shared =
        book()
            .horse("Horse: Bess, Owner: Ruth, Share %: 75")
            .horse("Horse: Bess, Owner: Adam, Share %: 25")
            .visit("Date: 2026-10-05, Horse: Bess, Work: Full set, Charge: list, Extras: pads:2");
    Map<String, List<DocumentLine>> lines = lines(shared);
    assertEquals(List.of("Ruth", "Adam"), List.copyOf(lines.keySet()));
    assertEquals(List.of("75.00", "15.00"), amounts(lines.get("Ruth")));
    assertEquals(List.of("25.00", "5.00"), amounts(lines.get("Adam")));
    Jobs jobs = shared.jobs();
    LineMaker maker = new LineMaker(jobs.index(), job -> VisitKey.of(job, 1));
    assertEquals(new BigDecimal("120.00"), maker.charged(jobs.all().get(0)));
  }

  @Test
  void a_visit_is_known_by_the_owner_typed_in_it_else_by_the_horses() {
    WrittenBook book =
        book()
            .horse("Horse: Bess, Owner: Ruth")
            .visit("Date: 2026-10-05, Horse: Bess, Owner: Kim, Work: Trim")
            .visit("Date: 2026-10-05, Horse: Bess, Work: Trim");
    List<Job> jobs = book.jobs().all();
    assertEquals("2026-10-05|bess|trim|kim|1", VisitKey.of(jobs.get(0), 1).line());
    assertEquals("2026-10-05|bess|trim|ruth|2", VisitKey.of(jobs.get(1), 2).line());
  }

  private static List<String> amounts(List<DocumentLine> lines) {
    return lines.stream().map(line -> line.amount().toPlainString()).toList();
  }
}
