package clenchbook.delivery;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.List;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManagerFactory;

/** A certificate made for one test by the JDK's own tool, and trust in it. */
public final class LoopbackCertificate {
  static final String PASSWORD = "loopback";

  private final Path file;
  private final SSLContext context;

  private LoopbackCertificate(Path file, SSLContext context) {
    this.file = file;
    this.context = context;
  }

  /** A self-signed certificate that bears the given host name. */
  public static LoopbackCertificate of(String host, Path folder) {
    try {
      Path file = folder.resolve(host + ".p12");
      if (!Files.exists(file)) {
        make(host, file);
      }
      return new LoopbackCertificate(file, contextOf(file));
    } catch (IOException | GeneralSecurityException fault) {
      throw new IllegalStateException(fault);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    }
  }

  private static void make(String host, Path file) throws IOException, InterruptedException {
    Path tool = Path.of(System.getProperty("java.home"), "bin", "keytool");
    List<String> command =
        List.of(
            tool.toString(),
            "-genkeypair",
            "-keyalg",
            "EC",
            "-alias",
            "loopback",
            "-dname",
            "CN=" + host,
            "-ext",
            "SAN=dns:" + host,
            "-validity",
            "2",
            "-storetype",
            "PKCS12",
            "-keystore",
            file.toString(),
            "-storepass",
            PASSWORD);
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    if (process.waitFor() != 0) {
      throw new IllegalStateException(said);
    }
  }

  private static SSLContext contextOf(Path file) throws IOException, GeneralSecurityException {
    KeyStore store = KeyStore.getInstance("PKCS12");
    try (InputStream stream = Files.newInputStream(file)) {
      store.load(stream, PASSWORD.toCharArray());
    }
    KeyManagerFactory keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
    keys.init(store, PASSWORD.toCharArray());
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, null);
    trusted.setCertificateEntry("loopback", store.getCertificate("loopback"));
    TrustManagerFactory trust =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(keys.getKeyManagers(), trust.getTrustManagers(), null);
    return context;
  }

  /** The key store, for another process or server; its password is {@link #PASSWORD}. */
  Path file() {
    return file;
  }

  SSLContext context() {
    return context;
  }

  /** Sockets of a client that trusts this certificate and no other. */
  SSLSocketFactory trustingSockets() {
    return context.getSocketFactory();
  }
}
