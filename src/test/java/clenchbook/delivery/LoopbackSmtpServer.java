package clenchbook.delivery;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;

/**
 * A mail server for tests, on the loopback address, that does what it is told: refuse, fall silent,
 * or drop the line at any step of the conversation. It keeps each message it took.
 */
public final class LoopbackSmtpServer implements AutoCloseable {
  /** The login it takes. */
  public static final String USER = "office@alder.example";

  public static final String PASSWORD = "horse-shoe-nail-7";

  private final ServerSocket listening;
  private final Optional<SSLContext> tls;
  private final Script script;
  private final boolean tlsFromFirstByte;
  private final List<Taken> taken = new CopyOnWriteArrayList<>();
  private final List<String> heard = new CopyOnWriteArrayList<>();
  private final Map<String, Integer> times = new ConcurrentHashMap<>();

  /** A message it took. */
  public record Taken(String from, String to, byte[] bytes, boolean overTls) {}

  /** What to do at a step other than the usual. */
  public record Act(String reply, boolean cut, boolean take, Duration after) {
    public static Act say(String reply) {
      return new Act(reply, false, false, Duration.ZERO);
    }

    public static Act hangUp() {
      return new Act("", true, false, Duration.ZERO);
    }

    public static Act takeAndCut() {
      return new Act("", true, true, Duration.ZERO);
    }

    public static Act takeAndFallSilent(Duration silence) {
      return new Act("", true, true, silence);
    }

    public static Act sayAndCut(String reply) {
      return new Act(reply, true, false, Duration.ZERO);
    }
  }

  /**
   * Told each step (GREETING, EHLO, STARTTLS, AUTH, MAIL, RCPT, DATA, DOT) and how often it came.
   */
  @FunctionalInterface
  public interface Script {
    Script NONE = (step, time, line) -> Optional.empty();

    Optional<Act> at(String step, int time, String line);

    /** The act at that step when it comes for that time, from 1; 0 for every time. */
    static Script at(String step, int time, Act act) {
      return (now, count, line) ->
          now.equals(step) && (time == 0 || count == time) ? Optional.of(act) : Optional.empty();
    }
  }

  LoopbackSmtpServer(Optional<SSLContext> tls, boolean tlsFromFirstByte, Script script) {
    this.tls = tls;
    this.tlsFromFirstByte = tlsFromFirstByte;
    this.script = script;
    try {
      listening = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    } catch (IOException fault) {
      throw new IllegalStateException(fault);
    }
    start(this::accept);
  }

  public static LoopbackSmtpServer plain(Script script) {
    return new LoopbackSmtpServer(Optional.empty(), false, script);
  }

  public static LoopbackSmtpServer startTls(LoopbackCertificate certificate, Script script) {
    return new LoopbackSmtpServer(Optional.of(certificate.context()), false, script);
  }

  public int port() {
    return listening.getLocalPort();
  }

  public List<Taken> taken() {
    return taken;
  }

  /** Every command line it was told, in order. */
  List<String> heard() {
    return heard;
  }

  public long takenFor(String address) {
    return taken.stream().filter(mail -> mail.to().equals(address)).count();
  }

  public int timesOf(String step) {
    return times.getOrDefault(step, 0);
  }

  @Override
  public void close() {
    try {
      listening.close();
    } catch (IOException fault) {
      throw new IllegalStateException(fault);
    }
  }

  private static void start(Runnable work) {
    Thread thread = new Thread(work, "loopback-smtp");
    thread.setDaemon(true);
    thread.start();
  }

  private void accept() {
    while (!listening.isClosed()) {
      try {
        Socket socket = listening.accept();
        start(() -> serve(socket));
      } catch (IOException closed) {
        return;
      }
    }
  }

  private void serve(Socket socket) {
    try (socket) {
      socket.setTcpNoDelay(true);
      new Conversation(tlsFromFirstByte ? secured(socket) : socket).hold();
    } catch (IOException lineGone) {
      // The client left; what was taken stays taken.
    }
  }

  private Socket secured(Socket plain) throws IOException {
    SSLSocket secure =
        (SSLSocket)
            tls.orElseThrow()
                .getSocketFactory()
                .createSocket(plain, plain.getInetAddress().getHostName(), plain.getPort(), true);
    secure.setUseClientMode(false);
    secure.startHandshake();
    return secure;
  }

  private final class Conversation {
    private Socket socket;
    private InputStream in;
    private String from = "";
    private String to = "";

