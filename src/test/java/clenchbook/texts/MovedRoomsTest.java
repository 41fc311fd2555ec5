package clenchbook.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Rooms whose sentences have all been moved into the texts keep none in their code. Which they are
 * stands in the English files, in a line {@code # moved: clenchbook.commands clenchbook.cli}; what
 * stays English in them, since files or other programs read it, in {@code english-that-stays}.
 */
class MovedRoomsTest {
  private static final String MOVED = "# moved: ";
  private static final Path STAYS = Path.of("src/test/resources/english-that-stays");

  /** The rooms; what is named by itself within another answers for itself. */
  static Stream<String> moved() {
    return TextFilesOfRooms.rooms().stream()
        .map(room -> TextFilesOfRooms.file(Texts.ENGLISH, room))
        .flatMap(file -> TextFilesOfRooms.read(file).lines())
        .filter(line -> line.startsWith(MOVED))
        .flatMap(line -> Stream.of(line.substring(MOVED.length()).trim().split(" ")));
  }

  @ParameterizedTest
  @MethodSource("moved")
  void a_room_that_was_moved_keeps_no_sentence_in_its_code(String room) {
    List<Path> code = TextFilesOfRooms.code().stream().filter(file -> in(room, file)).toList();
    assertFalse(code.isEmpty(), room);
    List<String> deeper = moved().filter(other -> other.startsWith(room + ".")).toList();
    List<String> pieces =
        EnglishPieces.of(
            code.stream()
                .filter(file -> deeper.stream().noneMatch(other -> in(other, file)))
                .toList());
    List<String> stay = new ArrayList<>(TextFilesOfRooms.lines(STAYS.resolve(room + ".txt")));
    List<String> unknown = new ArrayList<>(pieces);
    unknown.removeAll(stay);
    assertEquals(List.of(), unknown, "move them, or say in english-that-stays why they stay");
    stay.removeAll(pieces);
    assertEquals(List.of(), stay, "these stand in english-that-stays but in no code");
  }

  private static boolean in(String room, Path file) {
    return file.startsWith(TextFilesOfRooms.CODE.resolve(room.replace('.', '/')));
  }

  @Test
  void a_piece_of_a_sentence_is_known_and_a_fault_of_the_program_is_none() {
    String code =
        """
        /** A comment "that says nothing". */
        @Command(description = "Said by (the) command line.")
        String said = of(count + " rows left; " + "by-name");
        char quote = '"'; // "not this one"
        // A comment alone on its line: "says nothing, and hides nothing behind it".
        void fault() {
          throw new IllegalStateException("not for people");
        }
        String key = say("month.toSend", "Owner") + "x_y" + "and so on";
        """;
    assertEquals(List.of(" rows left; ", "and so on"), EnglishPieces.in(code));
  }
}
