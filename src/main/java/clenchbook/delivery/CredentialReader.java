package clenchbook.delivery;

import clenchbook.texts.Message;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;

/**
 * Finds the password, which never stands in the workbook: in three environment variables, or in a
 * file outside the book that nobody else on the machine can read.
 *
 * <p>The file is a text of three lines, {@code host = …}, {@code user = …}, {@code password = …}.
 * Either way the password comes with its own host and user and is given out only for those.
 */
public final class CredentialReader {
  /** The environment variable with the host the password is for. */
  public static final String HOST = "CLENCHBOOK_SMTP_HOST";

  /** The environment variable with the user the password is for. */
  public static final String USER = "CLENCHBOOK_SMTP_USER";

  /** The environment variable with the password. */
  public static final String PASSWORD = "CLENCHBOOK_SMTP_PASSWORD";

  private static final long LARGEST_FILE = 4_096;

  private static final Set<PosixFilePermission> OTHERS =
      EnumSet.of(
          PosixFilePermission.GROUP_READ,
          PosixFilePermission.GROUP_WRITE,
          PosixFilePermission.OTHERS_READ,
          PosixFilePermission.OTHERS_WRITE);

  private final Map<String, String> environment;
  private final Path file;

  /**
   * Where to look.
   *
   * @param environment the process's variables
   * @param file the credential's file; it may be missing
   */
  public CredentialReader(Map<String, String> environment, Path file) {
    this.environment = Map.copyOf(environment);
    this.file = file;
  }

  /**
   * Where the file is by custom: {@code clenchbook/smtp.properties} in the folder the system keeps
   * settings in.
   *
   * @param environment the process's variables
   * @param home the user's own folder
   */
  public static Path customaryFile(Map<String, String> environment, Path home) {
    String settings =
        Optional.ofNullable(environment.get("XDG_CONFIG_HOME"))
            .or(() -> Optional.ofNullable(environment.get("APPDATA")))
            .filter(folder -> !folder.isBlank())
            .orElseGet(() -> home.resolve(".config").toString());
    return Path.of(settings).resolve("clenchbook").resolve("smtp.properties");
  }

  /**
   * The credential for the host and user that the book names.
   *
   * @throws CredentialFault where there is none, it is for another host or user, or its file can be
   *     read by others; the line names no password
   */
  public SmtpCredential read(String host, String user) throws CredentialFault {
    SmtpCredential found = fromEnvironment().isPresent() ? fromEnvironment().get() : fromFile();
    if (!found.isFor(host, user)) {
      throw new CredentialFault(
          Message.of("delivery.password.another", found.user(), found.host(), user, host));
    }
    return found;
  }

  private Optional<SmtpCredential> fromEnvironment() throws CredentialFault {
    Set<String> names = Set.of(HOST, USER, PASSWORD);
    if (names.stream().noneMatch(environment::containsKey)) {
      return Optional.empty();
    }
    return Optional.of(
        credential(
            environment.getOrDefault(HOST, ""),
            environment.getOrDefault(USER, ""),
            environment.getOrDefault(PASSWORD, ""),
            Message.of("delivery.password.environment", HOST, USER, PASSWORD)));
  }

  private SmtpCredential fromFile() throws CredentialFault {
    if (!Files.isRegularFile(file)) {
      throw new CredentialFault(
          Message.of("delivery.password.none", file.toString(), HOST, USER, PASSWORD));
    }
    try {
      refuseIfOpenToOthers();
      Properties lines = new Properties();
      lines.load(new StringReader(Files.readString(file, StandardCharsets.UTF_8)));
      return credential(
          lines.getProperty("host", ""),
          lines.getProperty("user", ""),
          lines.getProperty("password", ""),
          Message.of("delivery.password.lines", file.toString()));
    } catch (CharacterCodingException notUtf8) {
      throw new CredentialFault(Message.of("delivery.password.notUtf8", file.toString()));
    } catch (IOException | IllegalArgumentException unreadable) {
      throw new CredentialFault(Message.of("delivery.password.unread", file.toString()));
    }
  }

  private void refuseIfOpenToOthers() throws IOException, CredentialFault {
    if (Files.size(file) > LARGEST_FILE) {
      throw new CredentialFault(Message.of("delivery.password.noFile", file.toString()));
    }
    PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    if (view == null) {
      return;
    }
    if (view.readAttributes().permissions().stream().anyMatch(OTHERS::contains)) {
      throw new CredentialFault(Message.of("delivery.password.open", file.toString()));
    }
  }

  private static SmtpCredential credential(
      String host, String user, String password, Message otherwise) throws CredentialFault {
    try {
      return new SmtpCredential(host, user, password);
    } catch (IllegalArgumentException incomplete) {
      throw new CredentialFault(otherwise);
    }
  }
}
