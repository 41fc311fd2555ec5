package clenchbook.delivery;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.james.mime4j.dom.BinaryBody;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.apache.james.mime4j.stream.MimeConfig;

/** Reads a message back with a parser that is none of ours nor the one it was written with. */
public final class SecondParser {
  private SecondParser() {}

  public static Message read(byte[] message) {
    DefaultMessageBuilder builder = new DefaultMessageBuilder();
    builder.setMimeEntityConfig(MimeConfig.STRICT);
    try {
      return builder.parseMessage(new ByteArrayInputStream(message));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The parts that are no multiparts, in order. */
  public static List<Entity> leaves(Entity entity) {
    if (!(entity.getBody() instanceof Multipart)) {
      return List.of(entity);
    }
    List<Entity> found = new ArrayList<>();
    ((Multipart) entity.getBody()).getBodyParts().forEach(part -> found.addAll(leaves(part)));
    return found;
  }

  public static String text(Entity entity) {
    return new String(bytes(entity), StandardCharsets.UTF_8);
  }

  public static byte[] bytes(Entity entity) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      if (entity.getBody() instanceof TextBody) {
        ((TextBody) entity.getBody()).getInputStream().transferTo(bytes);
      } else {
        ((BinaryBody) entity.getBody()).getInputStream().transferTo(bytes);
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return bytes.toByteArray();
  }
}
