package clenchbook.reading.rows;

import clenchbook.book.Book;
import clenchbook.book.Names;
import clenchbook.book.Setting;
import clenchbook.book.Settings;
import clenchbook.book.SheetKind;
import clenchbook.problem.CellRef;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.reading.cells.SoundCells;
import clenchbook.reading.recognise.HeadingCell;
import clenchbook.reading.recognise.SheetLayout;
import clenchbook.reading.words.HeadingEnds;
import clenchbook.reading.words.HeadingEnds.End;
import clenchbook.texts.BookName;
import clenchbook.texts.Message;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Warns of prices and charges whose headings say of the tax what the Settings do not: tax would be
 * charged on tax, taken out of what never held it, or forgotten.
 */
public final class HeadingTax {
  /** The columns that invoices are made of. */
  private static final Map<SheetKind, String> BILLED =
      Map.of(SheetKind.VISITS, "Charge", SheetKind.WORK, "Price", SheetKind.MATERIALS, "Price");

  private final Settings settings;
  private final boolean taxed;

  private HeadingTax(Book book) {
    settings = book.settings();
    taxed = settings.chargesTax() && isTaxed(book);
  }

  /**
   * Says them.
   *
   * @param layouts the tables of the book
   * @param book what was read from them
   * @param problems takes the warnings, at the headings
   */
  public static void say(Collection<SheetLayout> layouts, Book book, Consumer<Problem> problems) {
    HeadingTax tax = new HeadingTax(book);
    for (SheetLayout layout : layouts) {
      layout.headings().cells().stream()
          .filter(cell -> cell.heading().equals(BILLED.get(layout.kind())))
          .forEach(cell -> tax.problem(layout, cell).ifPresent(problems));
    }
  }

  /** Whether any Work bears a code under which tax is charged. */
  private static boolean isTaxed(Book book) {
    Set<String> codes =
        book.taxRates().stream()
            .filter(rate -> rate.kind().charged() && rate.ratePercent().signum() > 0)
            .map(rate -> Names.key(rate.code()))
            .collect(Collectors.toSet());
    return book.work().stream().anyMatch(work -> codes.contains(Names.key(work.taxCode())));
  }

  private Optional<Problem> problem(SheetLayout layout, HeadingCell heading) {
    String shown = SoundCells.oneLine(heading.cell());
    String letters = CellRef.letters(heading.cell().column());
    CellRef at = new CellRef(layout.name(), layout.headingRow(), letters);
    return HeadingEnds.tax(heading.cell().shown())
        .flatMap(end -> end == End.WITH_TAX ? onTop(at, shown) : without(at, shown));
  }

  private Optional<Problem> onTop(CellRef at, String shown) {
    return taxed && !settings.yes(Setting.PRICES_INCLUDE_TAX)
        ? warning(
            at,
            Message.of("reading.headingTax.onTop", shown),
            setting(Message.of("cells.yesNo.yes")),
            shown)
        : Optional.empty();
  }

  private Optional<Problem> without(CellRef at, String shown) {
    if (taxed) {
      return settings.yes(Setting.PRICES_INCLUDE_TAX)
          ? warning(
              at,
              Message.of("reading.headingTax.within", shown),
              setting(Message.of("cells.yesNo.no")),
              shown)
          : Optional.empty();
    }
    Message codes = Message.of("reading.headingTax.codes");
    return settings.taxRegistered()
        ? warning(at, Message.of("reading.headingTax.none", shown), codes, shown)
        : Optional.empty();
  }

  private static Message setting(Message answer) {
    return Message.of(
        "reading.headingTax.setting",
        BookName.of(SheetKind.SETTINGS.title(), Setting.PRICES_INCLUDE_TAX.title()),
        answer);
  }

  private static Optional<Problem> warning(
      CellRef at, Message what, Message expected, String shown) {
    return Optional.of(Problem.warning(ProblemKind.HEADING_TAX_OTHER, at, what, expected, shown));
  }
}
