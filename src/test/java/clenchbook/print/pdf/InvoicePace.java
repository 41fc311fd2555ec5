package clenchbook.print.pdf;

import clenchbook.print.invoice.InvoicePage;
import clenchbook.print.invoice.LogoImage;
import clenchbook.print.invoice.PrintedPage;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.PrintLocale;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.Deflater;
import net.sf.jasperreports.engine.DefaultJasperReportsContext;
import net.sf.jasperreports.engine.JasperFillManager;
import net.sf.jasperreports.engine.JasperPrint;

/**
 * An invoice in the steady state of one warmed process: the program's, and the same page drawn
 * directly, in turn. Prints milliseconds an invoice: direct as the library packs it by itself,
 * direct packed as the program packs it, the program's, the program's on two threads; each the
 * median of the rounds.
 */
public final class InvoicePace {
  private static final int WARM = 2_000;
  private static final int ROUNDS = 9;
  private static final int EACH = 150;

  private InvoicePace() {}

  /**
   * {@code InvoicePace LOGO FOLDER}; one page of each kind is left in the folder to be looked at.
   */
  public static void main(String[] args) throws Exception {
    LogoImage logo = LogoImage.read(Path.of(args[0]).toAbsolutePath().getParent(), name(args[0]));
    PrintLocale locale = new PrintLocale("en", "GB");
    PdfDocuments documents =
        new PdfDocuments(
            new PrintSettings(
                SampleDocuments.MONTH_END,
                locale,
                "Larkhill Forge",
                Optional.of(logo),
                Optional.empty()));
    InvoiceDocument invoice = SampleDocuments.invoice("en", "GB", "GBP");
    JasperPrint page = filled(invoice, logo);
    DirectInvoice direct = new DirectInvoice(page, logo.jpeg(), Deflater.DEFAULT_COMPRESSION);
    DirectInvoice quick = new DirectInvoice(page, logo.jpeg(), Deflater.BEST_SPEED);
    Callable<byte[]> program = () -> documents.invoice(invoice);
    Path folder = Files.createDirectories(Path.of(args[1]));
    Files.write(folder.resolve("direct.pdf"), direct.pdf());
    Files.write(folder.resolve("program.pdf"), program.call());
    measure(direct::pdf, quick::pdf, program);
  }

  private static String name(String path) {
    return Path.of(path).getFileName().toString();
  }

  private static JasperPrint filled(InvoiceDocument invoice, LogoImage logo) throws Exception {
    DefaultJasperReportsContext context = DefaultJasperReportsContext.getInstance();
    PrintedPage page = new InvoicePage(invoice.head(), Optional.of(logo)).of(invoice);
    return JasperFillManager.getInstance(context)
        .fill(
            new Templates(context, Optional.empty())
                .of("invoice", PaperSize.of(invoice.head().locale())),
            page.parts(),
            new PrintRows(page.rows()));
  }

  private static void measure(
      Callable<byte[]> direct, Callable<byte[]> quick, Callable<byte[]> program) throws Exception {
    ExecutorService two = Executors.newFixedThreadPool(2);
    for (int i = 0; i < WARM; i++) {
      direct.call();
      quick.call();
      program.call();
    }
    double[] packedQuick = new double[ROUNDS];
    double[] directly = new double[ROUNDS];
    double[] ours = new double[ROUNDS];
    double[] together = new double[ROUNDS];
    for (int round = 0; round < ROUNDS; round++) {
      directly[round] = alone(direct);
      packedQuick[round] = alone(quick);
      ours[round] = alone(program);
      together[round] = onTwo(two, program);
    }
    two.shutdown();
    System.out.printf(
        Locale.ROOT,
        "%.3f %.3f %.3f %.3f%n",
        median(directly),
        median(packedQuick),
        median(ours),
        median(together));
  }

  private static double alone(Callable<byte[]> work) throws Exception {
    long start = System.nanoTime();
    for (int i = 0; i < EACH; i++) {
      work.call();
    }
    return (System.nanoTime() - start) / 1e6 / EACH;
  }

  private static double onTwo(ExecutorService two, Callable<byte[]> work) throws Exception {
    long start = System.nanoTime();
    List<Future<byte[]>> running = new ArrayList<>();
    for (int i = 0; i < EACH; i++) {
      running.add(two.submit(work));
    }
    for (Future<byte[]> each : running) {
      each.get();
    }
    return (System.nanoTime() - start) / 1e6 / EACH;
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
  }
}
