package clenchbook.reading.formats.cells;

import java.util.Optional;

/** The letters and signs that a number format shows as they stand, before and behind its digits. */
final class FormatLiterals {
  private final StringBuilder before = new StringBuilder();
  private final StringBuilder behind = new StringBuilder();
  private String currency = "";
  private boolean digits;

  private FormatLiterals() {}

  /** Those of a code's first section, which is that of numbers above nothing. */
  static FormatLiterals of(String code) {
    FormatLiterals literals = new FormatLiterals();
    for (int i = 0; i < code.length() && code.charAt(i) != ';'; i++) {
      char c = code.charAt(i);
      if (c == '"') {
        int end = end(code, i, '"');
        literals.add(code.substring(i + 1, end));
        i = end;
      } else if (c == '[') {
        int end = end(code, i, ']');
        literals.bracket(code.substring(i + 1, end));
        i = end;
      } else if (c == '\\') {
        i++;
        literals.add(code.substring(i, Math.min(i + 1, code.length())));
      } else if (c == '_' || c == '*') {
        i++;
      } else if (c == '0' || c == '#' || c == '?') {
        literals.digits = true;
        literals.behind.setLength(0);
      } else if (c != '.' && c != ',') {
        literals.add(String.valueOf(c));
      }
    }
    return literals;
  }

  private static int end(String code, int from, char mark) {
    int end = code.indexOf(mark, from + 1);
    return end < 0 ? code.length() : end;
  }

  private void add(String literal) {
    (digits ? behind : before).append(literal);
  }

  /** {@code [$€-407]} shows a sign; {@code [Red]} and {@code [$-407]} show none. */
  private void bracket(String inner) {
    if (inner.startsWith("$") && currency.isEmpty()) {
      int dash = inner.lastIndexOf('-');
      currency = inner.substring(1, dash < 1 ? inner.length() : dash).strip();
    }
  }

  Optional<String> currencySign() {
    String sign =
        !currency.isEmpty()
            ? currency
            : before.toString().isBlank() ? behind.toString() : before.toString();
    return Optional.of(sign.strip()).filter(found -> digits && !found.isEmpty());
  }

  Optional<String> behind() {
    return Optional.of(behind.toString().strip()).filter(found -> !found.isEmpty());
  }
}
