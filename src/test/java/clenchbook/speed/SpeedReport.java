package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Measures the packaged program against its floors, everything in one run, and rewrites the table
 * of {@code docs/performance.md}. Nothing passes or fails but a process that does not end well.
 */
public final class SpeedReport {
  private SpeedReport() {}

  /** {@code SpeedReport PROJECT}; the property {@code speed.runs} is 5 unless set. */
  public static void main(String[] args) throws IOException, InterruptedException {
    Places places = new Places(Path.of(args[0]));
    int runs = Integer.getInteger("speed.runs", 5);
    FloorsJar.make(places);
    List<Row> rows = rows(places, runs);
    places.emptyScratch();
    String facts =
        "Median of %d, ours and floor in turn. Measured on %s."
            .formatted(runs, MachineFacts.text());
    SpeedTable.write(places.project().resolve("docs/performance.md"), facts, rows);
    System.out.println(facts);
    rows.forEach(row -> System.out.println(row.markdown()));
  }

  private static List<Row> rows(Places places, int runs) throws IOException, InterruptedException {
    List<String> year = places.monthEnd(places.life(WorkingLife.VISITS_A_YEAR));
    JavaStart archived = JavaStart.ofProgram(places, LauncherSettings.of(places)).archived(year);
    List<Row> rows = new ArrayList<>();
    rows.addAll(ReadingSpeed.rows(places, runs));
    rows.addAll(InvoiceSpeed.rows(places, runs));
    rows.addAll(MonthSpeed.rows(places, runs, archived));
    rows.addAll(LifetimeSpeed.rows(places, runs, archived));
    rows.addAll(PaymentsSpeed.rows(places, runs));
    rows.addAll(StartSpeed.rows(places, runs));
    rows.addAll(MailSpeed.rows(places, runs));
    return rows;
  }
}
