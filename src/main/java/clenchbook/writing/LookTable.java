package clenchbook.writing;

import java.util.LinkedHashMap;
import java.util.Map;

/** All looks that a written workbook uses, numbered as they come. */
final class LookTable {
  private static final int FIRST_OWN_FORMAT = 164;
  private static final int MOST_LOOKS = 60_000;

  private final Map<CellLook, Integer> looks = new LinkedHashMap<>();
  private final Map<String, Integer> formats = new LinkedHashMap<>();

  LookTable() {
    number(CellLook.PLAIN);
  }

  /** The number of a look; of the plain one once there are more than a file may hold. */
  int number(CellLook look) {
    Integer known = looks.get(look);
    if (known != null) {
      return known;
    }
    if (looks.size() >= MOST_LOOKS) {
      return 0;
    }
    if (!look.format().isEmpty()) {
      formats.putIfAbsent(look.format(), FIRST_OWN_FORMAT + formats.size());
    }
    looks.put(look, looks.size());
    return looks.size() - 1;
  }

  /** Writes the part that describes them. */
  void write(XmlOut out) {
    out.raw(XlsxOutput.DECLARATION)
        .raw("<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">");
    writeFormats(out);
    out.raw("<fonts count=\"" + CellLook.Font.values().length + "\">");
    for (CellLook.Font font : CellLook.Font.values()) {
      out.raw("<font>" + font.markup() + "</font>");
    }
    out.raw("</fonts><fills count=\"" + (CellLook.Fill.values().length + 1) + "\">")
        .raw("<fill><patternFill patternType=\"none\"/></fill>")
        .raw("<fill><patternFill patternType=\"gray125\"/></fill>");
    for (CellLook.Fill fill : CellLook.Fill.values()) {
      if (fill != CellLook.Fill.NONE) {
        out.raw("<fill><patternFill patternType=\"solid\"><fgColor rgb=\"" + fill.argb() + "\"/>")
            .raw("<bgColor indexed=\"64\"/></patternFill></fill>");
      }
    }
    out.raw(
            "</fills><borders"
                + " count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border>")
        .raw("</borders><cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\"")
        .raw(" borderId=\"0\"/></cellStyleXfs><cellXfs count=\"" + looks.size() + "\">");
    looks.keySet().forEach(look -> writeLook(out, look));
    out.raw("</cellXfs><cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\"")
        .raw(" builtinId=\"0\"/></cellStyles></styleSheet>");
  }

  private void writeFormats(XmlOut out) {
    if (formats.isEmpty()) {
      return;
    }
    out.raw("<numFmts count=\"" + formats.size() + "\">");
    formats.forEach(
        (code, number) ->
            out.raw("<numFmt numFmtId=\"" + number + "\" formatCode=\"").text(code).raw("\"/>"));
    out.raw("</numFmts>");
  }

  private void writeLook(XmlOut out, CellLook look) {
    int format = look.format().isEmpty() ? 0 : formats.getOrDefault(look.format(), 0);
    int fill = look.fill() == CellLook.Fill.NONE ? 0 : look.fill().ordinal() + 1;
    out.raw("<xf numFmtId=\"" + format + "\" fontId=\"" + look.font().ordinal() + "\" fillId=\"")
        .raw(fill + "\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\" applyFont=\"1\"")
        .raw(" applyFill=\"1\" applyAlignment=\"1\"><alignment vertical=\"top\"")
        .raw(look.wrap() ? " wrapText=\"1\"/></xf>" : "/></xf>");
  }
}
