package clenchbook.image;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.objectweb.asm.ClassReader;

/**
 * Which classes of a jar something in it can name. A class counts as named where its name stands in
 * any text of a kept class, as a type, in a signature or as a plain string, or anywhere in a file
 * that is no class: more than is ever loaded, never less than what is linked.
 */
final class Reachable {
  private static final Pattern NAME = Pattern.compile("[\\w$]+(?:[./][\\w$]+)+");
  private static final Pattern VERSIONED = Pattern.compile("META-INF/versions/\\d+/");
  private static final int UTF8_CONSTANT = 1;
  private static final String CLASS = ".class";

  private final Map<String, byte[]> files;
  private final Map<String, List<String>> filesOf = new HashMap<>();
  private final Set<String> kept = new HashSet<>();
  private final Deque<String> waiting = new ArrayDeque<>();

  private Reachable(Map<String, byte[]> files) {
    this.files = files;
    for (String file : files.keySet()) {
      if (isClass(file)) {
        filesOf.computeIfAbsent(name(file), fresh -> new ArrayList<>()).add(file);
      }
    }
  }

  /**
   * Names of classes, with slashes.
   *
   * @param files the jar's files by name
   * @param mayGo beginnings of the names of classes that stay only where they are named
   */
  static Set<String> of(Map<String, byte[]> files, List<String> mayGo) {
    Reachable reachable = new Reachable(files);
    reachable.filesOf.keySet().stream()
        .filter(name -> mayGo.stream().noneMatch(name::startsWith))
        .forEach(reachable::keep);
    files.forEach(
        (file, bytes) -> {
          if (!isClass(file) && !file.endsWith(".ttf")) {
            reachable.keepNamedIn(new String(bytes, StandardCharsets.ISO_8859_1));
          }
        });
    reachable.follow();
    return reachable.kept;
  }

  static boolean isClass(String file) {
    return file.endsWith(CLASS);
  }

  /** A class's name, wherever its file lies in a jar for several releases of Java. */
  static String name(String file) {
    String plain = VERSIONED.matcher(file).replaceFirst("");
    return plain.substring(0, plain.length() - CLASS.length());
  }

  private void follow() {
    while (!waiting.isEmpty()) {
      for (String file : filesOf.get(waiting.remove())) {
        keepNamedBy(files.get(file));
      }
    }
  }

  private void keepNamedBy(byte[] bytes) {
    ClassReader reader = new ClassReader(bytes);
    for (int constant = 1; constant < reader.getItemCount(); constant++) {
      int at = reader.getItem(constant);
      if (at > 0 && bytes[at - 1] == UTF8_CONSTANT) {
        int length = reader.readUnsignedShort(at);
        keepNamedIn(new String(bytes, at + 2, length, StandardCharsets.UTF_8));
      }
    }
  }

  private void keepNamedIn(String text) {
    Matcher names = NAME.matcher(text);
    while (names.find()) {
      String name = names.group().replace('.', '/');
      keep(name);
      if (name.startsWith("L")) {
        // In a signature a type begins with this letter.
        keep(name.substring(1));
      }
    }
  }

  private void keep(String name) {
    if (filesOf.containsKey(name) && kept.add(name)) {
      waiting.add(name);
    }
  }
}
