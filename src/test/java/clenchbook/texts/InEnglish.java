package clenchbook.texts;

import clenchbook.reading.texts.TextFiles;

/** The program's English, for tests that look at what is said. */
public final class InEnglish {
  /** Its texts, where no country is known. */
  public static final Texts TEXTS = TextFiles.in(Texts.ENGLISH, "");

  private InEnglish() {}

  /** A message as files have it: in English, numbers without separators. */
  public static String filed(Message message) {
    return TEXTS.forFiles().say(message);
  }

  /** A message as its English sentence. */
  public static String said(Message message) {
    return TEXTS.say(message);
  }
}
