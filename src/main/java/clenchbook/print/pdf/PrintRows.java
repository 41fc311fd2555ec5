package clenchbook.print.pdf;

import java.util.List;
import java.util.Map;
import net.sf.jasperreports.engine.JRDataSource;
import net.sf.jasperreports.engine.JRField;
import org.jspecify.annotations.Nullable;

/** Hands rows of printable values to a template, one after the other. */
final class PrintRows implements JRDataSource {
  private final List<Map<String, Object>> rows;
  private int at = -1;

  PrintRows(List<Map<String, Object>> rows) {
    this.rows = rows;
  }

  @Override
  public boolean next() {
    at++;
    return at < rows.size();
  }

  @Override
  public @Nullable Object getFieldValue(JRField field) {
    Object value = rows.get(at).get(field.getName());
    return value == null && field.getValueClass() == Boolean.class ? Boolean.FALSE : value;
  }
}
