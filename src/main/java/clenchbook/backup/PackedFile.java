package clenchbook.backup;

/**
 * A file of a backup.
 *
 * @param role what it is to the book
 * @param name its path below the folder of the book, with forward slashes
 */
public record PackedFile(Role role, String name) {}
