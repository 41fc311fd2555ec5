package clenchbook.print.archive;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class ArchiveMetadataTest {
  @Test
  void what_xml_would_choke_on_does_no_harm_in_a_description() {
    String packet =
        new ArchiveMetadata(
                ArchiveForm.PLAIN,
                "A & B <c>\u0001\uFFFF \uD83D\uDC0E",
                "",
                "en",
                LocalDate.of(2026, 10, 31))
            .packet();
    assertTrue(packet.contains("A &amp; B &lt;c&gt; \uD83D\uDC0E</rdf:li>"), packet);
  }
}
