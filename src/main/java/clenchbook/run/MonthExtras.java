package clenchbook.run;

import clenchbook.document.OutputFile;
import clenchbook.month.MonthFindings;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The month's page, and the marked copy where there are problems. */
final class MonthExtras {
  private MonthExtras() {}

  static Map<String, OutputFile> of(
      OpenBook open, MonthFindings month, Set<String> files, Map<String, String> documents) {
    return new LinkedHashMap<>();
  }
}
