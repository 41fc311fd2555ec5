package clenchbook.commands;

import clenchbook.commands.opening.RegisterChoice;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;

/**
 * What month-end was asked.
 *
 * @param book the workbook
 * @param month the month
 * @param out the folder of reports; empty for the one beside the book
 * @param register which register
 * @param includeEarlier true to bill earlier visits that no document bears
 * @param correct the number of an issued invoice to correct at once
 * @param exportRegister a folder to write the whole register to, as CSV
 */
public record MonthEndRequest(
    Path book,
    YearMonth month,
    Optional<Path> out,
    RegisterChoice register,
    boolean includeEarlier,
    Optional<String> correct,
    Optional<Path> exportRegister) {}
