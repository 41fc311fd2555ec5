package clenchbook.matching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import clenchbook.book.PaymentKind;
import clenchbook.matching.bank.BankEntry;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The three files hold every cent of a statement once. */
class TiedTest {
  private final HandMadeMonth month =
      new HandMadeMonth()
          .owner("Anna Ahorn")
          .invoice("2026-0001", "Anna Ahorn", 9, "120.00")
          .invoice("2026-0002", "Anna Ahorn", 10, "80.5")
          .entry("Anna Ahorn", "2026-0001 and 2026-0002", "200.50")
          .entry("Grandmother", "birthday", "33.00")
          .entry("Anna Ahorn", "returned item", "-200.50", BankEntry.Standing.RETURNED);

  @Test
  void a_sound_result_passes() {
    MatchResult result = month.matched();
    assertEquals(3, result.toAdd().size() + result.unmatched().size());
  }

  @Test
  void an_entry_that_is_missing_or_stands_twice_is_refused() {
    MatchResult sound = month.matched();
    List<BankEntry> entries = entries(sound);
    MatchResult missing =
        new MatchResult(
            sound.toAdd(), sound.unmatched().subList(1, sound.unmatched().size()), List.of());
    MatchResult twice = new MatchResult(sound.toAdd(), sound.unmatched(), sound.unmatched());
    assertThrows(IllegalStateException.class, () -> Tied.checked(entries, missing));
    assertThrows(IllegalStateException.class, () -> Tied.checked(entries, twice));
  }

  @Test
  void rows_that_do_not_add_to_their_entry_are_refused() {
    MatchResult sound = month.matched();
    Proposal first = sound.toAdd().get(0);
    List<PaymentRow> rows =
        List.of(new PaymentRow("Anna Ahorn", new BigDecimal("200.49"), "", PaymentKind.PAYMENT));
    List<Proposal> wrong = new java.util.ArrayList<>(sound.toAdd());
    wrong.set(0, new Proposal(first.entry(), rows, first.reference(), first.sure(), first.why()));
    assertThrows(
        IllegalStateException.class,
        () -> Tied.checked(entries(sound), new MatchResult(wrong, sound.unmatched(), List.of())));
  }

  private static List<BankEntry> entries(MatchResult result) {
    List<BankEntry> entries = new java.util.ArrayList<>();
    result.toAdd().forEach(proposal -> entries.add(proposal.entry()));
    result.unmatched().forEach(left -> entries.add(left.entry()));
    return entries;
  }
}
