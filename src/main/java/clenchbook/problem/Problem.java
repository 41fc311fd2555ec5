package clenchbook.problem;

import clenchbook.texts.Message;
import clenchbook.texts.Texts;

/**
 * One fault of the farrier's data. The sentence on the terminal, the row of {@code problems.csv}
 * and the coloured cell all come from this value.
 *
 * @param kind the catalogue's entry
 * @param severity what follows for the row
 * @param at the cell at fault
 * @param problem what is wrong
 * @param expected what would be right; may be empty
 * @param value the value as found; empty for a blank cell
 */
public record Problem(
    ProblemKind kind,
    Severity severity,
    CellRef at,
    Message problem,
    Message expected,
    String value) {

  /**
   * A problem that holds its row back.
   *
   * @param kind the catalogue's entry
   * @param at the cell at fault
   * @param problem what is wrong
   * @param expected what would be right
   * @param value the value as found
   * @return the problem
   */
  public static Problem held(
      ProblemKind kind, CellRef at, Message problem, Message expected, String value) {
    return new Problem(kind, Severity.HELD, at, problem, expected, value);
  }

  /**
   * A problem whose row is used all the same.
   *
   * @param kind the catalogue's entry
   * @param at the cell at fault
   * @param problem what is wrong
   * @param expected what would be right
   * @param value the value as found
   * @return the problem
   */
  public static Problem warning(
      ProblemKind kind, CellRef at, Message problem, Message expected, String value) {
    return new Problem(kind, Severity.WARNING, at, problem, expected, value);
  }

  /**
   * Something worth knowing that is about no cell.
   *
   * @param kind the catalogue's entry
   * @param at the sheet, or the sheet and row
   * @param problem what to know
   * @param expected what to do; may be empty
   * @return the note
   */
  public static Problem note(ProblemKind kind, CellRef at, Message problem, Message expected) {
    return new Problem(kind, Severity.NOTE, at, problem, expected, "");
  }

  /**
   * The one text form of a problem.
   *
   * @param texts the farrier's language
   * @return {@code Sheet!Cell: what is wrong; expected what}
   */
  public String sentence(Texts texts) {
    String place = texts.say(at.place());
    return (place.isEmpty() ? "" : place + ": ") + texts.say(inFull());
  }

  /** What is wrong, with what would be right where that is known. */
  public Message inFull() {
    return expected.isEmpty() ? problem : Message.of("problem.inFull", problem, expected);
  }
}
