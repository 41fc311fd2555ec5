package clenchbook.print.pdf;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Headless Chromium, driven by the W3C WebDriver protocol over the JDK's own HTTP client. */
public final class Browser implements AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern PORT = Pattern.compile("on port (\\d+)");

  /** No window gets narrower; a phone's screen does. */
  private static final int NARROWEST_WINDOW = 500;

  private final HttpClient client = HttpClient.newHttpClient();
  private final Process driver;
  private final String address;

  private Browser(Process driver, String address) {
    this.driver = driver;
    this.address = address;
  }

  public static Browser open(int width, int height) throws IOException, InterruptedException {
    Process driver =
        new ProcessBuilder("chromedriver", "--port=0").redirectErrorStream(true).start();
    BufferedReader said =
        new BufferedReader(new InputStreamReader(driver.getInputStream(), StandardCharsets.UTF_8));
    String port = "";
    for (String line = said.readLine(); line != null && port.isEmpty(); ) {
      Matcher found = PORT.matcher(line);
      if (found.find() && !found.group(1).equals("0")) {
        port = found.group(1);
      } else {
        line = said.readLine();
      }
    }
    Map<String, Object> options = new HashMap<>();
    options.put(
        "args",
        List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--window-size=" + width + "," + height));
    if (width < NARROWEST_WINDOW) {
      options.put(
          "mobileEmulation",
          Map.of("deviceMetrics", Map.of("width", width, "height", height, "pixelRatio", 2)));
    }
    Map<String, Object> wishes =
        Map.of(
            "capabilities",
            Map.of(
                "alwaysMatch",
                Map.of(
                    "goog:chromeOptions",
                    options,
                    "goog:loggingPrefs",
                    Map.of("browser", "ALL", "performance", "ALL"))));
    Browser starting = new Browser(driver, "http://127.0.0.1:" + port + "/session");
    JsonNode session = starting.post("", wishes);
    return new Browser(driver, starting.address + "/" + session.path("sessionId").asText());
  }

  public void go(URI page) throws IOException, InterruptedException {
    post("/url", Map.of("url", page.toString()));
  }

  /** The screen as a PNG. */
  public byte[] picture() throws IOException, InterruptedException {
    String encoded =
        call(HttpRequest.newBuilder(URI.create(address + "/screenshot")).GET()).asText();
    return Base64.getDecoder().decode(encoded);
  }

  public String url() throws IOException, InterruptedException {
    return call(HttpRequest.newBuilder(URI.create(address + "/url")).GET()).asText();
  }

  /** Clicks as a person would: fails where the element can't be seen or lies under another. */
  public void click(String css) throws IOException, InterruptedException {
    JsonNode found = post("/element", Map.of("using", "css selector", "value", css));
    String id = found.elements().next().asText();
    post("/element/" + id + "/click", Map.of());
  }

  public JsonNode ask(String script) throws IOException, InterruptedException {
    return post("/execute/sync", Map.of("script", script, "args", List.of()));
  }

  /** What the browser complained of since it was last asked. */
  public JsonNode complaints() throws IOException, InterruptedException {
    return post("/se/log", Map.of("type", "browser"));
  }

  private JsonNode post(String path, Map<String, Object> body)
      throws IOException, InterruptedException {
    return call(
        HttpRequest.newBuilder(URI.create(address + path))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(JSON.writeValueAsString(body))));
  }

  private JsonNode call(HttpRequest.Builder request) throws IOException, InterruptedException {
    HttpResponse<String> answer =
        client.send(
            request.timeout(Duration.ofSeconds(60)).build(), HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() != 200) {
      throw new IOException(answer.body());
    }
    return JSON.readTree(answer.body()).path("value");
  }

  @Override
  public void close() throws IOException {
    try {
      call(HttpRequest.newBuilder(URI.create(address)).DELETE());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      driver.destroy();
    }
  }
}
