package clenchbook.commands.opening;

import clenchbook.book.Book;
import clenchbook.book.HorseRow;
import clenchbook.book.Owner;
import clenchbook.book.SourceRow;
import clenchbook.book.Visit;
import clenchbook.book.WorkItem;
import clenchbook.delivery.message.MailAddress;
import clenchbook.print.files.SafeFileNames;
import clenchbook.print.fonts.MissingGlyphs;
import clenchbook.problem.Problem;
import clenchbook.problem.ProblemKind;
import clenchbook.texts.Message;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Names that can't be printed, written as a file name or mailed to as they stand. Each name is told
 * of once, where it first stands.
 */
final class NameFaults {
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> asked = new HashSet<>();

  private NameFaults() {}

  static List<Problem> of(Book book) {
    NameFaults faults = new NameFaults();
    book.owners().forEach(faults::owner);
    for (HorseRow row : book.horses()) {
      faults.printed(row.source(), "Horse", row.horse());
      faults.named(row.source(), "Owner", row.owner());
    }
    for (Visit visit : book.visits()) {
      faults.named(visit.source(), "Owner", visit.owner());
      faults.printed(visit.source(), "Horse", visit.horse());
      faults.printed(visit.source(), "Work", visit.work());
    }
    for (WorkItem row : book.work()) {
      faults.printed(row.source(), "Work", row.name());
    }
    return faults.problems;
  }

  private void owner(Owner owner) {
    named(owner.source(), "Owner", owner.name());
    printed(owner.source(), "Invoice name", owner.invoiceName());
    printed(owner.source(), "Address", owner.address());
    if (!owner.email().isEmpty() && MailAddress.parseAll(owner.email()).isEmpty()) {
      problems.add(
          Problem.warning(
              ProblemKind.ADDRESS_UNUSABLE,
              owner.source().at("Email"),
              Message.of("commands.name.noAddress"),
              Message.of("commands.name.anAddress"),
              owner.email()));
    }
  }

  private void named(SourceRow row, String heading, String name) {
    if (SafeFileNames.dropsFrom(name) && asked.add("file " + name)) {
      problems.add(
          Problem.note(
              ProblemKind.NAME_CLEANED,
              row.at(heading),
              Message.of("commands.name.control"),
              Message.of("commands.name.withoutThem")));
    }
    if (SafeFileNames.writesPlainly(name) && asked.add("letters " + name)) {
      problems.add(
          Problem.note(
              ProblemKind.NAME_CLEANED,
              row.at(heading),
              Message.of("commands.name.plainLetters"),
              Message.of("commands.name.aLocale")));
    }
    printed(row, heading, name);
  }

  private void printed(SourceRow row, String heading, String text) {
    if (plain(text) || !asked.add(text)) {
      return;
    }
    List<String> missing = MissingGlyphs.in(text);
    if (!missing.isEmpty()) {
      problems.add(
          Problem.warning(
              ProblemKind.GLYPH_MISSING,
              row.at(heading),
              Message.of(
                  "commands.name.noFont",
                  String.join(" ", missing),
                  String.valueOf(MissingGlyphs.REPLACEMENT)),
              Message.of("commands.name.aScript"),
              text));
    }
  }

  /** Plain Latin needs no font asked, which spares loading the fonts. */
  private static boolean plain(String text) {
    return text.chars().allMatch(c -> c < 0x250 && (c >= ' ' || c == '\n'));
  }
}
