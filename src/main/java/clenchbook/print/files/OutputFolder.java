package clenchbook.print.files;

import clenchbook.texts.Message;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Brings a run's files to rest in their folder. They are written beside it first and moved when all
 * are whole, the record last, so that a run cut short leaves no half file and the next one knows
 * what was its own.
 *
 * <p>Only files that an earlier record lists, with their bytes unchanged, are ever removed;
 * whatever else the farrier keeps in the folder stays.
 */
public final class OutputFolder {
  private final Path folder;
  private final Path beside;
  private boolean halfMoved;

  private OutputFolder(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
    this.beside = besideOf(this.folder);
  }

  /** In the folder itself where it is a disk of its own or nothing may be written beside it. */
  private static Path besideOf(Path folder) {
    Path parent = folder.getParent();
    boolean within = parent == null || (Files.isDirectory(folder) && !canMove(parent, folder));
    return within
        ? folder.resolve(".being-written")
        : folder.resolveSibling("." + folder.getFileName() + ".being-written");
  }

  private static boolean canMove(Path parent, Path folder) {
    try {
      return Files.isWritable(parent)
          && Files.getFileStore(parent).equals(Files.getFileStore(folder));
    } catch (IOException e) {
      return true; // and let the writing say what is wrong
    }
  }

  /**
   * Writes all files of a run and its {@code run.json}.
   *
   * @param folder where to; made if it is missing
   * @param files each file's path in the folder, with forward slashes, and its content
   * @param facts what stands in {@code run.json} before the list of files
   * @return each file's path and SHA-256, {@code run.json} left out
   * @throws IOException when the disk refuses; what was there before is still whole then
   */
  public static SortedMap<String, String> write(
      Path folder, Map<String, OutputFile> files, Map<String, Object> facts) throws IOException {
    return new OutputFolder(folder).replaceWith(new TreeMap<>(files), facts);
  }

  private SortedMap<String, String> replaceWith(
      SortedMap<String, OutputFile> files, Map<String, Object> facts) throws IOException {
    files.keySet().forEach(OutputFolder::check);
    SortedMap<String, Set<String>> earlier = earlierFiles();
    Tree.remove(beside);
    try {
      SortedMap<String, String> hashes = writeBeside(files);
      byte[] record = RunRecord.of(facts, hashes);
      try (OutputStream out = OwnerOnly.open(beside.resolve(RunRecord.NAME))) {
        out.write(record);
      }
      OwnerOnly.makeFolders(folder);
      clear(earlier, hashes.keySet());
      for (Map.Entry<String, String> file : hashes.entrySet()) {
        settle(file.getKey(), file.getValue());
      }
      move(RunRecord.NAME);
      halfMoved = false;
      return hashes;
    } finally {
      // Refused half-way, the record stays beside: the next run must know the files already moved.
      if (!halfMoved) {
        Tree.remove(beside);
      }
    }
  }

  /** A run that was cut short has left its record beside the folder: its files are known too. */
  private SortedMap<String, Set<String>> earlierFiles() {
    SortedMap<String, Set<String>> earlier = RunRecord.filesOf(folder.resolve(RunRecord.NAME));
    RunRecord.filesOf(beside.resolve(RunRecord.NAME))
        .forEach(
            (path, hashes) ->
                earlier.computeIfAbsent(path, unused -> new HashSet<>()).addAll(hashes));
    return earlier;
  }

  private static void check(String path) {
    for (String part : path.split("/", -1)) {
      boolean wrong =
          part.isEmpty() || part.equals(".") || part.equals("..") || part.indexOf('\\') >= 0;
      if (wrong || path.equals(RunRecord.NAME)) {
        throw new IllegalArgumentException("not a file of a run: " + path);
      }
    }
  }

  private SortedMap<String, String> writeBeside(SortedMap<String, OutputFile> files)
      throws IOException {
    OwnerOnly.makeFolders(beside);
    for (String path : files.keySet()) {
      OwnerOnly.makeFolders(parentOf(beside.resolve(path)));
    }
    try {
      return files.entrySet().parallelStream()
          .collect(
              Collectors.toMap(
                  Map.Entry::getKey,
                  file -> writeBeside(file.getKey(), file.getValue()),
                  (one, other) -> one,
                  TreeMap::new));
    } catch (UncheckedIOException e) {
      throw Optional.ofNullable(e.getCause()).orElseGet(() -> new IOException(e));
    }
  }

  private String writeBeside(String path, OutputFile file) {
    MessageDigest digest = sha256();
    try (OutputStream out =
        new DigestOutputStream(
            new BufferedOutputStream(OwnerOnly.open(beside.resolve(path))), digest)) {
      file.writeTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private void clear(SortedMap<String, Set<String>> earlier, Set<String> kept) throws IOException {
    Set<Path> emptied = new TreeSet<>();
    for (Map.Entry<String, Set<String>> file : earlier.entrySet()) {
      // A run in another locale may have named files with letters that this one can't.
      if (!FileLetters.hold(file.getKey())) {
        continue;
      }
      Path path = folder.resolve(file.getKey()).normalize();
      boolean ours =
          !kept.contains(file.getKey())
              && path.startsWith(folder)
              && isInside(path)
              && file.getValue().contains(hashOf(path));
      if (ours) {
        Files.delete(path);
        halfMoved = true;
        emptied.add(parentOf(path));
      }
    }
    for (Path parent : emptied) {
      removeEmpty(parent);
    }
  }

  private void removeEmpty(Path parent) throws IOException {
    Path at = parent;
    while (!at.equals(folder)) {
      try {
        Files.delete(at);
      } catch (DirectoryNotEmptyException | NoSuchFileException e) {
        return;
      }
      at = parentOf(at);
    }
  }

  /** A file whose bytes are already there is left alone, its time too. */
  private void settle(String path, String hash) throws IOException {
    if (!hash.equals(hashOf(folder.resolve(path)))) {
      move(path);
    }
  }

  private void move(String path) throws IOException {
    Path target = folder.resolve(path);
    OwnerOnly.makeFolders(parentOf(target));
    if (!isInside(target)) {
      throw new RefusedFile(Message.of("print.linkLeadsOut", path));
    }
    Files.move(
        beside.resolve(path),
        target,
        StandardCopyOption.REPLACE_EXISTING,
        StandardCopyOption.ATOMIC_MOVE);
    halfMoved = true;
  }

  /** Every file of a run lies in a folder. */
  private static Path parentOf(Path path) {
    Path parent = path.getParent();
    if (parent == null) {
      throw new IllegalArgumentException("not in a folder: " + path);
    }
    return parent;
  }

  /** No link on the way may lead elsewhere. */
  private boolean isInside(Path path) throws IOException {
    Path parent = parentOf(path);
    return Files.isDirectory(parent)
        && parent.toRealPath().startsWith(folder.toRealPath())
        && !Files.isSymbolicLink(path);
  }

  private static String hashOf(Path path) throws IOException {
    if (!Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
      return "";
    }
    MessageDigest digest = sha256();
    try (InputStream in = Files.newInputStream(path)) {
      byte[] part = new byte[65_536];
      for (int read = in.read(part); read >= 0; read = in.read(part)) {
        digest.update(part, 0, read);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
