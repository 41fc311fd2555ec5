package clenchbook.print.scripts;

import clenchbook.print.fonts.ScriptFace;
import clenchbook.print.fonts.Typefaces;
import java.awt.Font;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import net.sf.jasperreports.engine.fonts.FontFace;
import net.sf.jasperreports.engine.fonts.FontFamily;
import org.jspecify.annotations.Nullable;

/** A family of the program's own faces, under a name that no face bears by itself. */
final class ProgramFamily implements FontFamily {
  private final String name;
  private final Optional<ScriptFace> script;
  private final FontFace plain;
  private final @Nullable FontFace bold;

  private ProgramFamily(
      String name, Optional<ScriptFace> script, FontFace plain, @Nullable FontFace bold) {
    this.name = name;
    this.script = script;
    this.plain = plain;
    this.bold = bold;
  }

  static ProgramFamily text(String name) {
    String file = "fonts/" + name.replace(" ", "") + '-';
    return new ProgramFamily(
        "first " + name,
        Optional.empty(),
        new Face(file + "Regular.ttf", Typefaces.of(name, false)),
        new Face(file + "Bold.ttf", Typefaces.of(name, true)));
  }

  static ProgramFamily script(ScriptFace face) {
    Function<Boolean, FontFace> of = heavy -> new Face(face.file(heavy), face.font(heavy));
    return new ProgramFamily(
        "script " + face,
        Optional.of(face),
        of.apply(false),
        face.hasBold() ? of.apply(true) : null);
  }

  /** The script it is for; empty for a family of Latin, Greek and Cyrillic letters. */
  Optional<ScriptFace> script() {
    return script;
  }

  @Override
  public String getName() {
    return name;
  }

  @Override
  public FontFace getNormalFace() {
    return plain;
  }

  @Override
  public @Nullable FontFace getBoldFace() {
    return bold;
  }

  /** There are no slanted letters: a template that asks for them gets upright ones. */
  @Override
  public FontFace getItalicFace() {
    return plain;
  }

  @Override
  public @Nullable FontFace getBoldItalicFace() {
    return bold;
  }

  @Override
  public String getPdfEncoding() {
    return "Identity-H";
  }

  @Override
  public Boolean isPdfEmbedded() {
    return true;
  }

  @Override
  public @Nullable String getExportFont(String key) {
    return null;
  }

  @Override
  public boolean supportsLocale(Locale locale) {
    return true;
  }

  @Override
  public boolean isVisible() {
    return false;
  }

  /** A face that hides the name it bears in its file: the set of families has that name here. */
  private static final class Face implements FontFace {
    private final String file;
    private final Font font;

    Face(String file, Font font) {
      this.file = file;
      this.font = new Unnamed(font);
    }

    @Override
    public String getName() {
      return file;
    }

    @Override
    public String getTtf() {
      return file;
    }

    @Override
    public Font getFont() {
      return font;
    }

    @Override
    public @Nullable String getPdf() {
      return null;
    }

    @Override
    public @Nullable String getEot() {
      return null;
    }

    @Override
    public @Nullable String getSvg() {
      return null;
    }

    @Override
    public @Nullable String getWoff() {
      return null;
    }
  }

  private static final class Unnamed extends Font {
    private static final long serialVersionUID = 1L;

    Unnamed(Font font) {
      super(font);
    }

    @Override
    public String getFamily() {
      return "";
    }
  }
}
