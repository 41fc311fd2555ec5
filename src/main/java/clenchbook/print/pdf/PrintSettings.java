package clenchbook.print.pdf;

import clenchbook.print.invoice.LogoImage;
import clenchbook.reports.letters.PrintLocale;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What all documents of a run have in common.
 *
 * @param asAt the day the run stands for; the documents' inner dates are this day, never the
 *     clock's
 * @param locale the business's own language and country; the country decides the paper
 * @param business the business name, the author of every document; may be empty
 * @param logo the logo, read once
 * @param ownTemplates the farrier's folder of edited templates, where there is one
 */
public record PrintSettings(
    LocalDate asAt,
    PrintLocale locale,
    String business,
    Optional<LogoImage> logo,
    Optional<Path> ownTemplates) {}
