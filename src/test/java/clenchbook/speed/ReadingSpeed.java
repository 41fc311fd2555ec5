package clenchbook.speed;

import clenchbook.reading.CellsPass;
import java.io.IOException;
import java.util.List;

/** Every cell of a large sheet typed and handed out, against the StAX pass. */
final class ReadingSpeed {
  private static final int ROWS = 500_000;
  private static final List<String> SETTINGS = List.of("-Xmx64m", "-XX:+UseSerialGC");

  private ReadingSpeed() {}

  static List<Row> rows(Places places, int runs) throws IOException, InterruptedException {
    List<String> book = List.of(places.wide(ROWS).toString());
    List<Double> seconds =
        InTurn.seconds(
            runs,
            JavaStart.of(places, CellsPass.class, SETTINGS).with(book),
            JavaStart.of(places, StaxPass.class, SETTINGS).with(book));
    return List.of(
        Row.ratio(
            "Reading 500,000 rows × 20 columns, 64 MB",
            "at most 2.0",
            seconds.get(0),
            seconds.get(1),
            "s"));
  }
}
