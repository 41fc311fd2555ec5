package clenchbook.samples;

import clenchbook.samples.SampleBook.Tables;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Arc2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javax.imageio.ImageIO;

/** Writes the sample workbooks: {@code SampleWorkbooks [folder]}, by default sample-workbooks. */
public final class SampleWorkbooks {
  private SampleWorkbooks() {}

  /** Writes every sample into the folder named by the first argument. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args.length == 0 ? "sample-workbooks" : args[0]);
    Files.createDirectories(folder);
    for (Map.Entry<String, Tables> sample : SampleBook.all().entrySet()) {
      Files.write(folder.resolve(sample.getKey()), bytes(sample.getValue()));
    }
    Files.write(folder.resolve(LindenauSmall.FILE), lindenau());
    ImageIO.write(logo(), "png", folder.resolve("thornfield-logo.png").toFile());
  }

  static byte[] bytes(Tables tables) throws IOException {
    boolean metric = tables.scenario().included();
    return BookFile.bytes(
        SampleBook.tabs(tables),
        metric ? "Thornfield, a sample" : "Cedar Hollow, a sample",
        "Clenchbook samples",
        metric ? "dd/mm/yyyy" : "m/d/yyyy");
  }

  /** The small German book. */
  static byte[] lindenau() throws IOException {
    return BookFile.bytes(
        LindenauSmall.tabs(), "Lindenau, a sample", "Clenchbook samples", "dd.mm.yyyy");
  }

  /** Draws the sample's logo: a plain horseshoe. */
  static BufferedImage logo() {
    BufferedImage image = new BufferedImage(320, 320, BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(new Color(0x1F3A4D));
    pen.setStroke(new BasicStroke(52, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    pen.draw(new Arc2D.Double(60, 44, 200, 232, -58, 296, Arc2D.OPEN));
    pen.setColor(Color.WHITE);
    for (int i = 0; i < 4; i++) {
      nail(pen, 152 + i * 26);
      nail(pen, 28 - i * 26);
    }
    pen.dispose();
    return image;
  }

  private static void nail(Graphics2D pen, int degrees) {
    double x = 160 + 100 * Math.cos(Math.toRadians(degrees));
    double y = 160 - 116 * Math.sin(Math.toRadians(degrees));
    pen.fillOval((int) x - 7, (int) y - 7, 14, 14);
  }
}
