package clenchbook.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.billing.mails.MailId;
import clenchbook.billing.mails.MailState;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MailRegisterTest {
  private static final MailId ROSA = new MailId("Rosa", "2026-10", "2026-0007");

  @TempDir Path folder;
  private Connection connection;
  private MailRegister register;

  @BeforeEach
  void open() throws SQLException {
    connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("r.db"));
    register = new MailRegister(connection, "run 1");
  }

  @AfterEach
  void close() throws SQLException {
    connection.close();
  }

  @Test
  void an_unknown_mail_has_no_state() {
    assertEquals(Optional.empty(), register.find(ROSA));
  }

  @Test
  void the_steps_are_there_for_the_next_run() {
    register.intend(ROSA, false);
    register.handedOver(ROSA);
    register.refused(ROSA, "550 no");

    assertEquals(
        List.of(new MailRegister.Entry(ROSA, MailState.REFUSED, "550 no")),
        new MailRegister(connection, "run 2").entries());
  }

  @ParameterizedTest
  @EnumSource(MailState.class)
  void only_a_mail_that_surely_is_here_is_taken_without_being_asked_for(MailState state) {
    bring(state);
    MailRegister next = new MailRegister(connection, "run 2");

    boolean safe = state == MailState.INTENDED || state == MailState.REFUSED;
    assertEquals(safe, next.intend(ROSA, false));
    assertEquals(safe ? MailState.INTENDED : state, next.find(ROSA).orElseThrow());
    assertTrue(next.intend(ROSA, true));
    assertEquals(Optional.of(MailState.INTENDED), next.find(ROSA));
  }

  @Test
  void a_run_whose_mail_was_taken_cannot_hand_it_over() {
    register.intend(ROSA, false);
    new MailRegister(connection, "run 2").intend(ROSA, false);

    assertThrows(IllegalStateException.class, () -> register.handedOver(ROSA));
    assertEquals(Optional.of(MailState.INTENDED), register.find(ROSA));
  }

  @Test
  void nothing_is_handed_over_that_was_not_intended() {
    assertThrows(IllegalStateException.class, () -> register.handedOver(ROSA));
  }

  @Test
  void a_mail_left_behind_becomes_unsure_but_a_live_run_still_has_the_last_word() {
    register.intend(ROSA, false);
    register.handedOver(ROSA);
    new MailRegister(connection, "run 2").unsure(ROSA, "no answer on record");
    assertEquals(Optional.of(MailState.UNSURE), register.find(ROSA));

    register.delivered(ROSA);

    assertEquals(Optional.of(MailState.DELIVERED), register.find(ROSA));
  }

  @Test
  void steps_taken_together_are_all_there_or_none() {
    MailId ben = new MailId("Ben", "2026-10", "2026-0008");
    assertThrows(
        IllegalStateException.class,
        () ->
            register.together(
                () -> {
                  register.intend(ben, false);
                  throw new IllegalStateException("no");
                }));
    assertEquals(Optional.empty(), register.find(ben));

    register.together(() -> register.intend(ben, false));

    assertEquals(Optional.of(MailState.INTENDED), register.find(ben));
    assertFalse(register.entries().isEmpty());
  }

  @Test
  void a_second_run_beside_it_works_on_and_one_file_remains() throws SQLException {
    try (Connection second = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("r.db"));
        MailRegister other = new MailRegister(second, "run 2")) {
      other.intend(ROSA, false);
      register.close();
      assertEquals(Optional.of(MailState.INTENDED), register.find(ROSA));
    }
    register.close();

    assertFalse(Files.exists(folder.resolve("r.db-wal")));
    assertFalse(Files.exists(folder.resolve("r.db-shm")));
  }

  private void bring(MailState state) {
    register.intend(ROSA, false);
    if (state != MailState.INTENDED) {
      register.handedOver(ROSA);
    }
    if (state == MailState.DELIVERED) {
      register.delivered(ROSA);
    } else if (state == MailState.REFUSED) {
      register.refused(ROSA, "550 no");
    } else if (state == MailState.UNSURE) {
      register.unsure(ROSA, "no answer");
    }
  }
}
