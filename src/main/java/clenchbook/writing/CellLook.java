package clenchbook.writing;

/**
 * How a cell looks.
 *
 * @param format the number format's code; empty for the general one
 * @param fill what colours it
 * @param font how its letters look
 * @param wrap whether long texts break into lines
 */
record CellLook(String format, Fill fill, Font font, boolean wrap) {
  static final CellLook PLAIN = new CellLook("", Fill.NONE, Font.PLAIN, false);
  static final CellLook TITLE = new CellLook("", Fill.NONE, Font.TITLE, false);
  static final CellLook WRAPPED = new CellLook("", Fill.NONE, Font.PLAIN, true);
  static final CellLook HEADING = new CellLook("", Fill.HEADING, Font.BOLD, true);
  static final CellLook RARE_HEADING = new CellLook("", Fill.RARE, Font.BOLD, true);
  static final CellLook LINK = new CellLook("", Fill.NONE, Font.LINK, false);

  /** The colours of cells, in the order in which the file lists them. */
  enum Fill {
    NONE(""),
    HEADING("FFD9E1D3"),
    RARE("FFEFEFEA"),
    HELD("FFF4B6B0"),
    WARNING("FFFCE6A9"),
    NOTE("FFCFE3F1");

    private final String argb;

    Fill(String argb) {
      this.argb = argb;
    }

    String argb() {
      return argb;
    }
  }

  /** The looks of letters, in the order in which the file lists them. */
  enum Font {
    PLAIN("<sz val=\"11\"/><name val=\"Calibri\"/><family val=\"2\"/>"),
    BOLD("<b/><sz val=\"11\"/><name val=\"Calibri\"/><family val=\"2\"/>"),
    TITLE("<b/><sz val=\"16\"/><name val=\"Calibri\"/><family val=\"2\"/>"),
    LINK("<u/><sz val=\"11\"/><color rgb=\"FF1F5A8A\"/><name val=\"Calibri\"/><family val=\"2\"/>");

    private final String markup;

    Font(String markup) {
      this.markup = markup;
    }

    String markup() {
      return markup;
    }
  }

  CellLook withFormat(String code) {
    return new CellLook(code, fill, font, wrap);
  }

  CellLook withFill(Fill colour) {
    return new CellLook(format, colour, font, wrap);
  }
}
