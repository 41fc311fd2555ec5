package clenchbook.matching.evidence;

import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.known.KnownOwner;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Finds the owners that a payer's name speaks for. Not thread-safe. */
public final class NameIndex {
  private static final int COMMON = 200;
  private static final int TELLING_LENGTH = 4;
  private static final int ALONE_IN_TEXT = 7;

  private record Name(String owner, SpokenName spoken) {
    boolean several() {
      return spoken.set().size() > 1;
    }
  }

  /** The entry that showed for whom somebody pays, and whether others showed it too. */
  private record Taught(int statement, String label, boolean again) {
    static Taught by(BankEntry entry) {
      return new Taught(entry.statement(), entry.label(), false);
    }

    Taught repeated() {
      return new Taught(statement, label, true);
    }

    /** Nobody is their own witness. */
    boolean holdsFor(BankEntry entry) {
      return again || statement != entry.statement() || !label.equals(entry.label());
    }
  }

  /** What a payer's name says: its key, and the owners it speaks for. */
  private record Payer(String key, Map<String, NameLevel> levels) {}

  private final Map<String, List<Name>> byWord = new HashMap<>();
  private final OneSlip<String> slips = new OneSlip<>();
  private final Map<String, List<Name>> paidByWord = new HashMap<>();
  private final Map<String, Set<String>> before = new HashMap<>();
  private final Map<String, Map<String, Taught>> elsewhere = new HashMap<>();
  private final Map<String, Payer> byWho = new HashMap<>();

  /** The owner who alone has a word; nobody where several do. */
  private final Map<String, String> ownerOf = new HashMap<>();

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
    Name name = new Name(owner, SpokenName.of(written));
    for (String word : name.spoken().set()) {
      byWord.computeIfAbsent(word, unused -> new ArrayList<>()).add(name);
      ownerOf.merge(word, owner, (one, other) -> one.equals(other) ? one : "");
    }
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
      Name name = new Name(owner, SpokenName.of(who));
      name.spoken()
          .set()
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
      elsewhere
          .computeIfAbsent(payer, unused -> new LinkedHashMap<>())
          .merge(owner, Taught.by(entry), (one, other) -> one.repeated());
    }
  }

  /**
   * Whether the payer of an entry pays for somebody in these statements.
   *
   * @param entry the entry
   * @return true once remembered
   */
  public boolean isPayerElsewhere(BankEntry entry) {
    return !elsewhere.isEmpty() && payers(entry).stream().anyMatch(elsewhere::containsKey);
  }

  private Payer payer(String who) {
    return byWho.computeIfAbsent(who, name -> new Payer(PayerName.key(name), ofWho(name)));
  }

  /** The account and the name, as keys that never coincide. */
  private List<String> payers(BankEntry entry) {
    String key = entry.who().isEmpty() ? "" : payer(entry.who()).key();
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
      Payer payer = payer(entry.who());
      payer.levels().forEach((owner, level) -> better(found, owner, level));
      for (String owner : before.getOrDefault(payer.key(), Set.of())) {
        better(found, owner, NameLevel.BEFORE);
      }
    }
    if (!elsewhere.isEmpty()) {
      for (String payer : payers(entry)) {
        elsewhere
            .getOrDefault(payer, Map.of())
            .forEach(
                (owner, taught) -> {
                  if (taught.holdsFor(entry)) {
                    better(found, owner, NameLevel.ELSEWHERE);
                  }
                });
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
    SpokenName payer = SpokenName.of(who);
    boolean hasInitial = payer.hasInitial();
    boolean hasOwnWord = payer.set().stream().anyMatch(this::isOfOne);
    Map<String, NameLevel> found = new LinkedHashMap<>();
    for (String word : payer.set()) {
      for (Name name : few(byWord.get(word))) {
        if (isWhole(name, payer)) {
          better(found, name.owner(), NameLevel.FULL);
        } else if (covers(name, payer)) {
          better(found, name.owner(), NameLevel.COVERED);
        } else if (hasInitial && payer.abbreviates(name.spoken())) {
          better(found, name.owner(), NameLevel.INITIAL);
        } else if (hasOwnWord && hasOwnWord(name, payer)) {
          better(found, name.owner(), NameLevel.ONE_WORD);
        }
      }
      if (word.length() >= TELLING_LENGTH) {
        slips.near(word).forEach(near -> slipped(payer, word, near, found));
      }
    }
    return found;
  }

  /** The names with a word, unless they are so many that the word tells nothing. */
  private static List<Name> few(@Nullable List<Name> names) {
    return names == null || names.size() > COMMON ? List.of() : names;
  }

  private static boolean isWhole(Name name, SpokenName payer) {
    return payer.set().size() == name.spoken().set().size() && payer.holds(name.spoken());
  }

  private boolean covers(Name name, SpokenName payer) {
    if (payer.holds(name.spoken())) {
      return name.several() || isOnly(name.spoken().words().get(0), name.owner());
    }
    boolean within = payer.set().size() > 1 && name.spoken().holds(payer);
    return within || payer.isCutFrom(name.spoken());
  }

  private boolean hasOwnWord(Name name, SpokenName payer) {
    for (String word : name.spoken().set()) {
      if (payer.set().contains(word) && isOnly(word, name.owner())) {
        return true;
      }
    }
    return false;
  }

  /** Whether a word of some length is in the names of one owner alone. */
  private boolean isOnly(String word, String owner) {
    return word.length() >= TELLING_LENGTH && owner.equals(ownerOf.get(word));
  }

  private boolean isOfOne(String word) {
    return word.length() >= TELLING_LENGTH && !ownerOf.getOrDefault(word, "").isEmpty();
  }

  /** Names of which all words stand there once the one with the slip is corrected. */
  private void slipped(SpokenName payer, String slip, String meant, Map<String, NameLevel> found) {
    for (Name name : few(byWord.get(meant))) {
      boolean telling = name.several() || meant.length() > ALONE_IN_TEXT;
      if (telling && payer.holds(name.spoken(), slip, meant)) {
        better(found, name.owner(), NameLevel.SLIP);
      }
    }
  }

  private void inText(String written, Map<String, NameLevel> found) {
    SpokenName text = SpokenName.of(written);
    for (String word : text.set()) {
      for (Name name : paidByWord.getOrDefault(word, List.of())) {
        if (name.several() && text.holds(name.spoken())) {
          better(found, name.owner(), NameLevel.BEFORE);
        }
      }
      if (word.length() < TELLING_LENGTH) {
        continue;
      }
      for (Name name : few(byWord.get(word))) {
        if (name.several() && text.holds(name.spoken())) {
          better(found, name.owner(), NameLevel.IN_TEXT);
        } else if (word.length() >= ALONE_IN_TEXT && isOnly(word, name.owner())) {
          better(found, name.owner(), NameLevel.ONE_WORD);
        }
      }
    }
  }
}
