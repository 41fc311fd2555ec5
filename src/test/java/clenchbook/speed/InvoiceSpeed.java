package clenchbook.speed;

import clenchbook.print.pdf.InvoicePace;
import java.io.IOException;
import java.util.List;

/** An invoice in the steady state, against the same page drawn directly. */
final class InvoiceSpeed {
  private static final List<String> SETTINGS = List.of("-Xmx512m", "-XX:+UseSerialGC");
  private static final int MOST_RUNS = 3;

  private InvoiceSpeed() {}

  static List<Row> rows(Places places, int runs) throws IOException, InterruptedException {
    String logo = places.project().resolve("sample-workbooks/thornfield-logo.png").toString();
    List<Double> pace =
        InTurn.printed(
            Math.min(runs, MOST_RUNS),
            JavaStart.of(places, InvoicePace.class, SETTINGS)
                .with(List.of(logo, places.scratch().toString())));
    double direct = pace.get(0);
    double quick = pace.get(1);
    double ours = pace.get(2);
    double together = pace.get(3);
    return List.of(
        Row.ratio("An invoice in the steady state", "at most 2.0", ours, direct, "ms"),
        Row.ratio("– the floor packed as quickly as ours", "–", ours, quick, "ms"),
        new Row(
            "– on two threads (floor: ours on one)",
            "at least 1.3",
            Row.in(together, "ms"),
            Row.in(ours, "ms"),
            Row.times(ours / together) + " as fast"));
  }
}
