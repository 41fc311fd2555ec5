package clenchbook.matching;

import clenchbook.book.Payment;
import clenchbook.book.PaymentKind;
import clenchbook.book.SourceRow;
import clenchbook.matching.bank.BankEntry;
import clenchbook.matching.evidence.PayerName;
import clenchbook.matching.evidence.Segments;
import clenchbook.matching.known.KnownDocument;
import clenchbook.matching.known.KnownOwner;
import clenchbook.matching.known.Ledger;
import clenchbook.texts.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * A month of an invented farrier with open invoices, and what came through the bank, of which the
 * truth is known. The same seed gives the same month. All names are invented.
 */
final class GeneratedMonth {
  /** The farrier's own account, from the published example of an IBAN (ISO 13616, Germany). */
  static final String OWN_ACCOUNT = "DE89370400440532013000";

  static final LocalDate FIRST = LocalDate.of(2026, 11, 1);

  private static final String[] FIRST_NAMES = {
    "Anna", "Bastian", "Clara", "Doris", "Emil", "Fenna", "Gustave", "Hanna", "Ines", "Jörg",
    "Käthe", "Lucía", "Marta", "Nils", "Odile", "Pieter", "Renée", "Sören", "Tilda", "Ursel"
  };
  private static final String[] LAST_NAMES = {
    "Ahorn",
    "Birkmüller",
    "Castaño",
    "Dünenberg",
    "Eschweg",
    "Fouqueray",
    "Greenhollow",
    "Hövel",
    "Ibarlucea",
    "Jansdam",
    "Kleefeld",
    "Lindqvarn",
    "Møllegård",
    "Nußbaumer",
    "Oakridge",
    "Pfützner",
    "Quellmann",
    "Rietveld",
    "Saltmarsh",
    "Tännler",
    "Ulmenhof",
    "Vosskamp",
    "Winterbourn",
    "Yewdale",
    "Zürnbach"
  };
  private static final String[] STABLES = {"Stables", "Reitstall", "Écurie", "Cuadra", "Manege"};
  private static final String[] STRANGERS = {
    "Pat Merriweather",
    "T. Holgersson",
    "Brevans Trading",
    "Camille Prévoté",
    "Wim Oosterling",
    "Kaya Öztan",
    "Rolf Steinicke",
    "Dolores Arbizu"
  };

  /** One bank entry and what it truly is. */
  record Known(PaymentCase payment, BankEntry entry, List<PaymentRow> truth) {}

  private final Random random;
  private final List<KnownOwner> owners = new ArrayList<>();
  private final List<KnownDocument> documents = new ArrayList<>();
  private final List<Payment> payments = new ArrayList<>();
  private final List<Known> entries = new ArrayList<>();
  private final Map<String, List<KnownDocument>> open = new HashMap<>();
  private final Set<String> written = new HashSet<>();
  private int reference;

  GeneratedMonth(long seed) {
    random = new Random(seed * 7_919 + 17);
    people();
    invoices();
    balances();
    for (KnownOwner owner : List.copyOf(owners)) {
      pays(owner);
    }
    other();
    inOrder();
  }

  List<Known> entries() {
    return entries;
  }

  Ledger ledger() {
    return new Ledger("EUR", owners, documents, payments, Optional.empty());
  }

  // --- the book

  private void people() {
    Set<String> taken = new HashSet<>();
    int count = 25 + random.nextInt(20);
    while (owners.size() < count) {
      String last = pick(LAST_NAMES);
      String name =
          random.nextInt(5) == 0
              ? (random.nextBoolean() ? last + " " + pick(STABLES) : pick(STABLES) + " " + last)
              : pick(FIRST_NAMES) + " " + last;
      if (taken.add(PayerName.key(name))) {
        List<String> others =
            random.nextInt(5) == 0
                ? List.of("Dr. " + pick(FIRST_NAMES) + " " + last + " GmbH")
                : List.of();
        owners.add(new KnownOwner(name, others, BigDecimal.ZERO));
      }
    }
  }

