package clenchbook.commands.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StartedAsTest {
  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      delimiter = '|',
      value = {
        "- | - | target/clenchbook.jar | java -jar target/clenchbook.jar | java -jar"
            + " clenchbook.jar",
        "- | - | /my books/clenchbook.jar | java -jar '\"/my books/clenchbook.jar\"' |"
            + " java -jar clenchbook.jar",
        "clenchbook | - | /opt/clenchbook.jar | clenchbook | clenchbook",
        "./bin/clenchbook | - | /opt/clenchbook.jar | ./bin/clenchbook | clenchbook",
        "- | /opt/clenchbook/bin/clenchbook | x.jar | /opt/clenchbook/bin/clenchbook | clenchbook",
        "- | - | classes:lib/a.jar | clenchbook | clenchbook",
      })
  void the_person_is_told_what_they_typed(
      String launcher, String installed, String classPath, String typed, String plain) {
    StartedAs started =
        StartedAs.of(Optional.ofNullable(launcher), Optional.ofNullable(installed), classPath);
    assertEquals(typed.replace("'", ""), started.typed());
    assertEquals(plain, started.plain());
    assertEquals(
        started.typed() + " check \"my book.xlsx\"", started.line("check", "my book.xlsx"));
  }
}
