package clenchbook.matching.evidence;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.known.KnownOwner;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds the owners that a payer's name speaks for. Not thread-safe. */
public final class NameIndex {
  private static final int COMMON = 200;
  private static final int CUT_AT = 20;
  private static final int TELLING_LENGTH = 4;
  private static final int ALONE_IN_TEXT = 7;

  private record Name(String owner, List<String> words, Set<String> set) {}

  private final Map<String, List<Name>> byWord = new HashMap<>();
  private final OneSlip<String> slips = new OneSlip<>();
  private final Map<String, List<Name>> paidByWord = new HashMap<>();
  private final Map<String, Set<String>> before = new HashMap<>();
  private final Map<String, Set<String>> elsewhere = new HashMap<>();
  private final Map<String, Map<String, NameLevel>> byWho = new HashMap<>();

  /**
   * Makes one.
   *
   * @param owners every owner
   */
  public NameIndex(List<KnownOwner> owners) {
    for (KnownOwner owner : owners) {
      add(owner.name(), owner.name());
      owner.otherNames().forEach(name -> add(owner.name(), name));
    }
    byWord.keySet().stream()
        .filter(word -> word.length() > TELLING_LENGTH)
        .sorted()
        .forEach(word -> slips.add(word, word));
  }

  private void add(String owner, String written) {
    List<String> words = PayerName.words(written);
    Name name = new Name(owner, words, new LinkedHashSet<>(words));
    name.set().forEach(word -> byWord.computeIfAbsent(word, unused -> new ArrayList<>()).add(name));
  }

  /**
   * Remembers that a name paid for an owner, as Payments say.
   *
   * @param who the payer's name
   * @param owner the owner's name in the book
   */
  public void paidBefore(String who, String owner) {
    String key = PayerName.key(who);
    if (!key.isEmpty()) {
      before.computeIfAbsent(key, unused -> new LinkedHashSet<>()).add(owner);
      List<String> words = PayerName.words(who);
      Name name = new Name(owner, words, new LinkedHashSet<>(words));
      name.set()
          .forEach(word -> paidByWord.computeIfAbsent(word, unused -> new ArrayList<>()).add(name));
    }
  }

  /**
   * Remembers that the payer of an entry pays for an owner in these statements.
   *
   * @param entry the entry
   * @param owner the owner's name in the book
   */
  public void paysElsewhere(BankEntry entry, String owner) {
    for (String payer : payers(entry)) {
      elsewhere.computeIfAbsent(payer, unused -> new LinkedHashSet<>()).add(owner);
    }
  }

  /**
   * Whether the payer of an entry pays for somebody in these statements.
   *
   * @param entry the entry
   * @return true once remembered
   */
  public boolean isPayerElsewhere(BankEntry entry) {
    return payers(entry).stream().anyMatch(elsewhere::containsKey);
  }

  /** The account and the name, as keys that never coincide. */
  private static List<String> payers(BankEntry entry) {
    String key = entry.who().isEmpty() ? "" : PayerName.key(entry.who());
    List<String> payers = new ArrayList<>(2);
    if (!key.isEmpty()) {
      payers.add(key);
    }
    if (!entry.account().isEmpty()) {
      payers.add("@" + entry.account());
    }
    return payers;
  }

  /**
   * The owners that an entry's name, account or text speaks for.
   *
   * @param entry the entry
   * @return each at its best level
   */
  public Map<String, NameLevel> find(BankEntry entry) {
    Map<String, NameLevel> found = new LinkedHashMap<>();
    if (!entry.who().isEmpty()) {
      byWho
          .computeIfAbsent(entry.who(), this::ofWho)
          .forEach((owner, level) -> better(found, owner, level));
      for (String owner : before.getOrDefault(PayerName.key(entry.who()), Set.of())) {
        better(found, owner, NameLevel.BEFORE);
      }
    }
    if (!elsewhere.isEmpty()) {
      for (String payer : payers(entry)) {
        elsewhere
            .getOrDefault(payer, Set.of())
            .forEach(owner -> better(found, owner, NameLevel.ELSEWHERE));
      }
    }
    if (!entry.text().isEmpty()) {
      inText(entry.text(), found);
    }
    return found;
  }

  private static void better(Map<String, NameLevel> found, String owner, NameLevel level) {
    found.merge(owner, level, (one, other) -> one.compareTo(other) <= 0 ? one : other);
  }