  private void invoices() {
    int sequence = 1 + random.nextInt(150);
    for (int month = 8; month <= 10; month++) {
      LocalDate day = LocalDate.of(2026, month, 1).plusMonths(1).minusDays(1);
      for (KnownOwner owner : owners) {
        boolean unpaid = month == 10 || random.nextInt(month == 9 ? 5 : 12) == 0;
        BigDecimal gross = amount();
        String number = String.format("2026-%04d", sequence++);
        KnownDocument document =
            new KnownDocument(
                number, owner.name(), day, gross, unpaid ? gross : BigDecimal.ZERO.setScale(2));
        documents.add(document);
        if (unpaid) {
          open.computeIfAbsent(owner.name(), unused -> new ArrayList<>()).add(document);
        }
      }
    }
    for (int credit = 0; credit < 2; credit++) {
      documents.add(
          new KnownDocument(
              String.format("2026-%04d", sequence++),
              pick(owners).name(),
              LocalDate.of(2026, 10, 31),
              amount().negate(),
              BigDecimal.ZERO.setScale(2)));
    }
  }

  /** What each owes: the open invoices, and for some an older balance too. */
  private void balances() {
    owners.replaceAll(
        owner -> {
          BigDecimal owed =
              open.getOrDefault(owner.name(), List.of()).stream()
                  .map(KnownDocument::open)
                  .reduce(BigDecimal.ZERO, BigDecimal::add);
          BigDecimal older = random.nextInt(15) == 0 ? amount() : BigDecimal.ZERO;
          return new KnownOwner(owner.name(), owner.otherNames(), owed.add(older));
        });
  }

  /** Prices as they are: many owners share a few amounts, others have cents of their own. */
  private BigDecimal amount() {
    int horses = 1 + random.nextInt(4);
    int price = new int[] {45, 85, 95, 130, 140}[random.nextInt(5)];
    int cents = random.nextInt(3) == 0 ? random.nextInt(3_000) : 0;
    return BigDecimal.valueOf(horses * price * 100L + cents, 2);
  }

  // --- who pays how

  private void pays(KnownOwner owner) {
    List<KnownDocument> owed = open.getOrDefault(owner.name(), List.of());
    KnownDocument first = owed.get(owed.size() - 1);
    switch (random.nextInt(22)) {
      case 0, 1, 2, 3 -> number(owner, first, false);
      case 4 -> number(owner, first, true);
      case 5 -> checked(owner, first);
      case 6 -> slip(owner, first);
      case 7, 8, 9 -> byName(owner, owed);
      case 10 -> sums(owner, owed);
      case 11 -> part(owner, first);
      case 12 -> over(owner, first);
      case 13 -> paidBefore(owner, first);
      case 14 -> returned(owner, first);
      case 15 -> refund();
      case 16 -> amountAlone(owner, first);
      case 17 -> lastName(owner, first);
      case 18 -> partByName(owner, first);
      case 19 -> oldNumber(owner, first);
      case 20 -> twice(owner, first);
      default -> {
        // Has not paid.
      }
    }
  }

  private void number(KnownOwner owner, KnownDocument document, boolean stranger) {
    String who = stranger ? pick(STRANGERS) : spelt(owner.name());
    add(PaymentCase.NUMBER, who, sentence(document.number()), "", document.open(), paid(document));
  }

  private void checked(KnownOwner owner, KnownDocument document) {
    String bare = clenchbook.values.CreditorReference.of(document.number()).orElseThrow().compact();
    String text = random.nextBoolean() ? bare.replaceAll("(.{4})", "$1 ").strip() : bare;
    add(PaymentCase.REFERENCE, spelt(owner.name()), text, bare, document.open(), paid(document));
  }

  private void slip(KnownOwner owner, KnownDocument document) {
    String slipped = slipped(document.number());
    boolean others =
        documents.stream()
            .anyMatch(
                d -> Segments.of(d.number()).compact().equals(Segments.of(slipped).compact()));
    add(
        others ? PaymentCase.OTHERS_NUMBER : PaymentCase.SLIP,
        spelt(owner.name()),
        "Invoice " + slipped,
        "",
        document.open(),
        paid(document));
  }

