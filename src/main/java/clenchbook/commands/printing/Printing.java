package clenchbook.commands.printing;

import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.commands.opening.OpenBook;
import clenchbook.commands.opening.RunFault;
import clenchbook.commands.opening.SettingFaults;
import clenchbook.commands.opening.Terminal;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.print.pdf.PrintSettings;
import clenchbook.print.pdf.TemplateException;
import clenchbook.reports.letters.PrintLocale;
import clenchbook.texts.Message;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;

/**
 * Prints many documents beside the work of the thread that asks; results keep the order they were
 * asked in. That thread prints along once it has nothing left to do but wait, so that there is one
 * thread for each processor, and the work that everything waits for is not held up.
 */
public final class Printing implements AutoCloseable {
  private static final int MOST_THREADS = 3;
  private static final Duration MOST_WAIT = Duration.ofMinutes(1);

  private final ExecutorService threads =
      Executors.newFixedThreadPool(
          Math.max(1, Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors() - 1)),
          work -> {
            Thread thread = new Thread(work, "printing");
            // A fault in main must not leave the process hanging.
            thread.setDaemon(true);
            return thread;
          });

  /** What all documents of a run have in common. */
  public static PdfDocuments documents(Settings settings, Path book, LocalDate asAt) {
    Path folder = OpenBook.folder(book);
    Path own = folder.resolve("report-templates");
    String language = settings.text(Setting.LANGUAGE);
    return new PdfDocuments(
        new PrintSettings(
            asAt,
            new PrintLocale(language.isEmpty() ? "en" : language, settings.text(Setting.COUNTRY)),
            settings.text(Setting.BUSINESS_NAME),
            SettingFaults.findLogo(settings, folder),
            Files.isDirectory(own) ? Optional.of(own) : Optional.empty()));
  }

  /** Prints all, and gives their bytes by name, in the order asked. */
  public Map<String, byte[]> all(Map<String, Callable<byte[]>> work, Terminal terminal) {
    return begin(work).done(terminal);
  }

  /** Begins to print all; what is begun first is printed first. */
  public Sheets begin(Map<String, Callable<byte[]>> work) {
    Sheets sheets = new Sheets(threads);
    work.forEach(sheets::add);
    return sheets;
  }

  /** Documents that are being printed. */
  public static final class Sheets {
    private final ExecutorService threads;
    private final Map<String, FutureTask<byte[]>> running = new LinkedHashMap<>();

    private Sheets(ExecutorService threads) {
      this.threads = threads;
    }

    /** Begins one more. */
    public void add(String name, Callable<byte[]> document) {
      FutureTask<byte[]> task = new FutureTask<>(document);
      running.put(name, task);
      threads.execute(task);
    }

    public Set<String> names() {
      return Set.copyOf(running.keySet());
    }

    /** Prints along, waits for all, and gives their bytes by name, in the order asked. */
    public Map<String, byte[]> done(Terminal terminal) {
      Map<String, byte[]> done = new LinkedHashMap<>();
      running.forEach(
          (name, result) -> {
            terminal.progress(
                Message.of("commands.progress.printing", done.size() + 1, running.size()));
            // Does nothing where it is being printed already, or has been.
            result.run();
            done.put(name, get(result));
          });
      return done;
    }
  }

  private static byte[] get(Future<byte[]> result) {
    try {
      return result.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new RunFault(Message.of("commands.print.interrupted"), e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof TemplateException fault) {
        throw new RunFault(fault.message(), fault);
      }
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new RunFault(Message.of("commands.print.failed", String.valueOf(e.getMessage())), e);
    }
  }

  /**
   * Waits for what is being printed, so that nothing reads files that are cleaned up after a run.
   */
  @Override
  public void close() {
    threads.shutdownNow();
    try {
      threads.awaitTermination(MOST_WAIT.toSeconds(), TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
