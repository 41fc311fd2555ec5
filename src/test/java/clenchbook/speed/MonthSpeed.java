package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A year's book and its month's end, against a pass and as many pages from one template. */
final class MonthSpeed {
  private MonthSpeed() {}

  /**
   * Measures both with the launcher's settings and an archive each, and both without.
   *
   * @param archived the program as the launcher starts it
   */
  static List<Row> rows(Places places, int runs, JavaStart archived)
      throws IOException, InterruptedException {
    Path book = places.life(WorkingLife.VISITS_A_YEAR);
    List<String> month = places.monthEnd(book);
    archived.with(month).run();
    List<String> pages = PdfPages.below(places.scratch());
    List<String> pass = new ArrayList<>();
    pass.add(book.toString());
    pass.add(places.scratch().resolve("floor").toString());
    pass.addAll(pages);
    JavaStart floor = JavaStart.of(places, MonthFloor.class, LauncherSettings.of(places));
    JavaStart plain = JavaStart.ofProgram(places, List.of());
    JavaStart plainFloor = JavaStart.of(places, MonthFloor.class, List.of());
    List<Double> seconds =
        InTurn.seconds(
            runs,
            archived.with(month),
            floor.archived(pass).with(pass),
            plain.with(month),
            plainFloor.with(pass));
    int all = pages.stream().mapToInt(Integer::parseInt).sum();
    String what = "Month-end, 1,500 visits, %d documents of %d pages".formatted(pages.size(), all);
    return List.of(
        Row.ratio(what, "at most 1.6", seconds.get(0), seconds.get(1), "s"),
        Row.ratio("– plain `java`, no archive", "–", seconds.get(2), seconds.get(3), "s"));
  }
}
