package clenchbook.tax;

import clenchbook.reports.blocks.Block;
import clenchbook.reports.blocks.TableOf;
import clenchbook.tax.lines.LineHead;
import clenchbook.tax.lines.SummaryLine;
import clenchbook.tax.page.Wording;
import clenchbook.tax.rates.Standing;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Lines of the summary as a printed table, with what must stand beside a figure. */
final class LineBlocks {
  private static final int WORD = 10;

  private final PageWords words;
  private final Set<Wording> plain;

  LineBlocks(PageWords words) {
    this(words, Set.of());
  }

  /**
   * Lines under a sentence that says what most of them rest on.
   *
   * @param plain bases that need no word beside each line
   */
  LineBlocks(PageWords words, Set<Wording> plain) {
    this.words = words;
    this.plain = plain;
  }

  Block.Table table(List<SummaryLine> lines) {
    if (lines.stream().allMatch(LineBlocks::isCalledByItsName)) {
      return rows(TableOf.rows(lines).words(words.say("tax.column.line"), 32, this::named));
    }
    int longest = lines.stream().mapToInt(line -> marked(line).length()).max().orElse(0);
    return rows(
        TableOf.rows(lines)
            .words(words.say("tax.column.line"), longest > WORD ? 10 : 5, this::marked)
            .words(words.say("tax.column.name"), 27, this::name));
  }

  private Block.Table rows(TableOf<SummaryLine> named) {
    return figures(named).totalsWhere(line -> line.kind() == SummaryLine.Kind.TOTAL).plain();
  }

  private TableOf<SummaryLine> figures(TableOf<SummaryLine> named) {
    return named
        .number(words.say("tax.column.amount"), 6, line -> words.amount(line.amount()))
        .number(words.say("tax.column.rows"), 4, LineBlocks::rows)
        .words(words.say("tax.column.basis"), 10, this::basis);
  }

  /** Lines beside the form, told by their names alone. */
  Block.Table beside(List<SummaryLine> lines) {
    return figures(TableOf.rows(lines).words(words.say("tax.column.name"), 20, this::name)).plain();
  }

  /** What to say beneath them where a number is carried over from an earlier year. */
  Optional<Block> carriedOver(List<SummaryLine> lines) {
    return lines.stream().anyMatch(LineBlocks::isCarriedOver)
        ? Optional.of(new Block.Paragraph(words.say("tax.carriedOver")))
        : Optional.empty();
  }

  private static boolean isCarriedOver(SummaryLine line) {
    return line.head().mark().equals(Standing.CARRIED_OVER.mark());
  }

  /** Whether a form has no number for the line but its name, which need not be told twice. */
  private static boolean isCalledByItsName(SummaryLine line) {
    LineHead head = line.head();
    return head.isUnnumbered() || head.line().equalsIgnoreCase(head.name());
  }

  private String name(SummaryLine line) {
    return words.say(line.head().named());
  }

  private String named(SummaryLine line) {
    return starred(name(line), line);
  }

  /** The number of a line, starred where it or a rate in it is carried over. */
  private String marked(SummaryLine line) {
    return starred(words.say(line.head().number()), line);
  }

  private static String starred(String text, SummaryLine line) {
    return isCarriedOver(line) ? text + " *" : text;
  }

  private String basis(SummaryLine line) {
    String basis = plain.contains(line.basis()) ? "" : words.say(line.basis());
    boolean memory = line.head().mark().equals(Standing.MEMORY.mark());
    String mark = memory ? words.say(Standing.MEMORY.mark()) : "";
    return basis.isEmpty() || mark.isEmpty() ? basis + mark : basis + "; " + mark;
  }

  private static String rows(SummaryLine line) {
    long rows = line.items().stream().filter(item -> item.row() > 0).count();
    return rows == 0 ? "" : String.valueOf(rows);
  }
}
