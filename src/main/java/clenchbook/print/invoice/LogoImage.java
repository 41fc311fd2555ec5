package clenchbook.print.invoice;

import clenchbook.print.files.RefusedFile;
import clenchbook.texts.Message;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

/**
 * The farrier's logo, made into a JPEG once: the PDF library puts a JPEG into each document as it
 * is, while it would decode a PNG anew for every one.
 */
public final class LogoImage {
  private static final long LARGEST_FILE = 5L * 1024 * 1024;
  private static final long MOST_PIXELS = 40_000_000;
  private static final int WIDEST = 900;
  private static final int HIGHEST = 450;

  private final byte[] jpeg;
  private final int width;
  private final int height;

  private LogoImage(byte[] jpeg, int width, int height) {
    this.jpeg = jpeg;
    this.width = width;
    this.height = height;
  }

  /**
   * Reads the logo named in the book.
   *
   * @param bookFolder the folder of the workbook; the logo must lie there or below
   * @param name the file's name as the book gives it, relative to that folder
   * @return the logo
   * @throws IOException when there is no such picture, or it may not be used; a {@link RefusedFile}
   *     says why in plain words
   */
  public static LogoImage read(Path bookFolder, String name) throws IOException {
    Path file = locate(bookFolder, name);
    if (Files.size(file) > LARGEST_FILE) {
      throw new RefusedFile(Message.of("print.logo.tooLarge"));
    }
    BufferedImage picture = decode(file);
    BufferedImage fitted = onWhite(picture);
    return new LogoImage(encode(fitted), fitted.getWidth(), fitted.getHeight());
  }

  private static Path locate(Path bookFolder, String name) throws IOException {
    try {
      Path folder = bookFolder.toRealPath();
      Path file = folder.resolve(name).toRealPath();
      if (!file.startsWith(folder) || !Files.isRegularFile(file)) {
        throw new RefusedFile(Message.of("print.logo.elsewhere"));
      }
      return file;
    } catch (InvalidPathException | java.nio.file.NoSuchFileException e) {
      throw new RefusedFile(Message.of("print.logo.none"), e);
    }
  }

  private static BufferedImage decode(Path file) throws IOException {
    ImageIO.setUseCache(false);
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw new RefusedFile(Message.of("print.logo.otherKind"));
      }
      ImageReader reader = readers.next();
      try {
        return decode(reader, in);
      } catch (RuntimeException e) {
        // Damaged pictures make the decoder throw all kinds.
        throw new RefusedFile(Message.of("print.logo.damaged"), e);
      } finally {
        reader.dispose();
      }
    }
  }

  private static BufferedImage decode(ImageReader reader, ImageInputStream in) throws IOException {
    String format = reader.getFormatName().toLowerCase(Locale.ROOT);
    if (!format.equals("png") && !format.equals("jpeg")) {
      throw new RefusedFile(Message.of("print.logo.otherKind"));
    }
    reader.setInput(in, true, true);
    if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_PIXELS) {
      throw new RefusedFile(Message.of("print.logo.tooManyPoints"));
    }
    return reader.read(0);
  }

  private static BufferedImage onWhite(BufferedImage picture) {
    double scale =
        Math.min(
            1.0,
            Math.min((double) WIDEST / picture.getWidth(), (double) HIGHEST / picture.getHeight()));
    int width = (int) Math.max(1, Math.round(picture.getWidth() * scale));
    int height = (int) Math.max(1, Math.round(picture.getHeight() * scale));
    BufferedImage paper = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = paper.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, width, height);
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(picture, 0, 0, width, height, null);
    pen.dispose();
    return paper;
  }

  private static byte[] encode(BufferedImage picture) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      ImageWriteParam quality = writer.getDefaultWriteParam();
      quality.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      quality.setCompressionQuality(0.93f);
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, null), quality);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /**
   * The picture's bytes.
   *
   * @return a JPEG in RGB
   */
  public byte[] jpeg() {
    return jpeg.clone();
  }

  /**
   * Its width.
   *
   * @return in pixels, at most 900
   */
  public int width() {
    return width;
  }

  /**
   * Its height.
   *
   * @return in pixels, at most 450
   */
  public int height() {
    return height;
  }
}
