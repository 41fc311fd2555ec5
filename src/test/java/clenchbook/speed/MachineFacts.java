package clenchbook.speed;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Locale;

/** What the reader must know of the machine, and nothing by which it could be found. */
final class MachineFacts {
  private static final double GIGABYTE = 1L << 30;

  private MachineFacts() {}

  static String text() {
    OperatingSystemMXBean machine =
        ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    return String.format(
        Locale.ROOT,
        "%d processors (%s), %.0f GB of memory, %s, Java %s (%s)",
        machine.getAvailableProcessors(),
        machine.getArch(),
        machine.getTotalMemorySize() / GIGABYTE,
        machine.getName(),
        Runtime.version(),
        System.getProperty("java.vm.name"));
  }
}
