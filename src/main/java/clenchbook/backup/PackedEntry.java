package clenchbook.backup;

/**
 * A file as the directory of a packed file declares it.
 *
 * @param name its path
 * @param size its bytes when unpacked; below 0 where not said
 * @param plain false for a link or a folder
 * @param stored true where its bytes lie in the packed file as they are
 */
public record PackedEntry(String name, long size, boolean plain, boolean stored) {}
