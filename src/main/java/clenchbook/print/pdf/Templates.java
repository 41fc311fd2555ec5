package clenchbook.print.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import net.sf.jasperreports.engine.JRException;
import net.sf.jasperreports.engine.JRRuntimeException;
import net.sf.jasperreports.engine.JRTextElement;
import net.sf.jasperreports.engine.JasperReport;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.engine.design.JasperDesign;
import net.sf.jasperreports.engine.util.JRLoader;
import net.sf.jasperreports.engine.xml.JRXmlLoader;

/**
 * The page templates, each loaded once: the farrier's edited copy where there is one, else the one
 * compiled when the program was built.
 */
final class Templates {
  /** The templates there are; a file of another name is never read. */
  static final List<String> NAMES = List.of("invoice", "statement");

  /** The program's own, which are the same for every run of a process. */
  private static final Map<String, JasperReport> BUNDLED = new ConcurrentHashMap<>();

  private final JasperReportsContext context;
  private final Optional<Path> own;
  private final Map<String, JasperReport> loaded = new ConcurrentHashMap<>();

  Templates(JasperReportsContext context, Optional<Path> own) {
    this.context = context;
    this.own = own;
  }

  JasperReport of(String name, PaperSize paper) {
    return loaded.computeIfAbsent(name + "." + paper.key(), key -> load(name, paper));
  }

  private JasperReport load(String name, PaperSize paper) {
    try {
      Optional<Path> edited =
          own.map(folder -> folder.resolve(name + ".jrxml")).filter(Files::isRegularFile);
      if (edited.isPresent()) {
        return compile(context, edited.get(), paper);
      }
      String key = name + "." + paper.key();
      JasperReport known = BUNDLED.get(key);
      JasperReport report = known == null ? bundled(key) : known;
      BUNDLED.putIfAbsent(key, report);
      return report;
    } catch (IOException | JRException | JRRuntimeException e) {
      throw TemplateWords.of(name, e);
    }
  }

  private JasperReport bundled(String key) throws IOException, JRException {
    String resource = "/report-templates/" + key + ".jasper";
    try (InputStream compiled = Templates.class.getResourceAsStream(resource)) {
      if (compiled == null) {
        throw new IOException("the compiled template is missing from the program");
      }
      return (JasperReport) JRLoader.loadObject(context, compiled);
    }
  }

  /**
   * Compiles a template after looking it over; the sheet's size replaces the one it was drawn for.
   */
  static JasperReport compile(JasperReportsContext context, Path file, PaperSize paper)
      throws IOException, JRException {
    byte[] text = TemplateGate.readChecked(file);
    JasperDesign design = JRXmlLoader.load(context, new ByteArrayInputStream(text));
    design.setPageWidth(paper.width());
    design.setPageHeight(paper.height());
    design.setRightMargin(paper.width() - design.getLeftMargin() - design.getColumnWidth());
    limit(design);
    design.setProperty(JRTextElement.PROPERTY_SAVE_LINE_BREAKS, "true");
    return new TemplateCompiler(context).compileReport(design);
  }

  /** A template that never comes to an end is stopped instead of filling the disk. */
  private static void limit(JasperDesign design) {
    design.setProperty("net.sf.jasperreports.governor.max.pages.enabled", "true");
    design.setProperty("net.sf.jasperreports.governor.max.pages", "400");
  }
}
