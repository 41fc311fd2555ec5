package clenchbook.statistics;

import java.util.ArrayList;
import java.util.List;

/** Data sets that others have published, with their sources. */
final class PublishedSamples {
  /** Student, "The Probable Error of a Mean", Biometrika 6, 1908; R documentation, sleep. */
  static final double[] SLEEP_1 = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};

  static final double[] SLEEP_2 = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

  /** Wikipedia, "Welch's t-test", examples, first and second pair of samples; from memory. */
  static final double[] WELCH_1A = {
    27.5, 21.0, 19.0, 23.6, 17.0, 17.9, 16.9, 20.1, 21.9, 22.6, 23.1, 19.6, 19.0, 21.7, 21.4
  };

  static final double[] WELCH_1B = {
    27.1, 22.0, 20.8, 23.4, 23.4, 23.5, 25.8, 22.0, 24.8, 20.2, 21.9, 22.1, 22.9, 20.5, 24.4
  };

  static final double[] WELCH_2A = {17.2, 20.9, 22.6, 18.1, 21.7, 21.4, 23.5, 24.2, 14.7, 21.8};

  static final double[] WELCH_2B = {
    21.5, 22.8, 21.0, 23.0, 21.6, 23.6, 22.5, 20.7, 23.4, 21.8, 20.7, 21.7, 21.5, 22.5, 23.6, 21.5,
    22.5, 23.5, 21.5, 21.8
  };

  /**
   * Crampton, "The growth of the odontoblast of the incisor teeth as a criterion of vitamin C
   * intake of the guinea pig", Journal of Nutrition 33, 1947; R documentation, ToothGrowth. Orange
   * juice, then ascorbic acid, at doses 0.5, 1 and 2 mg a day.
   */
  static final double[][] TOOTH_JUICE = {
    {15.2, 21.5, 17.6, 9.7, 14.5, 10.0, 8.2, 9.4, 16.5, 9.7},
    {19.7, 23.3, 23.6, 26.4, 20.0, 25.2, 25.8, 21.2, 14.5, 27.3},
    {25.5, 26.4, 22.4, 24.5, 24.8, 30.9, 26.4, 27.3, 29.4, 23.0}
  };

  static final double[][] TOOTH_ACID = {
    {4.2, 11.5, 7.3, 5.8, 6.4, 10.0, 11.2, 11.2, 5.2, 7.0},
    {16.5, 16.5, 15.2, 17.3, 22.5, 17.3, 13.6, 14.5, 18.8, 15.5},
    {23.6, 18.5, 33.9, 25.5, 26.4, 32.5, 26.7, 21.5, 23.3, 29.5}
  };

  /** NIST StRD, Norris: y, then x. */
  static final double[] NORRIS_Y = {
    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8,
    339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5,
    778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2
  };

  static final double[] NORRIS_X = {
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5,
    666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2,
    999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5
  };

  /** NIST StRD, Longley: y, x1 to x6 in each row. */
  static final double[][] LONGLEY = {
    {60323, 83.0, 234289, 2356, 1590, 107608, 1947},
    {61122, 88.5, 259426, 2325, 1456, 108632, 1948},
    {60171, 88.2, 258054, 3682, 1616, 109773, 1949},
    {61187, 89.5, 284599, 3351, 1650, 110929, 1950},
    {63221, 96.2, 328975, 2099, 3099, 112075, 1951},
    {63639, 98.1, 346999, 1932, 3594, 113270, 1952},
    {64989, 99.0, 365385, 1870, 3547, 115094, 1953},
    {63761, 100.0, 363112, 3578, 3350, 116219, 1954},
    {66019, 101.2, 397469, 2904, 3048, 117388, 1955},
    {67857, 104.6, 419180, 2822, 2857, 118734, 1956},
    {68169, 108.4, 442769, 2936, 2798, 120445, 1957},
    {66513, 110.8, 444546, 4681, 2637, 121950, 1958},
    {68655, 112.6, 482704, 3813, 2552, 123366, 1959},
    {69564, 114.2, 502601, 3931, 2514, 125368, 1960},
    {69331, 115.7, 518173, 4806, 2572, 127852, 1961},
    {70551, 116.9, 554894, 4007, 2827, 130081, 1962}
  };

  private PublishedSamples() {}

  /** Two samples as observations of one stratum, each value a group of its own. */
  static List<Observation> pair(String stratum, double[] a, double[] b) {
    List<Observation> observations = new ArrayList<>();
    for (double value : a) {
      observations.add(
          new Observation(stratum + " a" + observations.size(), stratum, Side.A, value));
    }
    for (double value : b) {
      observations.add(
          new Observation(stratum + " b" + observations.size(), stratum, Side.B, value));
    }
    return observations;
  }

  /** The tooth data as three strata. */
  static List<Observation> teeth() {
    List<Observation> observations = new ArrayList<>();
    for (int dose = 0; dose < TOOTH_JUICE.length; dose++) {
      observations.addAll(pair("dose " + dose, TOOTH_JUICE[dose], TOOTH_ACID[dose]));
    }
    return observations;
  }
}
