package clenchbook.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import clenchbook.texts.InEnglish;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CredentialReaderTest {
  private static final String SECRET = "horse-shoe-nail-7";

  @TempDir Path folder;

  @Test
  void the_password_is_given_for_its_own_host_and_user() throws Exception {
    CredentialReader reader = reader("rw-------", "Mail.Example", "rosa");

    assertEquals(SECRET, reader.read("mail.example", "rosa").password());
  }

  @ParameterizedTest
  @CsvSource({"mail.evil.example, rosa", "mail.example, eve", "mail.example.evil.example, rosa"})
  void the_password_is_given_for_no_other(String host, String user) throws Exception {
    CredentialReader reader = reader("rw-------", "mail.example", "rosa");

    CredentialFault fault = assertThrows(CredentialFault.class, () -> reader.read(host, user));

    String said = InEnglish.said(fault.message());
    assertTrue(said.startsWith("the password is kept for rosa at mail.example, "), said);
    assertTrue(said.contains("it was not given"), said);
    assertFalse(fault.toString().contains(SECRET) || said.contains(SECRET));
  }

  @ParameterizedTest
  @ValueSource(strings = {"rw-r-----", "rw----r--", "rw-rw-rw-"})
  void a_file_that_others_can_read_is_not_used(String permissions) throws Exception {
    CredentialReader reader = reader(permissions, "mail.example", "rosa");

    CredentialFault fault =
        assertThrows(CredentialFault.class, () -> reader.read("mail.example", "rosa"));

    String said = InEnglish.said(fault.message());
    assertTrue(said.contains("can be read by others"), said);
  }

  @Test
  void the_environment_comes_before_the_file_and_must_be_whole() throws Exception {
    Path file = folder.resolve("none");
    Map<String, String> whole =
        Map.of(
            CredentialReader.HOST, "mail.example",
            CredentialReader.USER, "rosa",
            CredentialReader.PASSWORD, SECRET);
    assertEquals(SECRET, new CredentialReader(whole, file).read("mail.example", "rosa").password());

    Map<String, String> part = Map.of(CredentialReader.PASSWORD, SECRET);
    assertThrows(
        CredentialFault.class, () -> new CredentialReader(part, file).read("mail.example", "rosa"));
  }

  @Test
  void a_missing_file_is_said_with_what_to_do() {
    CredentialReader reader = new CredentialReader(Map.of(), folder.resolve("none"));

    CredentialFault fault =
        assertThrows(CredentialFault.class, () -> reader.read("mail.example", "rosa"));

    String said = InEnglish.said(fault.message());
    assertTrue(said.startsWith("no password: write host"), said);
  }

  @Test
  void the_file_lies_where_the_system_keeps_settings() {
    Path home = Path.of("/home/rosa");

    assertEquals(
        home.resolve(".config/clenchbook/smtp.properties"),
        CredentialReader.customaryFile(Map.of(), home));
    assertEquals(
        Path.of("/etc/rosa/clenchbook/smtp.properties"),
        CredentialReader.customaryFile(Map.of("XDG_CONFIG_HOME", "/etc/rosa"), home));
  }

  private CredentialReader reader(String permissions, String host, String user) throws IOException {
    Path file = folder.resolve("smtp.properties");
    Files.writeString(
        file, "host = " + host + "\nuser = " + user + "\npassword = " + SECRET + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
    return new CredentialReader(Map.of(), file);
  }
}
