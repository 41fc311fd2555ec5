/**
 * Printed reports read back: every number of a page held against the files of figures.
 *
 * <p>Start at {@link clenchbook.printed.PrintedFiguresTest}.
 */
package clenchbook.printed;
