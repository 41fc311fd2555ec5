package clenchbook.delivery;

import clenchbook.delivery.message.HeaderText;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Base64;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a server says, made fit to be shown and written down: without the password in any form in
 * which a server may repeat it, as it is, its accents composed or apart, its bytes taken for other
 * letters, and wrapped as the login mechanisms wrap it.
 */
final class ServerWords {
  private static final String MASK = "…";
  private static final int NO_LETTER = 0xFFFD;

  private final List<String> forms;

  private ServerWords(List<String> forms) {
    this.forms = forms;
  }

  /** For a server that knows this credential; without one nothing is taken out. */
  static ServerWords of(Optional<SmtpCredential> credential) {
    Set<String> forms = new LinkedHashSet<>();
    credential.ifPresent(given -> gather(given, forms));
    return new ServerWords(
        forms.stream()
            .filter(form -> form.chars().anyMatch(c -> c != '?' && c != ' ' && c != NO_LETTER))
            .sorted(Comparator.comparingInt(String::length).reversed())
            .toList());
  }

  private static void gather(SmtpCredential credential, Set<String> forms) {
    String password = credential.password();
    for (String written :
        List.of(
            password,
            Normalizer.normalize(password, Normalizer.Form.NFC),
            Normalizer.normalize(password, Normalizer.Form.NFD))) {
      for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1)) {
        byte[] bytes = written.getBytes(charset);
        forms.add(new String(bytes, StandardCharsets.UTF_8));
        forms.add(new String(bytes, StandardCharsets.ISO_8859_1));
        // RFC 4616, section 2: PLAIN wraps an identity that may be empty, the user, the password.
        String user = credential.user();
        for (String before : List.of("", "\0" + user + "\0", user + "\0" + user + "\0")) {
          byte[] wrapped = (before + written).getBytes(charset);
          forms.add(Base64.getEncoder().encodeToString(wrapped));
          forms.add(Base64.getEncoder().withoutPadding().encodeToString(wrapped));
        }
      }
    }
    List.copyOf(forms).forEach(form -> forms.add(HeaderText.clean(form)));
  }

  /**
   * What a server said, fit to be shown and written down.
   *
   * @param words as they came
   * @return in one line of at most 400 characters, without the password
   */
  String clean(String words) {
    return without(HeaderText.clean(without(inUtf8(words))));
  }

  /**
   * The mail library takes bytes for Latin-1; where they are sound UTF-8 that is what was meant.
   */
  private static String inUtf8(String words) {
    if (words.chars().anyMatch(c -> c > 0xFF)) {
      return words;
    }
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(words.getBytes(StandardCharsets.ISO_8859_1)))
          .toString();
    } catch (CharacterCodingException otherLetters) {
      return words;
    }
  }

  private String without(String words) {
    String left = words;
    for (String form : forms) {
      left = left.replace(form, MASK);
    }
    return left;
  }
}
