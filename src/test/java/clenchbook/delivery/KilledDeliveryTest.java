package clenchbook.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.ChildClassPath;
import clenchbook.billing.mails.MailState;
import clenchbook.delivery.LoopbackSmtpServer.Act;
import clenchbook.delivery.LoopbackSmtpServer.Script;
import clenchbook.register.MailRegister;
import clenchbook.register.Register;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs that are killed (SIGKILL) at random moments and at the worst ones: no owner gets two mails,
 * none is forgotten, and what nobody can know is called unsure.
 */
class KilledDeliveryTest {
  private static final int OWNERS = 8;
  private static final int KILLS_A_MONTH = 4;
  private static final int KILLED = 128 + 9;
  private static final long SEED = 20261031L;

  @TempDir static Path keys;

  @TempDir Path folder;

  private final Random random = new Random(SEED);
  private volatile Killing killing = Killing.NEVER;
  private int kills;
  private int unsure;
  private int delivered;

  @BeforeAll
  static void make_a_certificate() {
    LoopbackCertificate.of("localhost", keys);
  }

  @Test
  void no_owner_gets_two_mails_and_none_is_forgotten_over_twenty_kills() throws Exception {
    killTimes(20);
  }

  @Test
  @Tag("demand")
  void no_owner_gets_two_mails_and_none_is_forgotten_over_three_hundred_kills() throws Exception {
    killTimes(300);
    assertTrue(unsure > 0, "the worst moment was never hit");
  }

  private void killTimes(int wanted) throws Exception {
    for (int month = 0; kills < wanted; month++) {
      oneMonth(folder.resolve("register" + month + ".db"), Math.min(KILLS_A_MONTH, wanted - kills));
    }
    System.out.printf(
        Locale.ROOT,
        "seed %d: %d kills, %d mails delivered, %d unsure%n",
        SEED,
        kills,
        delivered,
        unsure);
  }

  /** One month's mails, sent by runs that are killed, and at last by one that is not. */
  private void oneMonth(Path register, int killsAtMost) throws Exception {
    LoopbackCertificate certificate = LoopbackCertificate.of("localhost", keys);
    try (LoopbackSmtpServer server = LoopbackSmtpServer.startTls(certificate, this::act)) {
      int killed = 0;
      while (killed < killsAtMost && runAndKill(server, register)) {
        killed++;
      }
      kills += killed;
      killing = Killing.NEVER;
      assertEquals(0, run(server, register).waitFor(), () -> said(register));
      judge(server, register, killed);
    }
  }

  private void judge(LoopbackSmtpServer server, Path register, int killed) {
    List<MailRegister.Entry> entries;
    assertFalse(Files.exists(Path.of(register + "-wal")), "no side file remains");
    try (Register opened = Register.open(register);
        MailRegister judge = opened.mails("judge")) {
      entries = judge.entries();
    }
    assertEquals(OWNERS, entries.size(), "none is forgotten");
    int unsureHere = 0;
    for (QueuedMail mail : KilledSender.mails(OWNERS)) {
      long taken = server.takenFor(mail.mail().to().get(0).text());
      MailState state =
          entries.stream().filter(e -> e.id().equals(mail.id())).findFirst().orElseThrow().state();
      assertTrue(taken <= 1, () -> mail.id().line() + " got " + taken);
      if (state == MailState.UNSURE) {
        unsureHere++;
      } else {
        assertEquals(MailState.DELIVERED, state, mail.id().line());
        assertEquals(1, taken, mail.id().line());
        delivered++;
      }
    }
    assertTrue(unsureHere <= killed, "at most one mail is unsure for each kill");
    unsure += unsureHere;
  }

  /** Whether the run was killed; false where it came to its end first. */
  private boolean runAndKill(LoopbackSmtpServer server, Path register) throws Exception {
    Killing next = Killing.random(random);
    killing = next;
    Process process = run(server, register);
    next.aim(process);
    int exit = process.waitFor();
    assertTrue(exit == 0 || exit == KILLED, () -> "the run failed by itself: " + said(register));
    return exit == KILLED;
  }

  private static String said(Path register) {
    try {
      return Files.readString(Path.of(register + ".out"));
    } catch (IOException unreadable) {
      return unreadable.toString();
    }
  }

  private static Process run(LoopbackSmtpServer server, Path register) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return new ProcessBuilder(
            java,
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Xshare:auto",
            "-cp",
            ChildClassPath.text(),
            KilledSender.class.getName(),
            Integer.toString(server.port()),
            register.toString(),
            keys.toString(),
            Integer.toString(OWNERS))
        .redirectErrorStream(true)
        .redirectOutput(new File(register + ".out"))
        .start();
  }

  private Optional<Act> act(String step, int time, String line) {
    return killing.at(step);
  }

  /** When one run is killed. */
  private static final class Killing implements Script {
    private static final Killing NEVER = new Killing("", 0, 0, false, true);
    private static final List<String> STEPS =
        List.of("GREETING", "EHLO", "AUTH", "MAIL", "RCPT", "DATA", "DOT", "DOT", "DOT");

    private final String step;
    private final long delayMillis;
    private final boolean taken;
    private final boolean waitForDeath;
    private int countDown;
    private Optional<Process> target = Optional.empty();

    Killing(String step, int time, long delayMillis, boolean taken, boolean waitForDeath) {
      this.step = step;
      this.countDown = time;
      this.delayMillis = delayMillis;
      this.taken = taken;
      this.waitForDeath = waitForDeath;
    }

    /**
     * At a random step of a random mail: at once, before the answer goes back; or a few
     * milliseconds later, with the answer on its way.
     */
    static Killing random(Random random) {
      String step = STEPS.get(random.nextInt(STEPS.size()));
      boolean onceARun = List.of("GREETING", "EHLO", "AUTH").contains(step);
      int time = onceARun ? 1 : 1 + random.nextInt(3);
      return new Killing(
          step, time, random.nextInt(12), random.nextBoolean(), random.nextBoolean());
    }

    synchronized void aim(Process process) {
      target = Optional.of(process);
      notifyAll();
    }

    Optional<Act> at(String now) {
      return at(now, 0, "");
    }

    @Override
    public synchronized Optional<Act> at(String now, int time, String line) {
      if (!now.equals(step) || --countDown != 0) {
        return Optional.empty();
      }
      if (waitForDeath) {
        kill();
        return Optional.of(taken ? Act.takeAndCut() : Act.hangUp());
      }
      Thread later = new Thread(this::killLater);
      later.setDaemon(true);
      later.start();
      return Optional.empty();
    }

    private void killLater() {
      try {
        TimeUnit.MILLISECONDS.sleep(delayMillis);
      } catch (InterruptedException interrupted) {
        Thread.currentThread().interrupt();
      }
      kill();
    }

    private synchronized void kill() {
      try {
        while (target.isEmpty()) {
          wait();
        }
        target.get().destroyForcibly().waitFor();
      } catch (InterruptedException interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
