/**
 * The month on one page, as HTML with its pictures inside. Start at {@link
 * clenchbook.print.html.HtmlPage}.
 */
@NullMarked
package clenchbook.print.html;

import org.jspecify.annotations.NullMarked;
