package clenchbook.book.understood;

import clenchbook.texts.Message;

/**
 * One column of a sheet, or a sheet that is not read.
 *
 * @param sheet the sheet's own name
 * @param takenAs the program's name of what it was taken for; empty for a sheet that is not read
 * @param column the column's letters; empty where the whole sheet is meant
 * @param heading as the farrier wrote it; empty for a column without one
 * @param meaning the program's heading; empty for a column that is not read
 * @param how how the meaning was found
 * @param note what else is to be known, such as the order of its dates; may be empty
 * @param settlesOrder whether its own days settle the order of day and month
 * @param holdsMoney whether money or minutes stand in it although it is not read
 */
public record UnderstoodColumn(
    String sheet,
    String takenAs,
    String column,
    String heading,
    String meaning,
    How how,
    Message note,
    boolean settlesOrder,
    boolean holdsMoney) {

  /**
   * Whether the column, or the sheet, is read.
   *
   * @return true where it has a meaning
   */
  public boolean read() {
    return how != How.NOT_READ;
  }
}
