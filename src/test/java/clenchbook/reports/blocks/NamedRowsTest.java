package clenchbook.reports.blocks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class NamedRowsTest {

  @Test
  void a_cell_stands_under_its_name_and_what_is_not_said_is_blank() {
    NamedRows rows = NamedRows.of("kind", "jobs", "mean");
    rows.row().put("mean", "2.5").put("kind", "all");
    rows.row().put("jobs", 3);
    assertEquals(
        new FigureTable(
            "x",
            List.of("kind", "jobs", "mean"),
            List.of(List.of("all", "", "2.5"), List.of("", "3", ""))),
        rows.named("x"));
  }

  @Test
  void a_cell_without_a_column_is_a_fault_of_the_program() {
    NamedRows.Row row = NamedRows.of("kind").row();
    assertThrows(IllegalArgumentException.class, () -> row.put("kinds", "all"));
  }
}
