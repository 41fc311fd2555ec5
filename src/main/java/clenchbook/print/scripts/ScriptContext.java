package clenchbook.print.scripts;

import clenchbook.print.fonts.ScriptFace;
import clenchbook.print.fonts.Typefaces;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import net.sf.jasperreports.engine.DefaultJasperReportsContext;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.engine.SimpleJasperReportsContext;
import net.sf.jasperreports.engine.fonts.FontFamily;
import net.sf.jasperreports.engine.fonts.FontSet;
import net.sf.jasperreports.engine.fonts.SimpleFontSet;
import net.sf.jasperreports.engine.fonts.SimpleFontSetFamily;

/**
 * The report library's settings for a document. The name of each family of letters stands for that
 * family alone, as a rule; where a document needs letters that it lacks, for a set of families, of
 * which each run of letters takes the first that has it.
 */
public final class ScriptContext extends SimpleJasperReportsContext {
  private static final Map<Set<ScriptFace>, JasperReportsContext> KNOWN = new ConcurrentHashMap<>();

  private final List<FontFamily> families = new ArrayList<>();
  private final List<FontSet> sets = new ArrayList<>();

  private ScriptContext(JasperReportsContext usual, Collection<ScriptFace> scripts) {
    super(usual);
    List<FontFamily> text = List.of(ProgramFamily.text(Typefaces.TEXT));
    List<FontFamily> display = List.of(ProgramFamily.text(Typefaces.DISPLAY));
    List<FontFamily> others = new ArrayList<>();
    scripts.forEach(face -> others.add(ProgramFamily.script(face)));
    families.addAll(text);
    families.addAll(display);
    families.addAll(others);
    sets.add(set(Typefaces.TEXT, text.get(0), others));
    sets.add(set(Typefaces.DISPLAY, display.get(0), others));
  }

  /**
   * The settings for a document with these texts.
   *
   * @param texts everything it prints
   * @return the usual settings where the text faces have all its letters
   */
  public static JasperReportsContext of(Iterable<String> texts) {
    Set<ScriptFace> needed = ScriptFace.neededBy(texts);
    JasperReportsContext usual = DefaultJasperReportsContext.getInstance();
    return needed.isEmpty()
        ? usual
        : KNOWN.computeIfAbsent(
            EnumSet.copyOf(needed), scripts -> new ScriptContext(usual, scripts));
  }

  private static FontSet set(String name, FontFamily first, List<FontFamily> others) {
    SimpleFontSet set = new SimpleFontSet();
    set.setName(name);
    set.addFamily(member(first, true));
    others.forEach(family -> set.addFamily(member(family, false)));
    return set;
  }

  private static SimpleFontSetFamily member(FontFamily family, boolean primary) {
    SimpleFontSetFamily member = new SimpleFontSetFamily();
    member.setFamilyName(family.getName());
    member.setPrimary(primary);
    return member;
  }

  @Override
  @SuppressWarnings("unchecked")
  public <T> List<T> getExtensions(Class<T> type) {
    if (type == FontFamily.class) {
      return (List<T>) List.copyOf(families);
    }
    return type == FontSet.class ? (List<T>) List.copyOf(sets) : super.getExtensions(type);
  }
}
