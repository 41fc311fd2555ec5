package clenchbook.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;

import clenchbook.commands.mailing.SendRequest;
import clenchbook.commands.opening.RegisterChoice;
import clenchbook.commands.opening.Typing;
import clenchbook.delivery.SmtpServer.Protection;
import clenchbook.texts.InEnglish;
import java.nio.file.Path;
import java.time.Duration;
import java.time.YearMonth;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What follows a delivery; what follows the rest is seen in WhatNextTest. */
class AfterSendTest {
  private static String delivered(boolean letters, boolean gone) {
    Path book = Path.of("b.xlsx");
    SendRequest request =
        new SendRequest(
            book,
            YearMonth.of(2026, 10),
            Optional.empty(),
            RegisterChoice.USUAL,
            false,
            true,
            true,
            Set.of(),
            Protection.CHECKED,
            Duration.ZERO);
    Typing typing =
        new Typing(
            book,
            Optional.empty(),
            new RegisterChoice(Optional.empty(), false, true),
            Optional.empty());
    return InEnglish.said(
        new AfterSend(typing, request, true, true, letters, true, gone, false).inWords());
  }

  @Test
  void what_has_not_gone_is_tried_again() {
    assertEquals(
        "try what has not gone again, clenchbook send b.xlsx --month 2026-10 --deliver --same-book",
        delivered(false, false));
  }

  @Test
  void once_all_has_gone_letters_and_then_money_remain() {
    assertEquals("print what outbox/print-list.csv names", delivered(true, true));
    assertEquals(
        "when money comes in, clenchbook payments b.xlsx --statement FILE --same-book",
        delivered(false, true));
  }
}
