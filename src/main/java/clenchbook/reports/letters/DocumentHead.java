package clenchbook.reports.letters;

import java.time.LocalDate;

/**
 * What stands at the top of an invoice, credit note or statement.
 *
 * @param from the farrier
 * @param to the owner
 * @param number the document's number; empty for a statement
 * @param date the document's date
 * @param locale language and country of the document
 * @param currency ISO 4217 code of every amount in it
 */
public record DocumentHead(
    Letterhead from,
    Addressee to,
    String number,
    LocalDate date,
    PrintLocale locale,
    String currency) {}
