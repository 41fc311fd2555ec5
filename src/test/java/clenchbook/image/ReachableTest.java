package clenchbook.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/** Which classes stay in the image's jar. */
class ReachableTest {
  private final Map<String, byte[]> files = new TreeMap<>();

  private void put(String name, String parent, String... texts) {
    ClassWriter writer = new ClassWriter(0);
    writer.visit(Opcodes.V17, Opcodes.ACC_PUBLIC, name, null, parent, null);
    List.of(texts).forEach(writer::newConst);
    writer.visitEnd();
    files.put(name + ".class", writer.toByteArray());
  }

  private Set<String> kept() {
    return Reachable.of(files, List.of("lib/"));
  }

  @Test
  void a_library_class_that_nothing_names_goes() {
    put("own/Main", "java/lang/Object");
    put("lib/Unused", "java/lang/Object");
    assertEquals(Set.of("own/Main"), kept());
  }

  @Test
  void what_a_kept_class_is_built_on_stays_and_what_that_names_in_turn() {
    put("own/Main", "lib/Parent");
    put("lib/Parent", "lib/Grandparent");
    put("lib/Grandparent", "java/lang/Object");
    assertEquals(Set.of("own/Main", "lib/Parent", "lib/Grandparent"), kept());
  }

  @Test
  void a_class_named_by_a_plain_text_or_in_a_signature_stays() {
    put("own/Main", "java/lang/Object", "lib.ByText", "(Ljava/lang/String;Llib/InSignature;)V");
    put("lib/ByText", "java/lang/Object");
    put("lib/InSignature", "java/lang/Object");
    assertEquals(Set.of("own/Main", "lib/ByText", "lib/InSignature"), kept());
  }

  @Test
  void a_class_named_in_a_file_that_is_no_class_stays() {
    files.put("META-INF/services/x", "lib.Provider\n".getBytes(StandardCharsets.US_ASCII));
    put("lib/Provider", "java/lang/Object");
    assertEquals(Set.of("lib/Provider"), kept());
  }

  @Test
  void the_form_of_a_class_for_a_newer_java_counts_as_that_class() {
    put("own/Main", "lib/Both");
    put("lib/Both", "java/lang/Object");
    put("lib/OnlyNewer", "java/lang/Object");
    put("temporary", "lib/OnlyNewer");
    files.put("META-INF/versions/21/lib/Both.class", files.remove("temporary.class"));
    assertEquals(Set.of("own/Main", "lib/Both", "lib/OnlyNewer"), kept());
  }
}
