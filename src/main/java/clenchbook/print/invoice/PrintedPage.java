package clenchbook.print.invoice;

import java.util.List;
import java.util.Map;

/**
 * What a template is filled with.
 *
 * @param title the document's title
 * @param parts the template's parameters
 * @param rows the template's rows
 */
public record PrintedPage(
    String title, Map<String, Object> parts, List<Map<String, Object>> rows) {}
