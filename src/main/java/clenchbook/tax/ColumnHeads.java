package clenchbook.tax;

import clenchbook.texts.Message;
import java.util.Map;
import java.util.Optional;

/** What paper says over columns that several files have, by their names there. */
final class ColumnHeads {
  private static final Map<String, Message> HEADS =
      Map.ofEntries(
          Map.entry("amount", Message.of("tax.column.amount")),
          Map.entry("basis", Message.of("tax.column.basis")),
          Map.entry("box", Message.of("tax.column.box")),
          Map.entry("cell", Message.of("tax.column.cell")),
          Map.entry("code", Message.of("tax.column.code")),
          Map.entry("date", Message.of("tax.column.date")),
          Map.entry("distance", Message.of("tax.column.distance")),
          Map.entry("due", Message.of("tax.column.due")),
          Map.entry("from", Message.of("tax.column.from")),
          Map.entry("known_as", Message.of("tax.column.knownAs")),
          Map.entry("line", Message.of("tax.column.line")),
          Map.entry("name", Message.of("tax.column.name")),
          Map.entry("net", Message.of("tax.column.net")),
          Map.entry("part", Message.of("tax.column.part")),
          Map.entry("period", Message.of("tax.column.period")),
          Map.entry("place", Message.of("tax.column.place")),
          Map.entry("quarter", Message.of("tax.column.quarter")),
          Map.entry("rate", Message.of("tax.column.rate")),
          Map.entry("row", Message.of("tax.column.row")),
          Map.entry("rows", Message.of("tax.column.rows")),
          Map.entry("scheme", Message.of("tax.column.scheme")),
          Map.entry("sheet", Message.of("tax.column.sheet")),
          Map.entry("source", Message.of("tax.column.source")),
          Map.entry("tax", Message.of("tax.column.tax")),
          Map.entry("tax_code", Message.of("tax.column.taxCode")),
          Map.entry("to", Message.of("tax.column.to")),
          Map.entry("unit", Message.of("tax.column.unit")),
          Map.entry("value", Message.of("tax.column.value")),
          Map.entry("what", Message.of("tax.column.what")),
          Map.entry("word", Message.of("tax.column.word")));

  private ColumnHeads() {}

  /** The heading; empty for a column that only one table has. */
  static Optional<Message> find(String column) {
    return Optional.ofNullable(HEADS.get(column));
  }
}
