package clenchbook.speed;

/** How a time grows with a size: 1 in proportion, 2 as its square. */
final class LogLogSlope {
  private LogLogSlope() {}

  /**
   * The slope of the line through the logarithms, by least squares.
   *
   * @throws IllegalArgumentException if a time is not above nought
   */
  static double of(int[] sizes, double[] times) {
    double meanX = 0;
    double meanY = 0;
    for (int i = 0; i < sizes.length; i++) {
      if (times[i] <= 0) {
        throw new IllegalArgumentException("a longer book took no longer: " + sizes[i]);
      }
      meanX += Math.log(sizes[i]) / sizes.length;
      meanY += Math.log(times[i]) / sizes.length;
    }
    double together = 0;
    double square = 0;
    for (int i = 0; i < sizes.length; i++) {
      double x = Math.log(sizes[i]) - meanX;
      together += x * (Math.log(times[i]) - meanY);
      square += x * x;
    }
    return together / square;
  }
}
