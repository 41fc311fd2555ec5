/**
 * Guesses what sheets and headings mean that no list of words knows, from their names and from what
 * stands beneath them. Contents in, proposals out: nothing here touches a file, a clock or a
 * locale. Start at {@link clenchbook.reading.proposal.BookGuess}.
 */
@NullMarked
package clenchbook.reading.proposal;

import org.jspecify.annotations.NullMarked;
