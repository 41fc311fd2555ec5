package clenchbook.commands.printing;

import clenchbook.print.pdf.FirstSheets;
import clenchbook.register.Register;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Loads what printing and the register need on a thread of its own, while the command line and the
 * book are still being read. What goes wrong there goes wrong again where it is looked at, and only
 * there is it told.
 */
public final class LoadAhead {
  private static final List<Runnable> LOADS = List.of(Register::loadAhead, FirstSheets::letter);

  private final Thread thread;
  private final AtomicBoolean ended = new AtomicBoolean();

  private LoadAhead(List<Runnable> loads) {
    thread = new Thread(() -> loads.forEach(this::quietly), "loading ahead");
    thread.setDaemon(true);
  }

  /** Begins; the thread keeps no process alive. */
  public static LoadAhead begin() {
    return begin(LOADS);
  }

  /** For a command that prints nothing. */
  public static LoadAhead nothing() {
    return begin(List.of());
  }

  static LoadAhead begin(List<Runnable> loads) {
    LoadAhead ahead = new LoadAhead(loads);
    ahead.thread.start();
    return ahead;
  }

  private void quietly(Runnable load) {
    if (ended.get()) {
      return;
    }
    try {
      load.run();
    } catch (Exception | Error seenLater) {
      return;
    }
  }

  boolean isFinishing() {
    return ended.get();
  }

  /** Begins nothing more and waits for what has begun. */
  public void finish() {
    ended.set(true);
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
