package clenchbook.commands.moving;

import clenchbook.commands.opening.RegisterChoice;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What backup was asked.
 *
 * @param book the workbook
 * @param to the file to be written; must not exist
 * @param out the folder of reports; empty for the one beside the book
 * @param register which register
 * @param rates a folder of rate files; empty for {@code rates} beside the book
 */
public record BackupRequest(
    Path book, Path to, Optional<Path> out, RegisterChoice register, Optional<Path> rates) {}
