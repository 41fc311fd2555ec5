/**
 * What each document will say: final figures and words, ready to print, with no layout and no
 * arithmetic left. All types are immutable and thread-safe. Numbers arrive as text already rounded
 * for people; every number that a document prints also stands in a {@link
 * clenchbook.report.FigureTable}.
 */
package clenchbook.report;
