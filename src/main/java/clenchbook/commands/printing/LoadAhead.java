package clenchbook.commands.printing;

import clenchbook.print.pdf.FirstSheets;
import clenchbook.register.Register;
import java.util.List;

/**
 * Loads what printing and the register need on a thread of its own, while the command line and the
 * book are still being read. What goes wrong there goes wrong again where it is looked at.
 */
public final class LoadAhead {
  private static final List<Runnable> LOADS = List.of(Register::loadAhead, FirstSheets::letter);

  private LoadAhead() {}

  /** Begins; the thread keeps no process alive. */
  public static void begin() {
    Thread thread = new Thread(() -> LOADS.forEach(LoadAhead::quietly), "loading ahead");
    thread.setDaemon(true);
    thread.start();
  }

  private static void quietly(Runnable load) {
    try {
      load.run();
    } catch (RuntimeException | LinkageError seenLater) {
      return;
    }
  }
}
