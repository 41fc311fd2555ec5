package clenchbook.print.invoice;

import clenchbook.print.fonts.MissingGlyphs;
import clenchbook.print.tags.TagNotes;
import clenchbook.reports.letters.Addressee;
import clenchbook.reports.letters.DocumentHead;
import clenchbook.reports.letters.Letterhead;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.sf.jasperreports.renderers.Renderable;
import net.sf.jasperreports.renderers.SimpleDataRenderer;

/** What the letters have in common: head, address, facts, foot; as the templates' parameters. */
public final class LetterParts {
  /** Countries whose window envelopes have the window on the right; from memory. */
  private static final Set<String> WINDOW_RIGHT = Set.of("FR", "MC", "BE", "IT", "ES", "PT");

  private static final int LONGEST_UNBROKEN = 30;

  private LetterParts() {}

  /**
   * The parameters of a letter's head and foot.
   *
   * @param head farrier, owner, number and date
   * @param facts label and value, in order
   * @param wording the words
   * @param logo the logo
   * @return a new map that the caller adds to
   */
  static Map<String, Object> of(
      DocumentHead head,
      Map<String, String> facts,
      LetterWording wording,
      Optional<LogoImage> logo) {
    Map<String, Object> parts = new HashMap<>();
    Letterhead from = head.from();
    put(parts, "business", from.name());
    put(parts, "contact", contact(from, wording));
    put(parts, "footer", foot(from, wording));
    put(parts, "pageWord", wording.say("page"));
    put(parts, "ofWord", wording.say("of"));
    String side = WINDOW_RIGHT.contains(head.locale().country()) ? "Right" : "Left";
    String other = side.equals("Left") ? "Right" : "Left";
    put(parts, "sender" + side, sender(from));
    put(parts, "address" + side, address(head.to()));
    put(parts, "factLabels" + other, String.join("\n", facts.keySet()));
    put(parts, "factValues" + other, String.join("\n", facts.values()));
    logo.ifPresent(picture -> parts.put("logo", SimpleDataRenderer.getInstance(picture.jpeg())));
    return parts;
  }

  /**
   * What the page alone doesn't say: its pictures in words, and where it can be paid.
   *
   * @param head whose logo it is
   * @param parts the page's parameters, complete
   * @param payAt the address to pay at, where the page prints it
   * @param wording the words
   */
  static TagNotes notes(
      DocumentHead head, Map<String, Object> parts, Optional<String> payAt, LetterWording wording) {
    Map<String, String> pictures = new HashMap<>();
    if (parts.get("logo") instanceof Renderable logo) {
      pictures.put(logo.getId(), head.from().name());
    }
    if (parts.get("paymentCode") instanceof Renderable code) {
      pictures.put(code.getId(), wording.say("pay.scan"));
    }
    return new TagNotes(pictures, payAt);
  }

  /** Adds a text that can be printed; an empty one is left off. */
  public static void put(Map<String, Object> parts, String name, String text) {
    if (!text.isBlank()) {
      parts.put(name, MissingGlyphs.replacedIn(text));
    }
  }

  /** A new row of the table, of a kind and within a block that stays on one page. */
  static Map<String, Object> row(List<Map<String, Object>> rows, String kind, String block) {
    Map<String, Object> row = new HashMap<>();
    row.put(kind, Boolean.TRUE);
    row.put("block", block);
    rows.add(row);
    return row;
  }

  /** What the head of each further page says: whose document it is, and which. */
  static String runningHead(DocumentHead head, String title) {
    return head.to().name() + "  ·  " + title;
  }

  private static String contact(Letterhead from, LetterWording wording) {
    List<String> lines = new ArrayList<>();
    lines.add(String.join(", ", from.address()));
    lines.add(
        Stream.concat(
                from.phone().map(phone -> wording.say("telephone", phone)).stream(),
                from.email().stream())
            .collect(Collectors.joining("  ·  ")));
    from.registration().ifPresent(lines::add);
    return lines.stream().filter(line -> !line.isBlank()).collect(Collectors.joining("\n"));
  }

  private static String foot(Letterhead from, LetterWording wording) {
    return Stream.of(
            Optional.of(from.name()),
            from.registration(),
            from.taxNumber().map(number -> wording.say("taxNumber", number)))
        .flatMap(Optional::stream)
        .filter(part -> !part.isBlank())
        .map(LetterParts::unbroken)
        .collect(Collectors.joining("  ·  "));
  }

  private static String sender(Letterhead from) {
    return Stream.concat(Stream.of(from.name()), from.address().stream())
        .filter(part -> !part.isBlank())
        .map(LetterParts::unbroken)
        .collect(Collectors.joining("  ·  "));
  }

  /** A line breaks between two parts rather than within one, where that part is short enough. */
  private static String unbroken(String part) {
    return part.length() > LONGEST_UNBROKEN ? part : part.replace(' ', '\u00A0');
  }

  private static String address(Addressee to) {
    return Stream.concat(Stream.of(to.name()), to.address().stream())
        .filter(line -> !line.isBlank())
        .collect(Collectors.joining("\n"));
  }
}
