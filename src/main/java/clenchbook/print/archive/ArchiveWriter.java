package clenchbook.print.archive;

import static java.time.format.DateTimeFormatter.BASIC_ISO_DATE;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfFileSpecification;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfStream;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Gives a PDF what it needs to be read in ten years' time and by everybody: its colours' meaning, a
 * description of itself, and a file that goes with it.
 *
 * <p>Sources: ISO 19005-2:2011 and ISO 19005-3:2012, 6.2.3 and 6.6 (PDF/A-2, PDF/A-3); ISO
 * 14289-1:2014, 5 (PDF/UA-1).
 */
public final class ArchiveWriter {
  private static final String SRGB = "sRGB IEC61966-2.1";

  /** Java's own profile of the colours of screens, packed once. */
  private static final class Colours {
    static final byte[] PACKED = pack(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());

    private static byte[] pack(byte[] profile) {
      ByteArrayOutputStream packed = new ByteArrayOutputStream();
      try (DeflaterOutputStream out =
          new DeflaterOutputStream(packed, new Deflater(Deflater.BEST_COMPRESSION))) {
        out.write(profile);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return packed.toByteArray();
    }
  }

  private final PdfWriter writer;
  private final ArchiveForm form;
  private final LocalDate day;

  /**
   * For one document.
   *
   * @param writer what writes the document
   * @param form the part of PDF/A and the embedded file
   * @param day the document's day
   */
  public ArchiveWriter(PdfWriter writer, ArchiveForm form, LocalDate day) {
    this.writer = writer;
    this.form = form;
    this.day = day;
  }

  /**
   * Writes the description; the document need not be open yet.
   *
   * @param title the document's title
   * @param author who made it; may be empty
   * @param language two letters
   */
  public void describe(String title, String author, String language) {
    String xmp = new ArchiveMetadata(form, title, author, language, day).packet();
    writer.setXmpMetadata(xmp.getBytes(StandardCharsets.UTF_8));
  }

  /** Writes colours and attachment, once the document is open. */
  public void complete() {
    try {
      colours();
      if (form.attachment().isPresent()) {
        attach(form.attachment().get());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Noon of a day, as PDF writes it.
   *
   * @param day any day
   * @return a date string (ISO 32000-1:2008, 7.9.4)
   */
  public static PdfString noon(LocalDate day) {
    return new PdfString("D:" + day.format(BASIC_ISO_DATE) + "120000Z");
  }

  private void colours() throws IOException {
    PdfStream profile = new PdfStream(Colours.PACKED);
    profile.put(PdfName.FILTER, PdfName.FLATEDECODE);
    profile.put(PdfName.N, new PdfNumber(3));
    PdfDictionary intent = new PdfDictionary(PdfName.OUTPUTINTENT);
    intent.put(PdfName.S, PdfName.GTS_PDFA1);
    intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, new PdfString(SRGB));
    intent.put(PdfName.INFO, new PdfString(SRGB));
    intent.put(PdfName.DESTOUTPUTPROFILE, writer.addToBody(profile).getIndirectReference());
    writer.getExtraCatalog().put(PdfName.OUTPUTINTENTS, new PdfArray(intent));
  }

  private void attach(ArchiveForm.Attachment file) throws IOException {
    PdfDictionary facts = new PdfDictionary();
    facts.put(PdfName.MODDATE, noon(day));
    PdfFileSpecification entry =
        PdfFileSpecification.fileEmbedded(
            writer, null, file.name(), file.content(), file.kind(), facts, Deflater.BEST_SPEED);
    entry.put(new PdfName("AFRelationship"), new PdfName(file.relation()));
    entry.setUnicodeFileName(file.name(), true);
    writer.addFileAttachment(file.description(), entry);
    writer.getExtraCatalog().put(new PdfName("AF"), new PdfArray(entry.getReference()));
  }
}
