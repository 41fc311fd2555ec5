package clenchbook.matching;

import clenchbook.matching.known.KnownDocument;
import java.math.BigDecimal;

/**
 * What of an entry goes to one document.
 *
 * @param document the document
 * @param amount how much, positive
 */
record Share(KnownDocument document, BigDecimal amount) {}
