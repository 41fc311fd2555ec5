package clenchbook.print.pdf;

import clenchbook.print.archive.ArchiveForm;
import clenchbook.print.fonts.MissingGlyphs;
import clenchbook.print.fonts.Typefaces;
import clenchbook.print.invoice.InvoicePage;
import clenchbook.print.invoice.LetterParts;
import clenchbook.print.invoice.LetterWording;
import clenchbook.print.invoice.PrintedPage;
import clenchbook.print.invoice.StatementPage;
import clenchbook.print.scripts.ScriptContext;
import clenchbook.print.tags.TagNotes;
import clenchbook.reports.blocks.Report;
import clenchbook.reports.letters.CreditNoteDocument;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.InvoiceDocument;
import clenchbook.reports.letters.StatementDocument;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.sf.jasperreports.engine.DefaultJasperReportsContext;
import net.sf.jasperreports.engine.JRException;
import net.sf.jasperreports.engine.JRRuntimeException;
import net.sf.jasperreports.engine.JasperFillManager;
import net.sf.jasperreports.engine.JasperPrint;
import net.sf.jasperreports.engine.JasperReport;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.engine.design.JasperDesign;
import net.sf.jasperreports.export.SimpleExporterInput;
import net.sf.jasperreports.export.SimpleOutputStreamExporterOutput;
import net.sf.jasperreports.pdf.SimplePdfExporterConfiguration;

/**
 * Prints a run's documents as PDF. Made once for a run; loads each template when it is first
 * needed; safe for several threads.
 *
 * <p>The same record gives the same bytes. A character that no font has is printed as a mark that
 * is seen; ask {@link MissingGlyphs} beforehand to report it.
 */
public final class PdfDocuments {
  private final PrintSettings settings;
  private final JasperReportsContext usual;
  private final Templates templates;

  /**
   * Prints with these settings.
   *
   * @param settings what all documents of the run have in common
   */
  public PdfDocuments(PrintSettings settings) {
    Typefaces.prepare();
    this.settings = settings;
    this.usual = DefaultJasperReportsContext.getInstance();
    this.templates = new Templates(usual, settings.ownTemplates());
  }

  /**
   * An invoice.
   *
   * @param invoice what it says
   * @return the PDF
   * @throws TemplateException when the farrier's own template can't be used
   */
  public byte[] invoice(InvoiceDocument invoice) {
    return invoice(invoice, Optional.empty());
  }

  /**
   * An invoice with its structured invoice inside.
   *
   * @param invoice what it says
   * @param facturX the structured invoice, as XML in UTF-8; empty for the plain invoice
   * @return the PDF
   * @throws TemplateException when the farrier's own template can't be used
   */
  public byte[] invoice(InvoiceDocument invoice, Optional<byte[]> facturX) {
    DocumentHead head = invoice.head();
    PrintedPage page = new InvoicePage(head, settings.logo()).of(invoice);
    return letter("invoice", head, page, form(facturX));
  }

  /** An invoice of that form. */
  byte[] invoice(InvoiceDocument invoice, ArchiveForm form) {
    DocumentHead head = invoice.head();
    return letter("invoice", head, new InvoicePage(head, settings.logo()).of(invoice), form);
  }

  private static ArchiveForm form(Optional<byte[]> facturX) {
    return facturX.map(EnclosedInvoice::formOf).orElse(ArchiveForm.PLAIN);
  }

  /**
   * A credit note.
   *
   * @param note what it says
   * @return the PDF
   * @throws TemplateException when the farrier's own template can't be used
   */
  public byte[] creditNote(CreditNoteDocument note) {
    return creditNote(note, Optional.empty());
  }

  /**
   * A credit note with its structured invoice inside.
   *
   * @param note what it says
   * @param facturX the structured invoice, as XML in UTF-8; empty for the plain credit note
   * @return the PDF
   * @throws TemplateException when the farrier's own template can't be used
   */
  public byte[] creditNote(CreditNoteDocument note, Optional<byte[]> facturX) {
    DocumentHead head = note.head();
    PrintedPage page = new InvoicePage(head, settings.logo()).of(note);
    return letter("invoice", head, page, form(facturX));
  }