  /** Mostly the latest letter is paid; sometimes an older one, where several are open. */
  private void byName(KnownOwner owner, List<KnownDocument> owed) {
    KnownDocument latest = owed.get(owed.size() - 1);
    boolean older = owed.size() > 1 && random.nextInt(4) == 0;
    KnownDocument document = older ? owed.get(0) : latest;
    long alike = owed.stream().filter(d -> d.open().compareTo(document.open()) == 0).count();
    boolean sums = !Sums.of(owed, document.open(), Set.of()).isEmpty();
    String text = pick("", "thank you", "Hufbeschlag Oktober", "ferrage du 12 octobre", "herraje");
    boolean perhapsPart = older && latest.open().compareTo(document.open()) > 0;
    PaymentCase single = perhapsPart ? PaymentCase.OLDER : PaymentCase.NAME;
    PaymentCase payment = alike > 1 || sums ? PaymentCase.TWO_ALIKE : single;
    add(payment, spelt(owner.name()), text, "", document.open(), paid(document));
  }

  private void sums(KnownOwner owner, List<KnownDocument> owed) {
    if (owed.size() < 2) {
      number(owner, owed.get(0), false);
      return;
    }
    BigDecimal sum =
        owed.stream().map(KnownDocument::open).reduce(BigDecimal.ZERO, BigDecimal::add);
    List<PaymentRow> rows = owed.stream().flatMap(d -> paid(d).stream()).toList();
    String numbers = String.join(" and ", owed.stream().map(KnownDocument::number).toList());
    boolean named = random.nextBoolean();
    add(
        named ? PaymentCase.SUM_OF_NUMBERS : PaymentCase.SUM_BY_NAME,
        spelt(owner.name()),
        named ? "invoices " + numbers : "all invoices so far",
        "",
        sum,
        rows);
  }

  private void part(KnownOwner owner, KnownDocument document) {
    BigDecimal part =
        document.open().multiply(new BigDecimal("0.37")).setScale(2, java.math.RoundingMode.DOWN);
    add(
        PaymentCase.PART,
        spelt(owner.name()),
        "1st part of " + document.number(),
        "",
        part,
        row(document, part));
  }

  private void over(KnownOwner owner, KnownDocument document) {
    BigDecimal more = document.open().add(BigDecimal.valueOf(1 + random.nextInt(20)));
    add(
        PaymentCase.OVER,
        spelt(owner.name()),
        sentence(document.number()),
        "",
        more,
        row(document, more));
  }

  private void paidBefore(KnownOwner owner, KnownDocument document) {
    String payer = "Q" + pick(FIRST_NAMES).toLowerCase() + "x " + pick(STRANGERS);
    SourceRow row = new SourceRow("Payments", 3, payments.size() + 2, Map.of());
    payments.add(
        new Payment(
            row,
            LocalDate.of(2026, 9, 14),
            owner.name(),
            amount().add(new BigDecimal("0.77")),
            "",
            PaymentKind.PAYMENT,
            "transfer",
            payer + "; B" + payments.size() + "77"));
    List<KnownDocument> owed = open.get(owner.name());
    long alike = owed.stream().filter(d -> d.open().compareTo(document.open()) == 0).count();
    boolean sums = !Sums.of(owed, document.open(), Set.of()).isEmpty();
    add(
        alike > 1 || sums ? PaymentCase.TWO_ALIKE : PaymentCase.PAID_BEFORE,
        payer,
        "",
        "",
        document.open(),
        paid(document));
  }

  private void returned(KnownOwner owner, KnownDocument document) {
    number(owner, document, false);
    Known first = entries.get(entries.size() - 1);
    BankEntry entry = first.entry();
    int later = Math.min(28, entry.date().getDayOfMonth() + 3);
    add(
        PaymentCase.RETURNED,
        entry.who(),
        "RETURNED ITEM " + document.number(),
        "",
        document.open().negate(),
        List.of(
            new PaymentRow(owner.name(), document.open(), document.number(), PaymentKind.REFUND)));
    Known back = entries.remove(entries.size() - 1);
    entries.add(
        new Known(
            back.payment(), dated(back.entry(), later, BankEntry.Standing.RETURNED), back.truth()));
  }

