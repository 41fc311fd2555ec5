package clenchbook.speed;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What the launcher brings, on a run that prints and on one that only reads. */
final class StartSpeed {
  private StartSpeed() {}

  static List<Row> rows(Places places, int runs) throws IOException, InterruptedException {
    Path book = places.life(WorkingLife.VISITS_A_YEAR);
    List<String> month = places.monthEnd(book);
    List<String> check = List.of("check", book.toString());
    JavaStart plain = JavaStart.ofProgram(places, List.of());
    Places.removeTree(cache(places));
    double first = launched(places, month).run().seconds();
    List<Double> seconds =
        InTurn.seconds(
            runs,
            launched(places, month),
            plain.with(month),
            launched(places, check),
            plain.with(check));
    return List.of(
        Row.ratio(
            "Month-end through the launcher (floor: `java -jar`)",
            "–",
            seconds.get(0),
            seconds.get(1),
            "s"),
        Row.ratio(
            "`check` through the launcher (floor: `java -jar`)",
            "–",
            seconds.get(2),
            seconds.get(3),
            "s"),
        Row.ratio(
            "– the first month-end, which makes the archive (one run)",
            "–",
            first,
            seconds.get(1),
            "s"));
  }

  private static Path cache(Places places) {
    return places.folder().resolve("cache");
  }

  private static FreshProcess launched(Places places, List<String> arguments) {
    List<String> command = new ArrayList<>();
    command.add(places.launcher().toString());
    command.addAll(arguments);
    Map<String, String> environment =
        Map.of(
            "XDG_CACHE_HOME",
            cache(places).toString(),
            "JAVA_HOME",
            System.getProperty("java.home"));
    return new FreshProcess(places, "launcher", command, environment);
  }
}
