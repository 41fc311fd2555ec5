package clenchbook.matching.evidence;

import clenchbook.matching.known.KnownDocument;
import clenchbook.values.CreditorReference;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds the invoices that a text names. */
public final class NumberIndex {
  private static final int MOST_RUNS = 8;
  private static final int SHORTEST_PLAIN = 5;
  private static final int SHORTEST_SLIP = 5;
  private static final int FEWEST_DIGITS_SLIP = 4;

  /** What stands before a number that is no other number: "invoice 17". Five languages. */
  private static final Set<String> BEFORE =
      Set.of(
          "INVOICE",
          "INV",
          "NO",
          "NR",
          "NUMBER",
          "NUM",
          "RECHNUNG",
          "RECHNUNGSNR",
          "RECHNUNGSNUMMER",
          "RE",
          "RG",
          "RNR",
          "RGNR",
          "FACTURE",
          "FACT",
          "FAC",
          "FA",
          "FACTURA",
          "FRA",
          "FACTUUR",
          "FACTUURNR",
          "FACTUURNUMMER",
          "N",
          "NUMERO",
          "BILL");

  private record Numbered(KnownDocument document, int digitRuns, int length, boolean parted) {}

  private final Map<String, Numbered> exact = new HashMap<>();
  private final Map<String, KnownDocument> references = new HashMap<>();
  private final Map<String, KnownDocument> loose = new HashMap<>();
  private final OneSlip<KnownDocument> slips = new OneSlip<>();
  private final int longest;

  /**
   * Makes one.
   *
   * @param documents every document that a text may name
   */
  public NumberIndex(List<KnownDocument> documents) {
    int most = 0;
    for (KnownDocument document : documents) {
      Segments segments = Segments.of(document.number());
      String compact = segments.compact();
      most = Math.max(most, compact.length());
      exact.put(
          compact,
          new Numbered(document, segments.digitRuns(), compact.length(), segments.size() > 1));
      CreditorReference.of(document.number())
          .ifPresent(reference -> references.put(reference.compact(), document));
      if (segments.size() > 1) {
        loose.putIfAbsent(segments.loose(), document);
      }
      if (document.isOpen() && compact.length() >= SHORTEST_SLIP) {
        slips.add(compact, document);
      }
    }
    longest = most + 1;
  }

  /**
   * The documents that texts name, each by the surest way.
   *
   * @param date the entry's day, near which eight digits may be a day and no number
   * @param texts any texts; empty ones name nothing
   * @return in the order found
   */
  public Map<KnownDocument, NumberHow> find(LocalDate date, List<String> texts) {
    Map<KnownDocument, NumberHow> found = new LinkedHashMap<>();
    if (exact.isEmpty()) {
      return found;
    }
    for (String text : texts) {
      if (!text.isEmpty()) {
        search(Segments.of(text), date, found);
      }
    }
    boolean named = found.values().stream().anyMatch(NumberHow::plain);
    if (named) {
      // Whoever names one number rightly has not made a slip in another.
      found.values().removeIf(how -> how == NumberHow.SLIP);
    }
    return found;
  }

  /**
   * Open documents whose number is one slip from a document's.
   *
   * @param document any document
   * @return in order; never the document itself
   */
  public Set<KnownDocument> oneSlipFrom(KnownDocument document) {
    return slips.near(Segments.of(document.number()).compact());
  }

  private void search(Segments text, LocalDate date, Map<KnownDocument, NumberHow> found) {
    for (int first = 0; first < text.size(); first++) {
      StringBuilder compact = new StringBuilder();
      StringBuilder shortened = new StringBuilder();
      int digitRuns = 0;
      int limit = Math.min(text.size(), first + MOST_RUNS);
      for (int last = first; last < limit && compact.length() <= longest + 4; last++) {
        String run = text.run(last);
        compact.append(run);
        shortened.append(last == first ? "" : "-").append(Segments.withoutNoughts(run));
        digitRuns += text.digits(last) ? 1 : 0;
        Window window =
            new Window(text, first, last, compact.toString(), shortened.toString(), digitRuns);
        match(window, date, found);
        if (!text.nearNext(last)) {
          break;
        }
      }
    }
  }

  /** Neighbouring runs of a text. */
  private record Window(
      Segments text, int first, int last, String compact, String loose, int digitRuns) {
    boolean announced() {
      return first > 0 && BEFORE.contains(text.run(first - 1)) && text.nearNext(first - 1);
    }

    boolean oneRun() {
      return first == last;
    }

    /** Behind RF and two digits that do not check: something in it was mistyped. */
    boolean ofBrokenReference() {
      return first > 1
          && text.run(first - 2).equals("RF")
          && text.run(first - 1).length() == 2
          && text.digits(first - 1)
          && text.nearNext(first - 2)
          && text.nearNext(first - 1);
    }
  }

  private void match(Window window, LocalDate date, Map<KnownDocument, NumberHow> found) {
    KnownDocument referenced = references.get(window.compact());
    if (referenced != null) {
      keep(found, referenced, NumberHow.REFERENCE);
      return;
    }
    Numbered numbered = exact.get(window.compact());
    if (numbered != null && window.digitRuns() <= numbered.digitRuns()) {
      keep(found, numbered.document(), how(numbered, window, date));
      return;
    }
    KnownDocument shorter = window.oneRun() ? null : loose.get(window.loose());
    if (shorter != null) {
      keep(found, shorter, NumberHow.LOOSE);
    } else {
      slip(window, found);
    }
  }

  private static NumberHow how(Numbered numbered, Window window, LocalDate date) {
    if (window.ofBrokenReference()) {
      return NumberHow.SLIP;
    }
    boolean couldBeDay = window.oneRun() && numbered.parted() && isNear(window.compact(), date);
    if (couldBeDay && !window.announced()) {
      return NumberHow.LOOSE;
    }
    boolean isShort = numbered.length() < SHORTEST_PLAIN;
    return isShort && !window.announced() ? NumberHow.SHORT : NumberHow.EXACT;
  }

  /** Whether eight digits are a day within a year or so of another. */
  private static boolean isNear(String digits, LocalDate date) {
    if (digits.length() != 8 || !digits.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return false;
    }
    try {
      LocalDate day =
          LocalDate.of(
              Integer.parseInt(digits.substring(0, 4)),
              Integer.parseInt(digits.substring(4, 6)),
              Integer.parseInt(digits.substring(6)));
      return Math.abs(day.toEpochDay() - date.toEpochDay()) < 400;
    } catch (DateTimeException noDay) {
      return false;
    }
  }

  private void slip(Window window, Map<KnownDocument, NumberHow> found) {
    String compact = window.compact();
    boolean likely =
        compact.length() >= SHORTEST_SLIP - 1
            && compact.length() <= longest
            && compact.chars().filter(c -> c >= '0' && c <= '9').count() >= FEWEST_DIGITS_SLIP
            && window.digitRuns() <= 2;
    if (likely) {
      slips.near(compact).forEach(document -> keep(found, document, NumberHow.SLIP));
    }
  }

  private static void keep(
      Map<KnownDocument, NumberHow> found, KnownDocument document, NumberHow how) {
    found.merge(document, how, (one, other) -> one.compareTo(other) <= 0 ? one : other);
  }
}
