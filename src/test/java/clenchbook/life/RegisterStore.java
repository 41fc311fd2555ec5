package clenchbook.life;

import clenchbook.billing.documents.BilledDocument;
import clenchbook.register.Register;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Documents in a register, as the program keeps them. A recording that is cut short leaves the
 * register's file and its journal as they are at that moment, when some of the documents have been
 * written and others not: as a killed process leaves them.
 */
final class RegisterStore implements LifeStore {
  private static final int NEVER = -1;

  private final Path file;
  private final Path journal;
  private List<BilledDocument> documents = List.of();
  private Map<String, String> bytes = Map.of();
  private int left = NEVER;
  private int kills;

  RegisterStore(Path folder) {
    try {
      Path empty = Files.createTempDirectory(folder, "register");
      file = empty.resolve("life.register.db");
      journal = empty.resolve("life.register.db-journal");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** How many recordings were cut short. */
  int kills() {
    return kills;
  }

  @Override
  public List<BilledDocument> documents() {
    return documents;
  }

  @Override
  public Map<String, String> bytes() {
    return bytes;
  }

  @Override
  public void record(List<BilledDocument> all, Map<String, String> drafts) {
    try (Register register = Register.open(file)) {
      register.record(all, new DyingMap(drafts), List.of());
    } catch (Killed killed) {
      kills++;
      moveBack();
      read();
      throw killed;
    }
    read();
  }

  private void read() {
    documents = Register.read(file);
    Map<String, String> stored = new TreeMap<>();
    try (Register register = Register.open(file)) {
      for (BilledDocument document : documents) {
        register
            .pdf(document.number())
            .ifPresent(
                pdf -> stored.put(document.number(), new String(pdf, StandardCharsets.UTF_8)));
      }
    }
    bytes = stored;
  }

  @Override
  public void dieAt(int moment) {
    left = moment % 8;
  }

  @Override
  public void liveOn() {
    left = NEVER;
  }

  /** The bytes of documents; asked for them once too often, the process is gone. */
  private final class DyingMap extends HashMap<String, byte[]> {
    private static final long serialVersionUID = 1L;

    DyingMap(Map<String, String> drafts) {
      drafts.forEach((number, text) -> put(number, text.getBytes(StandardCharsets.UTF_8)));
    }

    @Override
    public byte[] get(Object number) {
      if (left == 0) {
        setAside();
        throw new Killed();
      }
      left = Math.max(NEVER, left - 1);
      return super.get(number);
    }
  }

  private void setAside() {
    copy(file, aside(file));
    if (Files.exists(journal)) {
      copy(journal, aside(journal));
    }
  }

  private void moveBack() {
    copy(aside(file), file);
    if (Files.exists(aside(journal))) {
      copy(aside(journal), journal);
    }
  }

  private static Path aside(Path path) {
    return path.resolveSibling(path.getFileName() + ".aside");
  }

  private static void copy(Path from, Path to) {
    try {
      Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
