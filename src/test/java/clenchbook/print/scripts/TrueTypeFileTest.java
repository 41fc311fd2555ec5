package clenchbook.print.scripts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.print.fonts.ScriptFace;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The part of a face that a document embeds, read by FontBox beside the whole face. */
class TrueTypeFileTest {
  private static byte[] whole(ScriptFace face) throws IOException {
    try (InputStream in = TrueTypeFileTest.class.getResourceAsStream("/" + face.file(false))) {
      return in.readAllBytes();
    }
  }

  private static TrueTypeFont parsed(byte[] file, boolean embedded) throws IOException {
    return new TTFParser(embedded).parse(new RandomAccessReadBuffer(file));
  }

  @ParameterizedTest
  @EnumSource(ScriptFace.class)
  void a_part_has_the_outlines_and_widths_of_its_glyphs_and_no_others(ScriptFace face)
      throws IOException {
    byte[] file = whole(face);
    TrueTypeFile ours = new TrueTypeFile(file);
    int last = ours.glyphs() - 1;
    List<Integer> wanted = List.of(5, 17, 40, last);
    byte[] part = ours.subset(new TreeSet<>(wanted));
    assertTrue(part.length < 200_000, face + " " + part.length);
    try (TrueTypeFont all = parsed(file, false);
        TrueTypeFont some = parsed(part, true)) {
      assertEquals(all.getNumberOfGlyphs(), some.getNumberOfGlyphs());
      assertEquals(all.getUnitsPerEm(), some.getUnitsPerEm());
      for (int glyph : wanted) {
        var outline = all.getGlyph().getGlyph(glyph);
        var kept = some.getGlyph().getGlyph(glyph);
        assertEquals(outline == null, kept == null, face + " " + glyph);
        if (outline != null) {
          assertEquals(outline.getPath().getBounds2D(), kept.getPath().getBounds2D());
        }
        assertEquals(all.getAdvanceWidth(glyph), some.getAdvanceWidth(glyph));
        float exact = all.getAdvanceWidth(glyph) * 1000f / all.getUnitsPerEm();
        assertEquals(exact, ours.advance(glyph), 0.01);
      }
      assertFalse(hasOutline(some, 6) && !isPart(all, wanted, 6), face + ": 6 was not wanted");
    }
  }

  private static boolean hasOutline(TrueTypeFont font, int glyph) throws IOException {
    var outline = font.getGlyph().getGlyph(glyph);
    return outline != null && !outline.getPath().getBounds2D().isEmpty();
  }

  /** Whether one of the glyphs is put together from that one. */
  private static boolean isPart(TrueTypeFont font, List<Integer> glyphs, int part)
      throws IOException {
    for (int glyph : glyphs) {
      var outline = font.getGlyph().getGlyph(glyph);
      if (outline != null && outline.getDescription().isComposite()) {
        var made = (org.apache.fontbox.ttf.GlyfCompositeDescript) outline.getDescription();
        for (int i = 0; i < made.getComponentCount(); i++) {
          if (made.getComponents().get(i).getGlyphIndex() == part) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
