package clenchbook.tax.jurisdiction;

/**
 * A file of its own that a regime writes beside the tables.
 *
 * @param name its name in the run's folder, as {@code quarterly-update.json}
 * @param text its whole content
 */
public record TextFile(String name, String text) {}
