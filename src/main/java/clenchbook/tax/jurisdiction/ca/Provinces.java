package clenchbook.tax.jurisdiction.ca;

import clenchbook.book.Names;
import clenchbook.book.Place;
import clenchbook.book.Setting;
import clenchbook.jobs.Job;
import clenchbook.jobs.Jobs;
import clenchbook.tax.billed.BilledLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * In which province work was done: where the horse stood, by the address of its place, because a
 * service on goods is supplied where they are at the time (GST/HST Technical Information Bulletin
 * B-103). A place without a province counts where the business is.
 */
final class Provinces {
  private static final Pattern POSTCODE = Pattern.compile("\\b([A-Z])\\d[A-Z] ?\\d[A-Z]\\d\\b");
  private static final Map<String, String> BY_POSTCODE = byPostcode();
  private static final Map<String, String> BY_NAME = byName();

  private final Map<String, String> places = new TreeMap<>();
  private final Map<String, String> rows = new TreeMap<>();
  private final Optional<String> home;

  /** The provinces of a book's places and of the business. */
  Provinces(Jobs jobs) {
    for (Place place : jobs.index().book().places()) {
      of(place.address())
          .or(() -> of(place.name()))
          .ifPresent(province -> places.putIfAbsent(Names.key(place.name()), province));
    }
    for (Job job : jobs.all()) {
      rows.put(key(job.visit().source().sheet(), job.visit().source().row()), job.place());
    }
    this.home = home(jobs);
  }

  private static Optional<String> home(Jobs jobs) {
    for (Setting setting : List.of(Setting.POSTCODE, Setting.ADDRESS, Setting.CITY)) {
      Optional<String> found = of(jobs.index().book().settings().text(setting));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private static String key(String sheet, int row) {
    return sheet + "\n" + row;
  }

  /**
   * A province and how it was found.
   *
   * @param code two letters, as {@code ON}
   * @param measured whether the place's address says it, rather than the business's own
   */
  record Found(String code, boolean measured) {}

  /** The province of a billed line's work; empty where neither place nor business says. */
  Optional<Found> of(BilledLine line) {
    String place = rows.getOrDefault(key(line.sheet(), line.row()), "");
    return Optional.ofNullable(places.get(Names.key(place)))
        .map(code -> new Found(code, true))
        .or(() -> home.map(code -> new Found(code, false)));
  }

  /** The province that an address names, by postcode first, then by name or two letters. */
  static Optional<String> of(String address) {
    Matcher postcode = POSTCODE.matcher(address.toUpperCase(Locale.ROOT));
    if (postcode.find()) {
      String found = BY_POSTCODE.get(postcode.group(1));
      if (found != null) {
        return Optional.of(found);
      }
    }
    List<String> words = new ArrayList<>(List.of(address.split("[,;\\n]")));
    for (int i = words.size() - 1; i >= 0; i--) {
      String word = Names.key(words.get(i));
      for (Map.Entry<String, String> name : BY_NAME.entrySet()) {
        if (word.equals(name.getKey()) || word.endsWith(" " + name.getKey())) {
          return Optional.of(name.getValue());
        }
      }
    }
    return Optional.empty();
  }

  private static Map<String, String> byPostcode() {
    Map<String, String> letters = new TreeMap<>();
    letters.putAll(Map.of("A", "NL", "B", "NS", "C", "PE", "E", "NB"));
    letters.putAll(Map.of("G", "QC", "H", "QC", "J", "QC"));
    letters.putAll(Map.of("K", "ON", "L", "ON", "M", "ON", "N", "ON", "P", "ON"));
    letters.putAll(Map.of("R", "MB", "S", "SK", "T", "AB", "V", "BC", "X", "NT", "Y", "YT"));
    return letters;
  }

  private static Map<String, String> byName() {
    Map<String, String> names = new LinkedHashMap<>();
    put(names, "ON", "ontario", "on", "ont");
    put(names, "NS", "nova scotia", "nouvelle-écosse", "ns");
    put(names, "NB", "new brunswick", "nouveau-brunswick", "nb");
    put(names, "NL", "newfoundland and labrador", "newfoundland", "labrador", "nl");
    put(names, "NL", "terre-neuve-et-labrador");
    put(names, "PE", "prince edward island", "île-du-prince-édouard", "pei", "pe");
    put(names, "QC", "quebec", "québec", "qc");
    put(names, "MB", "manitoba", "mb");
    put(names, "SK", "saskatchewan", "sk");
    put(names, "AB", "alberta", "ab");
    put(names, "BC", "british columbia", "colombie-britannique", "bc");
    put(names, "NT", "northwest territories", "nt");
    put(names, "NU", "nunavut", "nu");
    put(names, "YT", "yukon", "yt");
    return names;
  }

  private static void put(Map<String, String> names, String code, String... words) {
    for (String word : words) {
      names.put(word, code);
    }
  }
}
