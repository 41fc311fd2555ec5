package clenchbook.commands;

import clenchbook.commands.opening.RegisterChoice;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What year-end was asked.
 *
 * @param book the workbook
 * @param year the calendar year in which the tax year starts; empty for the last one that ended
 *     before the day of the run
 * @param quarter only this quarter of it, 1 to 4
 * @param calendarQuarters whether quarters begin on the first of a month although the year does not
 * @param out the folder of reports; empty for the one beside the book
 * @param register which register
 * @param rates a folder of rate files to lay over the program's; empty for {@code rates} beside the
 *     book
 */
public record YearEndRequest(
    Path book,
    Optional<Integer> year,
    Optional<Integer> quarter,
    boolean calendarQuarters,
    Optional<Path> out,
    RegisterChoice register,
    Optional<Path> rates) {}
