package clenchbook.print.pdf;

import clenchbook.print.files.RefusedFile;
import clenchbook.texts.Message;
import java.io.File;
import java.io.Serializable;
import net.sf.jasperreports.engine.JRException;
import net.sf.jasperreports.engine.JasperReportsContext;
import net.sf.jasperreports.engine.design.JRAbstractCompiler;
import net.sf.jasperreports.engine.design.JRCompilationSourceCode;
import net.sf.jasperreports.engine.design.JRCompilationUnit;
import net.sf.jasperreports.engine.design.JRSourceCompileTask;
import net.sf.jasperreports.engine.fill.JREvaluator;

/**
 * Turns a page template into a report without compiling any code: an expression of a template may
 * name one parameter, field or variable, be a plain constant, or be text with names in it, and
 * nothing else.
 *
 * <p>So an edited template can change what a page looks like, never what the program does, and no
 * Java compiler is needed on the farrier's machine.
 */
public final class TemplateCompiler extends JRAbstractCompiler {

  /**
   * A compiler for reports of that context; the report library calls this too, by name.
   *
   * @param context the report library's settings
   */
  public TemplateCompiler(JasperReportsContext context) {
    super(context, false);
  }

  @Override
  protected void checkLanguage(String language) throws JRException {
    if (!"java".equals(language)) {
      throw fault(Message.of("print.template.aLanguage", language));
    }
  }

  @Override
  protected JRCompilationSourceCode generateSourceCode(JRSourceCompileTask task)
      throws JRException {
    StringBuilder refused = new StringBuilder();
    task.getExpressions().forEach(e -> refused.append(' ').append(e.getText()));
    throw fault(Message.of("print.template.onlyNames", refused.toString().strip()));
  }

  @Override
  protected JREvaluator loadEvaluator(Serializable compiled, String unit) throws JRException {
    throw fault(Message.of("print.template.code"));
  }

  @Override
  protected String compileUnits(JRCompilationUnit[] units, String classpath, File folder) {
    return "code";
  }

  private static JRException fault(Message message) {
    return new JRException(new RefusedFile(message));
  }

  @Override
  protected String getSourceFileName(String unit) {
    return unit;
  }
}
