package clenchbook.texts;

/** Something that went wrong in a way that can be told to the farrier. */
public interface Told {
  /** What to tell, in one line. */
  Message message();
}
