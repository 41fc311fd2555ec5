package clenchbook.reading.proposal;

/** What a cell looks like; one cell may look like several. */
enum Trait {
  /** A day: a true date or a text that is read as one. */
  DAY,
  /** A number, also one typed as a text. */
  NUMBER,
  /** A whole number. */
  WHOLE,
  /** A number with a currency's sign, typed or by its format. */
  MONEY,
  /** A number shown with two decimals, as most money is. */
  CENTS,
  /** A length of time or a time of day. */
  CLOCK,
  /** A number with a word for minutes or hours behind it. */
  MINUTES,
  /** A number shown as a percentage. */
  PERCENT,
  /** Words. */
  TEXT,
  /** Four words or more. */
  LONG,
  /** Words with figures in them. */
  FIGURES,
  /** One word. */
  ONE_WORD,
  /** Two or three words that begin with capitals. */
  PERSON,
  /** A whole number from 0 to 8. */
  FEW,
  /** A number that a visit may take in minutes. */
  OF_A_JOB,
  /** A whole number that ends in 0 or 5. */
  FIVES,
  /** Hot, cold or none. */
  SHAPING,
  /** Hot or cold. */
  HOT_COLD,
  /** A reason of a visit. */
  REASON,
  /** How was paid. */
  METHOD,
  /** A kind of material. */
  MATERIAL,
  /** A unit. */
  UNIT,
  /** A kind of payment. */
  PAYMENT,
  /** A kind of tax rate. */
  TAX,
  /** Job or fee. */
  FEE,
  /** Yes or no in words. */
  YES_NO,
  /** An address of mail. */
  EMAIL,
  /** A size that can hardly be anything else: 00, 4x0, 5/16. */
  SIZE,
  /** A number that may be a size. */
  PLAIN_SIZE,
  /** Items or sizes with counts. */
  PARTS,
  /** Work on hooves. */
  WORK,
  /** The name of a setting. */
  SETTING,
  /** The name of a country. */
  COUNTRY,
  /** The name of a language. */
  LANGUAGE,
  /** A form of e-invoice. */
  E_INVOICE,
  /** Letters and digits mixed. */
  CODE,
  /** A number as long as that of a phone, or with its signs. */
  PHONE,
  /** The measures of a bar. */
  SECTION
}
