package clenchbook.print.scripts;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the glyphs of a shaped text mean. Letters that are shaped together make a cluster. A glyph
 * that is a letter's own means that letter; what is left of the cluster's letters is meant by its
 * first other glyph, and the rest of its glyphs mean nothing by themselves.
 */
final class Meanings {
  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private final String[] meanings;

  Meanings(GlyphVector glyphs, String text, Font font) {
    meanings = new String[glyphs.getNumGlyphs()];
    clusters(glyphs, text.length())
        .forEach((from, cluster) -> cluster(glyphs, text, font, from, cluster));
  }

  /** The letters that a glyph means; empty for none. */
  String of(int index) {
    return meanings[index];
  }

  private record Cluster(int to, List<Integer> glyphs) {}

  /** Clusters by their first letter. */
  private static Map<Integer, Cluster> clusters(GlyphVector glyphs, int length) {
    TreeMap<Integer, List<Integer>> byFirst = new TreeMap<>();
    for (int i = 0; i < glyphs.getNumGlyphs(); i++) {
      byFirst.computeIfAbsent(glyphs.getGlyphCharIndex(i), unused -> new ArrayList<>()).add(i);
    }
    Map<Integer, Cluster> clusters = new HashMap<>();
    byFirst.forEach(
        (from, members) -> {
          Integer next = byFirst.higherKey(from);
          clusters.put(from, new Cluster(next == null ? length : next, members));
        });
    return clusters;
  }

  private void cluster(GlyphVector glyphs, String text, Font font, int from, Cluster cluster) {
    List<Integer> letters = new ArrayList<>();
    text.substring(from, cluster.to()).codePoints().forEach(letters::add);
    List<Integer> others = new ArrayList<>();
    for (int member : cluster.glyphs()) {
      int letter = letterOf(glyphs.getGlyphCode(member), letters, font);
      if (letter < 0) {
        others.add(member);
        meanings[member] = "";
      } else {
        meanings[member] = Character.toString(letter);
        letters.remove(Integer.valueOf(letter));
      }
    }
    StringBuilder left = new StringBuilder();
    letters.forEach(left::appendCodePoint);
    int bearer = others.isEmpty() ? cluster.glyphs().get(0) : others.get(0);
    meanings[bearer] = others.isEmpty() ? meanings[bearer] + left : left.toString();
  }

  private static int letterOf(int glyph, List<Integer> letters, Font font) {
    for (int letter : letters) {
      GlyphVector own = font.createGlyphVector(EXACT, Character.toString(letter));
      if (own.getNumGlyphs() == 1 && own.getGlyphCode(0) == glyph) {
        return letter;
      }
    }
    return -1;
  }
}
