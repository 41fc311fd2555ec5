package clenchbook.print.invoice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.print.files.RefusedFile;
import clenchbook.print.pdf.PdfDocuments;
import clenchbook.print.pdf.PrintSettings;
import clenchbook.print.pdf.SampleDocuments;
import clenchbook.texts.InEnglish;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogoImageTest {
  @TempDir Path folder = Path.of("");

  @BeforeEach
  void a_logo_lies_beside_the_book() throws IOException {
    ImageIO.setUseCache(false);
    BufferedImage picture = new BufferedImage(1800, 600, BufferedImage.TYPE_INT_ARGB);
    for (int x = 0; x < 900; x++) {
      for (int y = 0; y < 600; y++) {
        picture.setRGB(x, y, 0xFF8A3B12);
      }
    }
    Files.createDirectories(folder.resolve("book/art"));
    ImageIO.write(picture, "png", folder.resolve("book/art/logo.png").toFile());
    ImageIO.write(picture, "png", folder.resolve("outside.png").toFile());
  }

  private LogoImage read(String name) throws IOException {
    return LogoImage.read(folder.resolve("book"), name);
  }

  private String refusal(String name) {
    return InEnglish.said(assertThrows(RefusedFile.class, () -> read(name), name).message());
  }

  @Test
  void a_png_becomes_a_jpeg_of_fitting_size_on_white() throws IOException {
    LogoImage logo = read("art/logo.png");
    assertEquals(900, logo.width());
    assertEquals(300, logo.height());
    BufferedImage back = ImageIO.read(new ByteArrayInputStream(logo.jpeg()));
    assertTrue(new Color(back.getRGB(890, 150)).getBlue() > 250, "clear parts turn white");
    assertTrue(new Color(back.getRGB(10, 150)).getBlue() < 40);
    assertArrayEquals(logo.jpeg(), read("art/logo.png").jpeg());
  }

  @Test
  void the_jpeg_stands_on_the_invoice_as_it_is() throws IOException {
    LogoImage logo = read("art/logo.png");
    PrintSettings usual = SampleDocuments.settings("en", "GB");
    PrintSettings settings =
        new PrintSettings(
            usual.asAt(), usual.locale(), usual.business(), Optional.of(logo), Optional.empty());
    byte[] pdf = new PdfDocuments(settings).invoice(SampleDocuments.invoice("en", "GB", "GBP"));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var resources = document.getPage(0).getResources();
      int found = 0;
      for (COSName name : resources.getXObjectNames()) {
        if (resources.getXObject(name) instanceof PDImageXObject image) {
          assertArrayEquals(
              logo.jpeg(), image.getStream().getCOSObject().createRawInputStream().readAllBytes());
          found++;
        }
      }
      assertEquals(1, found);
    }
  }

  @Test
  void a_picture_outside_the_books_folder_is_refused_also_behind_a_link() throws IOException {
    Files.createSymbolicLink(
        folder.resolve("book/link.png"), folder.resolve("outside.png").toAbsolutePath());
    for (String name :
        new String[] {
          "../outside.png", "link.png", folder.resolve("outside.png").toAbsolutePath().toString()
        }) {
      String refused = refusal(name);
      assertTrue(refused.contains("workbook's folder"), refused);
    }
  }

  @Test
  void what_is_no_picture_or_too_large_is_refused_in_plain_words() throws IOException {
    Files.writeString(folder.resolve("book/a.png"), "no picture");
    Files.write(folder.resolve("book/large.png"), new byte[6 * 1024 * 1024]);
    byte[] damaged = Files.readAllBytes(folder.resolve("book/art/logo.png"));
    Files.write(folder.resolve("book/cut.png"), java.util.Arrays.copyOf(damaged, 60));
    assertEquals("the picture is neither PNG nor JPEG", refusal("a.png"));
    assertEquals("the picture is larger than 5 MB", refusal("large.png"));
    assertThrows(IOException.class, () -> read("cut.png"));
    assertEquals("there is no such picture", refusal("none.png"));
  }
}
