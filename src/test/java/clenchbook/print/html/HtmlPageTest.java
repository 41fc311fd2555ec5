package clenchbook.print.html;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.print.pdf.Browser;
import clenchbook.print.pdf.SamplePage;
import clenchbook.reports.blocks.MonthPage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HtmlPageTest {
  @TempDir Path folder = Path.of("");

  private Path write(MonthPage page) throws IOException {
    Path file = folder.resolve("index.html");
    Files.write(file, HtmlPage.of(page, "1.0.0"));
    return file;
  }

  private static String textOf(MonthPage page) {
    return new String(HtmlPage.of(page, "1.0.0"), StandardCharsets.UTF_8);
  }

  @Test
  void the_same_page_gives_the_same_bytes_in_another_locale() {
    byte[] once = HtmlPage.of(SamplePage.full(), "1.0.0");
    Locale locale = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertArrayEquals(once, HtmlPage.of(SamplePage.full(), "1.0.0"));
    } finally {
      Locale.setDefault(locale);
    }
  }

  @Test
  void the_validator_of_the_w3c_finds_nothing_wrong() throws Exception {
    Path full = write(SamplePage.full());
    Path empty = folder.resolve("empty.html");
    Files.write(empty, HtmlPage.of(SamplePage.empty(), "1.0.0"));
    File validator = new File("target/html-validator");
    assertTrue(validator.isDirectory(), "the build lays the validator there before the tests");
    Process check =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                validator.getPath() + File.separator + "*",
                "nu.validator.client.SimpleCommandLineValidator",
                "--no-langdetect",
                full.toString(),
                empty.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(check.waitFor(60, TimeUnit.SECONDS));
    assertEquals(0, check.exitValue(), said);
    assertFalse(said.contains("error:"), said);
  }

  @Test
  void the_page_asks_for_nothing_from_outside_and_runs_no_script() {
    String page = textOf(SamplePage.full());
    assertFalse(page.contains("<script"), "script");
    assertFalse(Pattern.compile("(src|href)=\"(?!#|\\./)").matcher(page).find(), "outside");
    assertFalse(page.contains("url(http") || page.contains("@import"), "style from outside");
    assertFalse(Pattern.compile("\\son\\w+=").matcher(page).find(), "handler");
    assertTrue(page.contains("default-src 'none'"));
  }

  @Test
  void names_from_the_book_stay_text() {
    String page = textOf(SamplePage.full());
    assertTrue(page.contains("Mr &lt;Ash&gt; &amp; &quot;Sons&quot; is unknown"));
    assertTrue(
        page.contains("href=\"./invoices/2026-0041%20Ashgrove%20%231%20%26%20%C5%BBubr%3F.pdf\""));
  }

  @Test
  void what_html_forbids_becomes_a_mark_that_is_seen() {
    assertEquals("a\uFFFDb\uFFFD&#39;", Html.escaped("a\u0000b\uD800'"));
  }

  /** WCAG 2.1, 1.4.3 and the definition of relative luminance: at least 4.5 to 1 for text. */
  @ParameterizedTest
  @CsvSource({"ink,paper", "quiet,paper", "rust,paper", "ink,sand", "quiet,sand", "rust,sand"})
  void text_stands_out_from_its_ground(String text, String ground) {
    String page = textOf(SamplePage.empty());
    double ratio = contrast(colour(page, text), colour(page, ground));
    assertTrue(ratio >= 4.5, text + " on " + ground + ": " + ratio);
  }

  @Test
  void the_contrast_formula_gives_the_published_ends_of_its_scale() {
    assertEquals(21.0, contrast(0x000000, 0xFFFFFF), 1e-9);
    assertEquals(1.0, contrast(0x8A3B12, 0x8A3B12), 1e-9);
    assertEquals(4.54, contrast(0x767676, 0xFFFFFF), 0.005);
  }

  @ParameterizedTest
  @CsvSource({"ink,paper", "quiet,paper", "rust,paper", "ink,sand", "quiet,sand", "rust,sand"})
  void so_it_does_in_the_dark(String text, String ground) {
    String page = textOf(SamplePage.empty());
    String dark = page.substring(page.indexOf("prefers-color-scheme: dark"));
    double ratio = contrast(colour(dark, text), colour(dark, ground));
    assertTrue(ratio >= 4.5, text + " on " + ground + ": " + ratio);
  }

  @Test
  void pictures_keep_their_white_ground_in_the_dark_since_their_letters_are_dark() {
    String page = textOf(SamplePage.empty());
    String dark = page.substring(page.indexOf("prefers-color-scheme: dark"));
    assertTrue(dark.contains("svg { background: #ffffff;"), dark);
  }

  private static int colour(String page, String name) {
    Matcher found = Pattern.compile("--" + name + ": #([0-9a-f]{6})").matcher(page);
    assertTrue(found.find(), name);
    return Integer.parseInt(found.group(1), 16);
  }

  private static double contrast(int one, int other) {
    double a = luminance(one) + 0.05;
    double b = luminance(other) + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16 & 0xFF)
        + 0.7152 * linear(rgb >> 8 & 0xFF)
        + 0.0722 * linear(rgb & 0xFF);
  }

  private static double linear(int channel) {
    double part = channel / 255.0;
    return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }

  @ParameterizedTest
  @CsvSource({"1200,900", "390,844"})
  void a_browser_clicks_through_every_part_and_every_file(int width, int height) throws Exception {
    Path page = write(SamplePage.full());
    Files.createDirectories(folder.resolve("invoices"));
    Files.writeString(folder.resolve("invoices/2026-0041 Ashgrove #1 & Żubr?.pdf"), "x");
    Files.writeString(folder.resolve("invoices/2026-0042 Bell.pdf"), "x");
    Files.writeString(folder.resolve("margins.pdf"), "x");
    Files.writeString(folder.resolve("problems.csv"), "x");
    try (Browser browser = Browser.open(width, height)) {
      browser.go(page.toUri());
      assertEquals(0, browser.complaints().size());
      int parts = browser.ask("return document.querySelectorAll('nav a').length").asInt();
      assertEquals(5, parts);
      for (int i = 1; i <= parts; i++) {
        browser.click("nav li:nth-child(" + i + ") a");
        assertTrue(
            browser
                .ask(
                    "let r = document.querySelector(location.hash).getBoundingClientRect();"
                        + "return r.top < innerHeight && r.bottom > 0")
                .asBoolean(),
            browser.url());
        browser.ask("scrollTo(0, 0)");
      }
      assertTrue(
          browser.ask("return document.documentElement.scrollWidth <= innerWidth").asBoolean(),
          "the page must not be wider than the screen");
      String missing =
          browser
              .ask(
                  "return [...document.querySelectorAll('a[href^=\"./\"]')]"
                      + ".map(a => decodeURIComponent(a.pathname)).join('\\n')")
              .asText();
      for (String linked : missing.split("\n")) {
        boolean comparisons = linked.endsWith("comparisons.pdf");
        assertEquals(!comparisons, Files.exists(Path.of(linked)), linked);
      }
      browser.click(".files a");
      assertTrue(browser.url().endsWith("Ashgrove%20%231%20%26%20%C5%BBubr%3F.pdf"), browser.url());
    }
  }
}
