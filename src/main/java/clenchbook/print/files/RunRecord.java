package clenchbook.print.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The file {@code run.json}: what a run was asked, and the files it wrote with their SHA-256, by
 * which the next run knows its own files from the farrier's.
 */
final class RunRecord {
  static final String NAME = "run.json";

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final long LARGEST = 50_000_000;

  private RunRecord() {}

  /**
   * The record's bytes.
   *
   * @param facts what the run was asked, in order; texts, numbers, truths, lists and maps of them
   * @param hashes each file's path and SHA-256
   * @return UTF-8 with line feeds on every system
   */
  static byte[] of(Map<String, Object> facts, SortedMap<String, String> hashes) {
    Map<String, Object> record = new LinkedHashMap<>(facts);
    List<Map<String, String>> files = new ArrayList<>();
    hashes.forEach(
        (path, hash) -> {
          Map<String, String> file = new LinkedHashMap<>();
          file.put("path", path);
          file.put("sha256", hash);
          files.add(file);
        });
    record.put("files", files);
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentArraysWith(lines);
    printer.indentObjectsWith(lines);
    try {
      return (JSON.writer(printer).writeValueAsString(record) + "\n")
          .getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("not fit for a record: " + facts, e);
    }
  }

  /**
   * The files that an earlier run wrote. A record that is missing or damaged lists none: then
   * nothing is removed.
   *
   * @param record a run.json
   * @return each path with the hashes it was written with
   */
  static SortedMap<String, Set<String>> filesOf(Path record) {
    SortedMap<String, Set<String>> files = new TreeMap<>();
    try {
      if (Files.isRegularFile(record) && Files.size(record) <= LARGEST) {
        for (JsonNode file : JSON.readTree(Files.readAllBytes(record)).path("files")) {
          files
              .computeIfAbsent(file.path("path").asText(), path -> new HashSet<>())
              .add(file.path("sha256").asText());
        }
      }
    } catch (IOException e) {
      files.clear();
    }
    return files;
  }
}
