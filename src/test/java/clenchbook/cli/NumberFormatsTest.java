package clenchbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The program on a Java with and without locale data. */
class NumberFormatsTest {
  /** All that the program is linked with but the module that this is about. */
  private static final List<String> WITHOUT_LOCALE_DATA =
      List.of("--limit-modules", "java.se,jdk.unsupported,jdk.charsets,jdk.zipfs");

  private record Outcome(int exit, String said) {}

  /** What such a Java would print, so that the check is about something. */
  public static final class GermanMoney {
    private GermanMoney() {}

    public static void main(String[] arguments) {
      System.out.print(NumberFormat.getCurrencyInstance(Locale.GERMANY).format(1234.5));
    }
  }

  private static Outcome run(List<String> settings, Class<?> main, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(settings);
    command.addAll(
        List.of("-Dfile.encoding=UTF-8", "-Dstdout.encoding=UTF-8", "-Dsun.stdout.encoding=UTF-8"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    command.addAll(List.of(arguments));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(2, TimeUnit.MINUTES), said);
    return new Outcome(process.exitValue(), said.strip());
  }

  @Test
  void a_whole_java_knows_all_five_languages() {
    assertEquals(Optional.empty(), NumberFormats.missing());
  }

  /** Source: Unicode CLDR, numbers of German: a dot between thousands, a comma before the cents. */
  @Test
  void german_money_is_printed_as_germans_write_it_only_with_locale_data() throws Exception {
    assertEquals("1.234,50 €", run(List.of(), GermanMoney.class).said().replace('\u00a0', ' '));
    assertEquals("€ 1,234.50", english(run(WITHOUT_LOCALE_DATA, GermanMoney.class).said()));
  }

  private static String english(String said) {
    return said.replace('\u00a0', ' ').replaceFirst("^€(?=\\d)", "€ ");
  }

  @Test
  void a_java_without_locale_data_starts_nothing_and_says_why_in_one_line() throws Exception {
    Outcome started = run(WITHOUT_LOCALE_DATA, Clenchbook.class, "--version");
    assertEquals(2, started.exit(), started.said());
    assertEquals(1, started.said().lines().count(), started.said());
    assertTrue(started.said().contains("jdk.localedata"), started.said());
    assertEquals(0, run(List.of(), Clenchbook.class, "--version").exit());
  }
}
