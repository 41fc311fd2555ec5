package clenchbook.commands.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BrowserTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  private Browser browser(String system, Map<String, String> environment) {
    PrintStream to = new PrintStream(said, true, StandardCharsets.UTF_8);
    return new Browser(system, environment, new Terminal(to, to, false));
  }

  @Test
  void each_system_opens_a_page_as_a_double_click_does() {
    Path page = Path.of("/books/my year/index.html");
    assertEquals(
        List.of(List.of("rundll32", "url.dll,FileProtocolHandler", page.toString())),
        browser("Windows 11", Map.of()).commands(page));
    assertEquals(
        List.of(List.of("/usr/bin/open", page.toString())),
        browser("Mac OS X", Map.of()).commands(page));
    assertEquals(
        List.of("firefox", page.toString()),
        browser("Linux", Map.of("BROWSER", "firefox:lynx")).commands(page).get(0));
  }

  @Test
  void the_page_is_given_to_the_browser_of_the_environment() throws Exception {
    Path script = folder.resolve("browser");
    Path opened = folder.resolve("opened");
    Files.writeString(script, "#!/bin/sh\nprintf %s \"$1\" >'" + opened + "'\n");
    assertTrue(script.toFile().setExecutable(true));
    Path page = Files.createFile(folder.resolve("a page.html"));
    browser("Linux", Map.of("BROWSER", script.toString())).open(page);
    for (int tenths = 0; tenths < 100 && content(opened).isEmpty(); tenths++) {
      Thread.sleep(100);
    }
    assertEquals(page.toString(), content(opened));
  }

  private static String content(Path file) throws IOException {
    return Files.exists(file) ? Files.readString(file) : "";
  }

  @Test
  void without_a_browser_it_is_said_where_the_page_lies() {
    browser("Windows", Map.of()).open(folder.resolve("index.html"));
    assertTrue(
        said.toString(StandardCharsets.UTF_8).startsWith("Open it in your browser: "),
        said.toString(StandardCharsets.UTF_8));
  }
}
