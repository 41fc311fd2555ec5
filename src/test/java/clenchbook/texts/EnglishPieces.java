package clenchbook.texts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The pieces of English sentences that stand in the program's code: string literals with a space
 * beside a word. What a programming fault says is left out, since no farrier should ever see it,
 * and so are annotations and comments.
 */
final class EnglishPieces {
  private static final Pattern COMMENT = Pattern.compile("(?s:/\\*.*?\\*/)|(?m:^\\s*//.*$)");
  private static final Pattern TOKEN =
      Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"|'(?:[^'\\\\]|\\\\.)'|[;{}]|//[^\\n]*");
  private static final Pattern WORDS =
      Pattern.compile("[A-Za-z]{2,}[,:.]? [A-Za-z]|^[,;:]? [a-z]|[a-z]{2}[,:;]? $");
  private static final Pattern FAULT =
      Pattern.compile("new (Illegal\\w+|AssertionError|IOException|UncheckedIOException)\\(");
  private static final Pattern ANNOTATION = Pattern.compile("@[A-Z]\\w*\\s*\\(");

  private EnglishPieces() {}

  /** The pieces of a file, in order. */
  static List<String> in(String code) {
    List<String> pieces = new ArrayList<>();
    List<String> statement = new ArrayList<>();
    String bare = withoutAnnotations(COMMENT.matcher(code).replaceAll(""));
    Matcher token = TOKEN.matcher(bare);
    int begin = 0;
    while (token.find()) {
      if (token.group(1) != null) {
        if (WORDS.matcher(token.group(1)).find()) {
          statement.add(token.group(1));
        }
      } else if (";{}".contains(token.group())) {
        if (!FAULT.matcher(bare.substring(begin, token.start())).find()) {
          pieces.addAll(statement);
        }
        statement.clear();
        begin = token.end();
      }
    }
    return pieces;
  }

  /** Takes out each annotation with what stands in its brackets. */
  private static String withoutAnnotations(String code) {
    StringBuilder kept = new StringBuilder();
    Matcher annotation = ANNOTATION.matcher(code);
    int from = 0;
    while (annotation.find(from)) {
      kept.append(code, from, annotation.start());
      from = closing(code, annotation.end());
    }
    return kept.append(code, from, code.length()).toString();
  }

  private static int closing(String code, int open) {
    int depth = 1;
    boolean quoted = false;
    for (int at = open; at < code.length(); at++) {
      char sign = code.charAt(at);
      if (quoted && sign == '\\') {
        at++;
      } else if (sign == '"') {
        quoted = !quoted;
      } else if (!quoted && sign == '(') {
        depth++;
      } else if (!quoted && sign == ')' && --depth == 0) {
        return at + 1;
      }
    }
    return code.length();
  }

  /** The pieces of some files, as {@code Class: piece}. */
  static List<String> of(List<Path> files) {
    List<String> pieces = new ArrayList<>();
    for (Path file : files) {
      String type = file.getFileName().toString().replace(".java", "");
      in(TextFilesOfRooms.read(file)).forEach(piece -> pieces.add(type + ": " + piece));
    }
    return pieces;
  }

  /** Prints how many pieces are left in each package. */
  public static void main(String[] arguments) {
    Map<String, Integer> left = new TreeMap<>();
    for (Path file : TextFilesOfRooms.code()) {
      int pieces = in(TextFilesOfRooms.read(file)).size();
      Path folder = TextFilesOfRooms.CODE.relativize(file).getParent();
      if (pieces > 0 && folder != null) {
        left.merge(folder.toString().replace('/', '.'), pieces, Integer::sum);
      }
    }
    left.forEach((name, count) -> System.out.printf("%5d  %s%n", count, name));
    System.out.printf("%5d  in all%n", left.values().stream().mapToInt(n -> n).sum());
  }
}
