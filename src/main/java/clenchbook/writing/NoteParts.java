package clenchbook.writing;

import java.util.List;

/** The two parts in which a sheet keeps the notes on its cells: their texts and their boxes. */
final class NoteParts {
  private static final int CHARACTERS_A_LINE = 34;
  private static final int FIRST_SHAPE = 1025;

  private NoteParts() {}

  static void writeTexts(XmlOut out, List<SheetOutput.Note> notes) {
    out.raw(XlsxOutput.DECLARATION)
        .raw("<comments xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">")
        .raw("<authors><author>Clenchbook</author></authors><commentList>");
    for (SheetOutput.Note note : notes) {
      out.raw(
          "<comment ref=\"" + note.cell() + "\" authorId=\"0\"><text><t xml:space=\"preserve\">");
      out.text(note.text()).raw("</t></text></comment>");
    }
    out.raw("</commentList></comments>");
  }

  static void writeBoxes(XmlOut out, List<SheetOutput.Note> notes) {
    out.raw("<xml xmlns:v=\"urn:schemas-microsoft-com:vml\"")
        .raw(" xmlns:o=\"urn:schemas-microsoft-com:office:office\"")
        .raw(" xmlns:x=\"urn:schemas-microsoft-com:office:excel\"><o:shapelayout v:ext=\"edit\">")
        .raw("<o:idmap v:ext=\"edit\" data=\"1\"/></o:shapelayout>")
        .raw("<v:shapetype id=\"_x0000_t202\" coordsize=\"21600,21600\" o:spt=\"202\"")
        .raw(" path=\"m,l,21600r21600,l21600,xe\"><v:stroke joinstyle=\"miter\"/>")
        .raw("<v:path gradientshapeok=\"t\" o:connecttype=\"rect\"/></v:shapetype>");
    int shape = FIRST_SHAPE;
    for (SheetOutput.Note note : notes) {
      writeBox(out, note, shape++);
    }
    out.raw("</xml>");
  }

  private static void writeBox(XmlOut out, SheetOutput.Note note, int shape) {
    int row = note.row() - 1;
    int left = note.column() + 1;
    int lines = 2 + note.text().length() / CHARACTERS_A_LINE + (int) note.text().lines().count();
    out.raw("<v:shape id=\"_x0000_s" + shape + "\" type=\"#_x0000_t202\"")
        .raw(" style=\"position:absolute;width:180pt;height:60pt;visibility:hidden\"")
        .raw(" fillcolor=\"#ffffe1\" o:insetmode=\"auto\"><v:fill color2=\"#ffffe1\"/>")
        .raw("<v:shadow on=\"t\" color=\"black\" obscured=\"t\"/><v:path o:connecttype=\"none\"/>")
        .raw(
            "<v:textbox style=\"mso-direction-alt:auto\"><div"
                + " style=\"text-align:left\"/></v:textbox>")
        .raw("<x:ClientData ObjectType=\"Note\"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>")
        .raw(left + ",15," + row + ",2," + (left + 3) + ",15," + (row + lines) + ",4")
        .raw("</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>" + row + "</x:Row><x:Column>")
        .raw(note.column() + "</x:Column></x:ClientData></v:shape>");
  }
}