    Conversation(Socket socket) throws IOException {
      use(socket);
    }

    private void use(Socket line) throws IOException {
      socket = line;
      in = new BufferedInputStream(line.getInputStream());
    }

    void hold() throws IOException {
      if (!step("GREETING", "", "220 loopback ready")) {
        return;
      }
      String line = readLine();
      while (line != null) {
        heard.add(line);
        if (!obey(line)) {
          return;
        }
        line = readLine();
      }
    }

    private boolean obey(String line) throws IOException {
      String verb = line.split(" ", 2)[0].toUpperCase(Locale.ROOT);
      switch (verb) {
        case "EHLO":
        case "HELO":
          return step("EHLO", line, extensions());
        case "STARTTLS":
          boolean going = step("STARTTLS", line, "220 go ahead");
          if (going && tls.isPresent()) {
            use(secured(socket));
          }
          return going;
        case "AUTH":
          return step("AUTH", line, authAnswer(line));
        case "MAIL":
          from = path(line);
          return step("MAIL", line, "250 ok");
        case "RCPT":
          to = path(line);
          return step("RCPT", line, "250 ok");
        case "DATA":
          return data(line);
        case "QUIT":
          say("221 bye");
          return false;
        default:
          say("250 ok");
          return true;
      }
    }

    private String extensions() {
      StringBuilder lines = new StringBuilder("250-loopback\r\n");
      if (tls.isPresent() && !(socket instanceof SSLSocket)) {
        lines.append("250-STARTTLS\r\n");
      }
      return lines.append("250-AUTH PLAIN LOGIN\r\n250 SIZE 50000000").toString();
    }

    private String authAnswer(String line) {
      String[] words = line.split(" ");
      String given = words.length > 2 ? new String(Base64.getDecoder().decode(words[2])) : "";
      return given.equals("\0" + USER + "\0" + PASSWORD)
              || given.endsWith("\0" + USER + "\0" + PASSWORD)
          ? "235 welcome"
          : "535 no, " + given.replace('\0', ' ');
    }

    private boolean data(String line) throws IOException {
      if (!step("DATA", line, "354 go on")) {
        return false;
      }
      if (!lastReply.startsWith("354")) {
        return true;
      }
      Optional<byte[]> message = readMessage();
      if (message.isEmpty()) {
        return false;
      }
      Optional<Act> act = act("DOT", to);
      if (act.isEmpty() || act.get().take()) {
        taken.add(new Taken(from, to, message.get(), socket instanceof SSLSocket));
      }
      return act.isEmpty() ? sayAndGoOn("250 taken") : follow(act.get());
    }

    private String lastReply = "";

    private boolean step(String step, String line, String usual) throws IOException {
      Optional<Act> act = act(step, line);
      return act.isEmpty() ? sayAndGoOn(usual) : follow(act.get());
    }

    private Optional<Act> act(String step, String line) {
      int time = times.merge(step, 1, Integer::sum);
      return script.at(step, time, line);
    }

    private boolean sayAndGoOn(String reply) throws IOException {
      say(reply);
      return true;
    }

    private boolean follow(Act act) throws IOException {
      pause(act.after());
      if (!act.reply().isEmpty()) {
        say(act.reply());
      }
      return !act.cut();
    }

    private void say(String reply) throws IOException {
      lastReply = reply;
      socket.getOutputStream().write((reply + "\r\n").getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().flush();
    }

    private String readLine() throws IOException {
      ByteArrayOutputStream line = new ByteArrayOutputStream();
      int next = in.read();
      while (next >= 0 && next != '\n') {
        if (next != '\r') {
          line.write(next);
        }
        next = in.read();
      }
      return next < 0 ? null : line.toString(StandardCharsets.UTF_8);
    }

    /** The message without its dots; empty where the line ended before the single dot. */
    private Optional<byte[]> readMessage() throws IOException {
      List<String> lines = new ArrayList<>();
      String line = readLine();
      while (line != null && !line.equals(".")) {
        lines.add(line.startsWith(".") ? line.substring(1) : line);
        line = readLine();
      }
      return line == null
          ? Optional.empty()
          : Optional.of((String.join("\r\n", lines) + "\r\n").getBytes(StandardCharsets.UTF_8));
    }
  }

  private static String path(String line) {
    return line.substring(line.indexOf('<') + 1, line.indexOf('>'));
  }

  private static void pause(Duration duration) {
    try {
      Thread.sleep(duration.toMillis());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
