package clenchbook.bankfiles;

/**
 * What the book knows where a CSV file leaves a choice.
 *
 * @param monthFirst whether bare dates such as 03/04/2026 put the month first, where nothing in the
 *     file tells
 * @param currency the book's currency, for a file that names none
 */
public record Hints(boolean monthFirst, String currency) {}
