package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A large bank file read, matched and laid out, against one pass over it that looks at nothing. */
final class PaymentsSpeed {
  private PaymentsSpeed() {}

  static List<Row> rows(Places places, int runs) throws IOException, InterruptedException {
    List<String> settings = new ArrayList<>(LauncherSettings.of(places));
    settings.add("-Xmx256m");
    JavaStart pace = JavaStart.of(places, StatementPace.class, settings);
    Path file = places.folder().resolve("statement.xml");
    if (!Files.exists(file)) {
      JavaStart.of(places, StatementPace.class, List.of())
          .with(List.of("write", file.toString()))
          .run();
    }
    List<Double> seconds =
        InTurn.seconds(
            runs,
            pace.with(List.of("match", file.toString())),
            pace.with(List.of("floor", file.toString())));
    return List.of(
        Row.ratio(
            "100,000 bank entries against 5,000 open invoices, 256 MB",
            "under 5 s",
            seconds.get(0),
            seconds.get(1),
            "s"));
  }
}
