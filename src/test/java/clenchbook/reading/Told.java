package clenchbook.reading;

import clenchbook.problem.Problem;

/** What a reading said, in short: severity, kind and cell of each problem, a line each. */
final class Told {
  private Told() {}

  static String told(ReadResult result) {
    StringBuilder told = new StringBuilder();
    for (Problem problem : result.problems()) {
      told.append(problem.severity().word()).append(' ').append(problem.kind()).append(' ');
      told.append(problem.at()).append('\n');
    }
    return told.toString();
  }
}
