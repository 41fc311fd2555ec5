package clenchbook.reading.formats.cells;

import java.io.IOException;

/** Says that a sheet breaks off: the rows handed on before were sound, what follows is lost. */
public final class DamagedSheet extends IOException {
  private static final long serialVersionUID = 1L;

  public DamagedSheet(String message, Throwable cause) {
    super(message, cause);
  }
}
