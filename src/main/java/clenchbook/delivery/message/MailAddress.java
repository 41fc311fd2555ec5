package clenchbook.delivery.message;

import java.net.IDN;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One mail address, checked: {@code anna@example.org}.
 *
 * <p>The part before the @ is a dot-atom (RFC 5322, section 3.2.3), in which letters outside ASCII
 * are allowed (RFC 6532); the part after it is a host name of at least two labels, kept in the form
 * the domain name system knows (RFC 5891). Quoted local parts, comments, bare host names and
 * address literals are not taken: what a farrier's customer has is none of them, and each is a way
 * to smuggle something.
 *
 * @param localPart the part before the @, at most 64 bytes (RFC 5321, section 4.5.3.1.1)
 * @param domain the part after it, in ASCII
 */
public record MailAddress(String localPart, String domain) {
  /** RFC 5321, section 4.5.3.1.3: a path of 256 bytes with its two angle brackets. */
  private static final int LONGEST = 254;

  private static final int LONGEST_LOCAL_PART = 64;
  private static final int LONGEST_LABEL = 63;

  /** The most addresses an owner may have; more look like a mistake in the sheet. */
  private static final int MOST = 5;

  private static final Pattern DOT_ATOM =
      Pattern.compile(
          "[\\p{L}\\p{M}\\p{N}!#$%&'*+/=?^_`{|}~-]+(\\.[\\p{L}\\p{M}\\p{N}!#$%&'*+/=?^_`{|}~-]+)*");

  private static final Pattern LABEL = Pattern.compile("[A-Za-z0-9]([A-Za-z0-9-]*[A-Za-z0-9])?");

  /**
   * @throws IllegalArgumentException where the parts are no address; {@link #parse} asks instead
   */
  public MailAddress {
    if (!isLocalPart(localPart) || !isDomain(domain) || bytes(localPart + '@' + domain) > LONGEST) {
      throw new IllegalArgumentException("no mail address");
    }
  }

  /**
   * Reads an address as it stands in a cell; a leading {@code mailto:} and blanks around are
   * dropped, as spreadsheets add them.
   *
   * @param text the cell's text
   * @return the address, or empty where the text is none
   */
  public static Optional<MailAddress> parse(String text) {
    String bare = text.strip();
    if (bare.regionMatches(true, 0, "mailto:", 0, 7)) {
      bare = bare.substring(7);
    }
    int at = bare.lastIndexOf('@');
    if (at < 1) {
      return Optional.empty();
    }
    String local = bare.substring(0, at);
    return ascii(bare.substring(at + 1))
        .filter(name -> isLocalPart(local) && isDomain(name))
        .filter(name -> bytes(local + '@' + name) <= LONGEST)
        .map(name -> new MailAddress(local, name));
  }

  /** The address as a mail program shows it. */
  public String text() {
    return localPart + '@' + domain;
  }

  /** Whether only a server that speaks SMTPUTF8 (RFC 6531) can carry this address. */
  public boolean needsUtf8() {
    return localPart.chars().anyMatch(letter -> letter > 127);
  }

  /**
   * Reads a cell that may hold several addresses, separated by semicolons, commas or line breaks,
   * as when a couple shares a horse.
   *
   * @param cell the cell's text
   * @return all of them, once each; empty where there is none, where one of them is no address, or
   *     where there are more than {@value #MOST}
   */
  public static List<MailAddress> parseAll(String cell) {
    List<Optional<MailAddress>> read =
        Stream.of(cell.split("[;,\\r\\n]"))
            .filter(part -> !part.isBlank())
            .map(MailAddress::parse)
            .distinct()
            .toList();
    boolean usable = read.size() <= MOST && read.stream().allMatch(Optional::isPresent);
    return usable ? read.stream().flatMap(Optional::stream).toList() : List.of();
  }

  private static Optional<String> ascii(String domain) {
    try {
      return Optional.of(IDN.toASCII(domain, IDN.USE_STD3_ASCII_RULES));
    } catch (IllegalArgumentException notADomain) {
      return Optional.empty();
    }
  }

  private static boolean isLocalPart(String text) {
    return bytes(text) <= LONGEST_LOCAL_PART
        && HeaderText.isSafe(text)
        && DOT_ATOM.matcher(text).matches();
  }

  private static boolean isDomain(String text) {
    String[] labels = text.split("\\.", -1);
    if (labels.length < 2 || labels[labels.length - 1].chars().allMatch(Character::isDigit)) {
      return false;
    }
    for (String label : labels) {
      if (label.length() > LONGEST_LABEL || !LABEL.matcher(label).matches()) {
        return false;
      }
    }
    return true;
  }

  private static int bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }
}