  /**
   * A statement of account.
   *
   * @param statement what it says
   * @return the PDF
   * @throws TemplateException when the farrier's own template can't be used
   */
  public byte[] statement(StatementDocument statement) {
    DocumentHead head = statement.head();
    PrintedPage page = new StatementPage(head, settings.logo()).of(statement);
    return letter("statement", head, page, ArchiveForm.PLAIN);
  }

  /**
   * A report.
   *
   * @param report what it says
   * @return the PDF
   */
  public byte[] report(Report report) {
    ReportRows rows = new ReportRows(report);
    Map<String, Object> parts = new HashMap<>();
    boolean named = report.subtitle().contains(settings.business());
    LetterParts.put(parts, "business", named ? "" : settings.business());
    LetterParts.put(parts, "title", report.title());
    LetterParts.put(parts, "subtitle", report.subtitle());
    LetterParts.put(parts, "foot", report.caution());
    // Inside running text an absent part would print as a word, so an empty one is given.
    parts.put("legend", rows.legend());
    try {
      JasperDesign design =
          ReportDesign.of(
              PaperSize.of(settings.locale()),
              rows.layouts(),
              report.caution(),
              PageNumber.of(report));
      JasperReport compiled = new TemplateCompiler(usual).compileReport(design);
      JasperReportsContext context = context(parts, rows.rows());
      JasperPrint filled =
          JasperFillManager.getInstance(context).fill(compiled, parts, new PrintRows(rows.rows()));
      FixedPdfExporter.About about =
          new FixedPdfExporter.About(
              report.title(),
              settings.business(),
              report.language(),
              settings.asAt(),
              ArchiveForm.PLAIN,
              true);
      return export(context, filled, about, new TagNotes(Map.of(), Optional.empty()));
    } catch (JRException e) {
      throw new IllegalStateException("the pages of " + report.name(), e);
    }
  }

  private byte[] letter(String template, DocumentHead head, PrintedPage page, ArchiveForm form) {
    try {
      JasperReport report = templates.of(template, PaperSize.of(head.locale()));
      JasperReportsContext context = context(page.parts(), page.rows());
      JasperPrint filled =
          JasperFillManager.getInstance(context)
              .fill(report, page.parts(), new PrintRows(page.rows()));
      FixedPdfExporter.About about =
          new FixedPdfExporter.About(
              page.title(),
              head.from().name(),
              LetterWording.of(head.locale().language()).language(),
              head.date(),
              form,
              false);
      return export(context, filled, about, page.notes());
    } catch (JRException | JRRuntimeException e) {
      throw TemplateWords.of(template, e);
    }
  }

  /** The faces that a document needs. */
  private static JasperReportsContext context(
      Map<String, Object> parts, List<Map<String, Object>> rows) {
    List<String> texts = new ArrayList<>();
    addTexts(parts, texts);
    rows.forEach(row -> addTexts(row, texts));
    return ScriptContext.of(texts);
  }

  private static void addTexts(Map<String, Object> values, List<String> texts) {
    for (Object value : values.values()) {
      if (value instanceof String text) {
        texts.add(text);
      }
    }
  }

  private static byte[] export(
      JasperReportsContext context,
      JasperPrint filled,
      FixedPdfExporter.About about,
      TagNotes notes)
      throws JRException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(64 * 1024);
    SimplePdfExporterConfiguration configuration = new SimplePdfExporterConfiguration();
    configuration.setMetadataTitle(about.title());
    configuration.setMetadataAuthor(about.author());
    configuration.setDisplayMetadataTitle(true);
    configuration.setMetadataCreator("Clenchbook");
    FixedPdfExporter exporter = new FixedPdfExporter(context, about, notes);
    exporter.setExporterInput(new SimpleExporterInput(filled));
    exporter.setExporterOutput(new SimpleOutputStreamExporterOutput(bytes));
    exporter.setConfiguration(configuration);
    exporter.exportReport();
    return FixedPdf.settle(bytes.toByteArray());
  }
}
