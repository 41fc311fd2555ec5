package clenchbook.print.scripts;

/** Takes what is spoken where it is not what is seen from left to right. */
public interface Aloud {
  /**
   * What is drawn from now on is spoken so.
   *
   * @param said the text in the order of speech
   */
  void begin(String said);

  /** From now on what is drawn speaks for itself again. */
  void end();
}