  private void refund() {
    KnownDocument credit = documents.get(documents.size() - 1 - random.nextInt(2));
    if (written.add(credit.number())) {
      BigDecimal size = credit.gross().negate();
      add(
          PaymentCase.REFUND,
          spelt(credit.owner()),
          "Credit note " + credit.number(),
          "",
          credit.gross(),
          List.of(new PaymentRow(credit.owner(), size, credit.number(), PaymentKind.REFUND)));
    }
  }

  private void amountAlone(KnownOwner owner, KnownDocument document) {
    add(
        PaymentCase.AMOUNT_ALONE,
        pick(STRANGERS),
        pick("", "horses"),
        "",
        document.open(),
        paid(document));
  }

  private void lastName(KnownOwner owner, KnownDocument document) {
    String[] words = owner.name().split(" ");
    String who = "Xaver " + words[words.length - 1];
    add(PaymentCase.LAST_NAME, who, "", "", document.open(), paid(document));
  }

  private void partByName(KnownOwner owner, KnownDocument document) {
    BigDecimal part =
        document.open().multiply(new BigDecimal("0.41")).setScale(2, java.math.RoundingMode.DOWN);
    add(PaymentCase.PART_BY_NAME, spelt(owner.name()), "", "", part, row(document, part));
  }

  private void oldNumber(KnownOwner owner, KnownDocument document) {
    KnownDocument old =
        documents.stream()
            .filter(d -> d.owner().equals(owner.name()) && !d.isOpen() && !d.creditNote())
            .findFirst()
            .orElse(document);
    PaymentCase payment = old == document ? PaymentCase.NUMBER : PaymentCase.OLD_NUMBER;
    add(payment, spelt(owner.name()), sentence(old.number()), "", document.open(), paid(document));
  }

  private void twice(KnownOwner owner, KnownDocument document) {
    number(owner, document, false);
    Known first = entries.get(entries.size() - 1);
    add(
        PaymentCase.TWICE,
        first.entry().who(),
        first.entry().text(),
        "",
        document.open(),
        List.of(new PaymentRow(owner.name(), document.open(), "", PaymentKind.PAYMENT)));
    Known again = entries.remove(entries.size() - 1);
    int later = Math.min(30, first.entry().date().getDayOfMonth() + 1 + random.nextInt(3));
    entries.add(
        new Known(
            again.payment(),
            dated(
                again.entry(),
                Math.max(later, first.entry().date().getDayOfMonth()),
                again.entry().standing()),
            again.truth()));
  }

  private void other() {
    for (int count = 4 + random.nextInt(12); count > 0; count--) {
      BigDecimal size = BigDecimal.valueOf(1_00 + random.nextInt(60_000), 2);
      switch (random.nextInt(6)) {
        case 0 ->
            add(PaymentCase.OTHER, "", "Kontoführung ACCOUNT FEE", "", size.negate(), List.of());
        case 1 ->
            add(
                PaymentCase.OTHER,
                "Huf & Eisen Handel",
                "order 2026" + random.nextInt(9_999),
                "",
                size.negate(),
                List.of());
        case 2 -> add(PaymentCase.OTHER, pick(STRANGERS), "birthday", "", amount(), List.of());
        case 3 ->
            add(
                PaymentCase.OTHER,
                pick(STRANGERS),
                "customer no 2026-" + (10_000 + random.nextInt(80_000)),
                "",
                size,
                List.of());
        case 4 -> add(PaymentCase.OTHER, "", "cash paid in at the counter", "", size, List.of());
        default ->
            add(
                PaymentCase.OTHER,
                pick(FIRST_NAMES) + " Unbekannt",
                "rent 2026-11",
                "",
                size,
                List.of());
      }
    }
  }