  private Map<String, NameLevel> ofWho(String who) {
    List<String> words = PayerName.words(who);
    Set<String> set = new LinkedHashSet<>(words);
    Map<String, NameLevel> found = new LinkedHashMap<>();
    for (String word : set) {
      List<Name> names = byWord.getOrDefault(word, List.of());
      if (names.size() <= COMMON) {
        names.forEach(name -> level(name, words, set, who, found));
      }
      if (word.length() >= TELLING_LENGTH) {
        for (String near : slips.near(word)) {
          List<Name> others = byWord.getOrDefault(near, List.of());
          if (others.size() <= COMMON) {
            others.forEach(name -> slipped(name, set, word, near, found));
          }
        }
      }
    }
    return found;
  }

  private void level(
      Name name, List<String> words, Set<String> set, String who, Map<String, NameLevel> found) {
    if (name.set().equals(set)) {
      better(found, name.owner(), NameLevel.FULL);
    } else if (covers(name, words, set, who)) {
      better(found, name.owner(), NameLevel.COVERED);
    } else if (initials(name, words)) {
      better(found, name.owner(), NameLevel.INITIAL);
    } else if (hasOwnWord(name, set)) {
      better(found, name.owner(), NameLevel.ONE_WORD);
    }
  }

  private boolean covers(Name name, List<String> words, Set<String> set, String who) {
    boolean telling = name.set().size() > 1 || isOnly(name.words().get(0), name.owner());
    if (set.containsAll(name.set())) {
      return telling;
    }
    if (set.size() > 1 && name.set().containsAll(set)) {
      return true;
    }
    return who.length() >= CUT_AT && isCut(name, words);
  }

  /** Banks cut long names: all words stand there, the last one only by its beginning. */
  private static boolean isCut(Name name, List<String> words) {
    if (words.size() < 2 || words.size() > name.words().size()) {
      return false;
    }
    for (int place = 0; place < words.size() - 1; place++) {
      if (!name.words().get(place).equals(words.get(place))) {
        return false;
      }
    }
    int last = words.size() - 1;
    return name.words().get(last).startsWith(words.get(last));
  }

  /** One whole word, and each other word of the owner's by its first letter. */
  private static boolean initials(Name name, List<String> words) {
    if (name.words().size() < 2) {
      return false;
    }
    boolean whole = false;
    boolean initial = false;
    for (String word : name.words()) {
      if (words.contains(word) && word.length() > 2) {
        whole = true;
      } else if (words.contains(word.substring(0, 1))) {
        initial = true;
      } else {
        return false;
      }
    }
    return whole && initial;
  }

  private boolean hasOwnWord(Name name, Set<String> set) {
    for (String word : name.set()) {
      if (set.contains(word) && isOnly(word, name.owner())) {
        return true;
      }
    }
    return false;
  }

  /** Whether a word of some length is in the names of one owner alone. */
  private boolean isOnly(String word, String owner) {
    return word.length() >= TELLING_LENGTH
        && byWord.getOrDefault(word, List.of()).stream().allMatch(n -> n.owner().equals(owner));
  }

  private static void slipped(
      Name name, Set<String> set, String written, String meant, Map<String, NameLevel> found) {
    Set<String> mended = new HashSet<>(set);
    mended.remove(written);
    mended.add(meant);
    boolean telling = name.set().size() > 1 || meant.length() > ALONE_IN_TEXT;
    if (telling && mended.containsAll(name.set())) {
      better(found, name.owner(), NameLevel.SLIP);
    }
  }

  private void inText(String text, Map<String, NameLevel> found) {
    List<String> words = PayerName.words(text);
    Set<String> set = new LinkedHashSet<>(words);
    for (String word : set) {
      for (Name name : paidByWord.getOrDefault(word, List.of())) {
        if (name.set().size() > 1 && set.containsAll(name.set())) {
          better(found, name.owner(), NameLevel.BEFORE);
        }
      }
      List<Name> names = byWord.getOrDefault(word, List.of());
      if (names.isEmpty() || names.size() > COMMON || word.length() < TELLING_LENGTH) {
        continue;
      }
      for (Name name : names) {
        if (name.set().size() > 1 && set.containsAll(name.set())) {
          better(found, name.owner(), NameLevel.IN_TEXT);
        } else if (word.length() >= ALONE_IN_TEXT && isOnly(word, name.owner())) {
          better(found, name.owner(), NameLevel.ONE_WORD);
        }
      }
    }
  }
}
