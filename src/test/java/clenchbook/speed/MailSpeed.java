package clenchbook.speed;

import clenchbook.delivery.DeliveryPace;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Mails a second over one kept line to a server on this machine. */
final class MailSpeed {
  private static final int MOST_RUNS = 3;

  private MailSpeed() {}

  static List<Row> rows(Places places, int runs) throws IOException, InterruptedException {
    List<String> command =
        List.of(
            JavaStart.java(),
            "-cp",
            System.getProperty("java.class.path"),
            DeliveryPace.class.getName(),
            places.scratch().toString());
    double pace =
        InTurn.printed(Math.min(runs, MOST_RUNS), new FreshProcess(places, "DeliveryPace", command))
            .get(0);
    String figure = String.format(Locale.ROOT, "%.0f a second", pace);
    return List.of(Row.alone("Mail, 400 messages with two PDFs", "at least 30", "–", figure));
  }
}