  // --- how it is written

  private String sentence(String number) {
    String bare = number.replace("-", "");
    return switch (random.nextInt(8)) {
      case 0 -> "Invoice " + number;
      case 1 -> "RE " + bare;
      case 2 -> "Rechnung Nr. " + number.replace('-', '/') + " vom 31.10.2026";
      case 3 -> "FACTURE N°" + number + " MERCI";
      case 4 -> "fra. " + number.replace('-', ' ') + " herraje";
      case 5 -> "factuurnr " + number + ", bedankt";
      case 6 -> number;
      default -> "horses October, " + number + " thank you";
    };
  }

  private String slipped(String number) {
    char[] digits = number.replace("-", "").toCharArray();
    int at = 4 + random.nextInt(4);
    switch (random.nextInt(3)) {
      case 0 -> digits[at] = (char) ('0' + (digits[at] - '0' + 1 + random.nextInt(9)) % 10);
      case 1 -> {
        int other = at == 7 ? 6 : at + 1;
        char kept = digits[at];
        digits[at] = digits[other];
        digits[other] = kept;
      }
      default -> {
        return number.substring(0, 5) + number.substring(6);
      }
    }
    String all = new String(digits);
    return all.substring(0, 4) + "-" + all.substring(4);
  }

  private String spelt(String name) {
    String[] words = name.split(" ");
    return switch (random.nextInt(6)) {
      case 0 -> name.toUpperCase(java.util.Locale.ROOT);
      case 1 -> name.replace("ü", "ue").replace("ö", "oe").replace("ä", "ae").replace("ß", "ss");
      case 2 -> words[words.length - 1] + ", " + words[0];
      case 3 -> "Mrs " + name;
      case 4 -> name.replace("ü", "u").replace("ö", "o").replace("ä", "a").replace("é", "e");
      default -> name;
    };
  }

  private void add(
      PaymentCase payment,
      String who,
      String text,
      String checked,
      BigDecimal amount,
      List<PaymentRow> truth) {
    reference++;
    BankEntry entry =
        new BankEntry(
            0,
            "",
            FIRST.plusDays(random.nextInt(28)),
            amount,
            "EUR",
            who,
            "",
            text,
            checked,
            "",
            "NTX" + (1_000 + reference),
            BankEntry.Standing.BOOKED,
            "",
            Message.NONE);
    entries.add(new Known(payment, entry, truth));
  }

  private static BankEntry dated(BankEntry entry, int day, BankEntry.Standing standing) {
    return new BankEntry(
        0,
        "",
        FIRST.withDayOfMonth(day),
        entry.amount(),
        "EUR",
        entry.who(),
        entry.account(),
        entry.text(),
        entry.reference(),
        entry.endToEnd(),
        entry.bankReference(),
        standing,
        "",
        Message.NONE);
  }

  /** By day, as banks list them; each gets its place as its label. */
  private void inOrder() {
    entries.sort(java.util.Comparator.comparing(known -> known.entry().date()));
    for (int at = 0; at < entries.size(); at++) {
      Known known = entries.get(at);
      BankEntry e = known.entry();
      entries.set(
          at,
          new Known(
              known.payment(),
              new BankEntry(
                  0,
                  Integer.toString(at + 1),
                  e.date(),
                  e.amount(),
                  "EUR",
                  e.who(),
                  e.account(),
                  e.text(),
                  e.reference(),
                  e.endToEnd(),
                  e.bankReference(),
                  e.standing(),
                  "",
                  Message.NONE),
              known.truth()));
    }
  }

  private static List<PaymentRow> paid(KnownDocument document) {
    return row(document, document.open());
  }

  private static List<PaymentRow> row(KnownDocument document, BigDecimal amount) {
    return List.of(
        new PaymentRow(document.owner(), amount, document.number(), PaymentKind.PAYMENT));
  }

  private String pick(String... some) {
    return some[random.nextInt(some.length)];
  }

  private <T> T pick(List<T> some) {
    return some.get(random.nextInt(some.size()));
  }
}
