/**
 * What each piece of a page is, so that a document can be read aloud: headings, tables, answers,
 * pictures, links. Start at {@link clenchbook.print.tags.PageTags}.
 */
@NullMarked
package clenchbook.print.tags;

import org.jspecify.annotations.NullMarked;
