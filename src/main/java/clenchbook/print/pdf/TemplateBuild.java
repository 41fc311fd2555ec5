package clenchbook.print.pdf;

import clenchbook.print.fonts.Typefaces;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import net.sf.jasperreports.engine.JRException;
import net.sf.jasperreports.engine.JasperReport;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.engine.SimpleJasperReportsContext;
import net.sf.jasperreports.engine.util.JRSaver;

/** Compiles the templates while the program is built, one file for each size of sheet. */
public final class TemplateBuild {
  private TemplateBuild() {}

  /**
   * Compiles every template of a folder.
   *
   * @param arguments the folder of templates, the folder for the compiled ones
   * @throws IOException when a file can't be read or written
   * @throws JRException when a template is wrong; the build stops
   */
  public static void main(String[] arguments) throws IOException, JRException {
    Typefaces.prepare();
    Path from = Path.of(arguments[0]);
    Path to = Files.createDirectories(Path.of(arguments[1]));
    JasperReportsContext context = new SimpleJasperReportsContext();
    for (String name : Templates.NAMES) {
      for (PaperSize paper : PaperSize.values()) {
        JasperReport report = Templates.compile(context, from.resolve(name + ".jrxml"), paper);
        JRSaver.saveObject(report, to.resolve(name + "." + paper.key() + ".jasper").toFile());
      }
    }
  }
}
