package clenchbook.commands;

import clenchbook.ChildClassPath;
import clenchbook.cli.Clenchbook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A run in a process of its own, for tests that kill it. */
final class ChildRun {
  private ChildRun() {}

  /** Starts a command on October of a book, on the first of December; what it says is dropped. */
  static Process start(String command, SmallFolderBook book) throws IOException {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto"));
    words.addAll(List.of("-cp", ChildClassPath.text(), Clenchbook.class.getName()));
    words.addAll(List.of(command, book.path().toString()));
    words.addAll(List.of("--month", "2026-10", "--today", "2026-12-01"));
    ProcessBuilder builder = new ProcessBuilder(words);
    builder.environment().put("LC_ALL", "C.UTF-8");
    return builder
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
