package clenchbook.delivery;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import javax.net.SocketFactory;

/**
 * Plain sockets that send a short line at once. Otherwise the dot that ends a message waits for the
 * server to acknowledge what came before it (RFC 896), some forty milliseconds for each mail.
 */
final class PromptSocketFactory extends SocketFactory {
  @Override
  public Socket createSocket() throws SocketException {
    Socket socket = new Socket();
    socket.setTcpNoDelay(true);
    return socket;
  }

  @Override
  public Socket createSocket(String host, int port) throws IOException {
    return prompt(new Socket(host, port));
  }

  @Override
  public Socket createSocket(String host, int port, InetAddress from, int fromPort)
      throws IOException {
    return prompt(new Socket(host, port, from, fromPort));
  }

  @Override
  public Socket createSocket(InetAddress host, int port) throws IOException {
    return prompt(new Socket(host, port));
  }

  @Override
  public Socket createSocket(InetAddress host, int port, InetAddress from, int fromPort)
      throws IOException {
    return prompt(new Socket(host, port, from, fromPort));
  }

  private static Socket prompt(Socket socket) throws SocketException {
    socket.setTcpNoDelay(true);
    return socket;
  }
}
