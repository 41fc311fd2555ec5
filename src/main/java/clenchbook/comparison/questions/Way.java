package clenchbook.comparison.questions;

import clenchbook.texts.Message;

/** One of the two ways that a question compares. */
public enum Way {
  /** Shaped at the forge. */
  HOT("hot", "comparison.hot"),
  /** Shaped cold. */
  COLD("cold", "comparison.cold"),
  /** With shoes made by hand. */
  HANDMADE("handmade", "comparison.handmade"),
  /** With shoes made by machine. */
  KEG("keg", "comparison.keg");

  private final String word;
  private final String key;

  Way(String word, String key) {
    this.word = word;
    this.key = key;
  }

  /** Its word in files. */
  public String word() {
    return word;
  }

  /** Its word for people. */
  public Message told() {
    return Message.of(key);
  }
}
