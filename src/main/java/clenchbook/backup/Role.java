package clenchbook.backup;

import clenchbook.texts.Message;

/** What a file is to its book; a backup holds them in this order. */
public enum Role {
  BOOK,
  REGISTER,
  HEADINGS,
  TEMPLATES,
  RATES,
  LOGO,
  /** The rows that {@code payments} laid out to be pasted: the month's page counts them. */
  WAITING;

  /** What the farrier calls it. */
  public Message inWords() {
    return switch (this) {
      case BOOK -> Message.of("backup.role.book");
      case REGISTER -> Message.of("backup.role.register");
      case HEADINGS -> Message.of("backup.role.headings");
      case TEMPLATES -> Message.of("backup.role.templates");
      case RATES -> Message.of("backup.role.rates");
      case LOGO -> Message.of("backup.role.logo");
      case WAITING -> Message.of("backup.role.waiting");
    };
  }
}
