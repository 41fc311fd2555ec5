package clenchbook.print.pdf;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemplateGateTest {
  private static final Path INVOICE = Path.of("report-templates", "invoice.jrxml");

  @Test
  void the_programs_own_template_passes() {
    assertDoesNotThrow(() -> TemplateGate.readChecked(INVOICE));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<jasperReport scriptletClass='x.Y'/>",
        "<jasperReport language='groovy'/>",
        "<jasperReport><variable name='a' incrementerFactoryClass='x.Y'/></jasperReport>",
        "<jasperReport><parameter name='a' class='java.io.File'/></jasperReport>",
        "<jasperReport><property name='a' value='b'/></jasperReport>",
        "<jasperReport><property name='net.sf.jasperreports.export.pdf.tag.h1' value='x'/>"
            + "</jasperReport>",
        "<jasperReport><property name='net.sf.jasperreports.export.pdf.tag.h1' value='full'"
            + " evaluationTime='Report'/></jasperReport>",
        "<jasperReport><element kind='subreport'/></jasperReport>",
        "<jasperReport><element kind='component'/></jasperReport>",
        "<jasperReport><element kind='textField' markup='html'/></jasperReport>",
        "<jasperReport><element kind='textField' hyperlinkType='Reference'/></jasperReport>",
        "<jasperReport><element"
            + " kind='image'><expression>$P{title}</expression></element></jasperReport>",
        "<jasperReport><element"
            + " kind='image'><expression>\"/etc/passwd\"</expression></element></jasperReport>",
        "<jasperReport><query language='sql'>select 1</query></jasperReport>",
        "<jasperReport><import value='java.io.*'/></jasperReport>",
        "<jasperReport><template>\"http://a.example/x.jrtx\"</template></jasperReport>",
        "<!DOCTYPE a SYSTEM 'file:///etc/passwd'><jasperReport/>",
        "<!DOCTYPE a [<!ENTITY e SYSTEM 'file:///etc/passwd'>]><jasperReport"
            + " name='x'>&e;</jasperReport>",
        "<?stylesheet x?><jasperReport/>",
        "<jasperReport>"
      })
  void what_could_reach_beyond_the_page_is_refused(String template) {
    byte[] bytes = template.getBytes(StandardCharsets.UTF_8);
    assertThrows(IOException.class, () -> TemplateGate.check(bytes));
  }

  @Test
  void code_in_an_edited_template_is_refused_with_its_place(@TempDir Path folder)
      throws IOException {
    edit(folder, "$P{title}", "java.lang.Runtime.getRuntime().exec(\"true\").toString()");
    TemplateException refused =
        assertThrows(TemplateException.class, () -> printWith(folder), "code was run");
    String said = InEnglish.said(refused.message());
    assertTrue(said.startsWith("invoice.jrxml: "), said);
    assertTrue(said.contains("Runtime"), said);
  }

  @Test
  void an_edited_template_beside_the_book_is_used(@TempDir Path folder) throws IOException {
    edit(
        folder,
        "<expression><![CDATA[$P{title}]]>",
        "<expression type=\"simpleText\"><![CDATA[Bill: $P{title}]]>");
    assertTrue(InvoicePdfTest.textOf(printWith(folder)).contains("Bill: Invoice 2026-0041"));
  }

  private static void edit(Path folder, String from, String to) throws IOException {
    String text = Files.readString(INVOICE);
    assertTrue(text.contains(from));
    Files.writeString(folder.resolve("invoice.jrxml"), text.replace(from, to));
  }

  private static byte[] printWith(Path folder) {
    PrintSettings usual = SampleDocuments.settings("en", "GB");
    PrintSettings own =
        new PrintSettings(
            usual.asAt(), usual.locale(), usual.business(), usual.logo(), Optional.of(folder));
    return new PdfDocuments(own).invoice(SampleDocuments.invoice("en", "GB", "GBP"));
  }

  /** What the farrier is told of a slip in an own template: the file, the place, one plain line. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fontName=\"Noto Sans\" | fontName=\"No Such Font\" | there is no font 'No Such Font'; the"
            + " program has Noto Sans and Noto Serif",
        "uuid=\"c1e2b001-0000-4000-8000-000000000001\" | uuid=\"xyz\" | line N: 'xyz' is no value"
            + " that can stand there",
        "x=\"0\" | x=\"abc\" | line N: 'abc' is no value that can stand there",
        "style=\"display\" | style=\"none\" | Could not resolve style(s): none.",
        "$F{visit} | $F{none} | Field not found : none",
        "</jasperReport> | <!-- | line N: not well-formed"
      })
  void a_slip_in_an_own_template_is_told_in_one_plain_line(
      String sound, String slip, String words, @TempDir Path folder) throws IOException {
    edit(folder, sound, slip);
    assertEquals("invoice.jrxml: " + words, refusal(folder).replaceAll("line \\d+", "line N"));
  }

  @Test
  void a_template_that_is_no_text_is_told_as_such(@TempDir Path folder) throws IOException {
    Files.write(folder.resolve("invoice.jrxml"), new byte[] {(byte) 0xc3, 0x28});
    assertEquals("invoice.jrxml: a template is a text in UTF-8", refusal(folder));
  }

  private static String refusal(Path folder) {
    return InEnglish.said(assertThrows(TemplateException.class, () -> printWith(folder)).message());
  }
}
