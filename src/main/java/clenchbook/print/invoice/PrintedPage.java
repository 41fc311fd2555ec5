package clenchbook.print.invoice;

import clenchbook.print.tags.TagNotes;
import java.util.List;
import java.util.Map;

/**
 * What a template is filled with.
 *
 * @param title the document's title
 * @param parts the template's parameters
 * @param rows the template's rows
 * @param notes its pictures in words and where it can be paid
 */
public record PrintedPage(
    String title, Map<String, Object> parts, List<Map<String, Object>> rows, TagNotes notes) {}
