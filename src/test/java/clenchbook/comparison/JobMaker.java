package clenchbook.comparison;

import clenchbook.book.MaterialKind;
import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.book.SourceRow;
import clenchbook.comparison.questions.CompareRates;
import clenchbook.comparison.questions.ComparedJob;
import clenchbook.comparison.questions.JobMoney;
import clenchbook.comparison.questions.JobTime;
import clenchbook.comparison.questions.ShoeCount;
import clenchbook.reading.texts.TextFiles;
import clenchbook.reports.blocks.FigureText;
import clenchbook.values.money.MinorUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/** Makes jobs for tests, one change at a time, and whole invented books from a seed. */
public final class JobMaker {
  public static final LocalDate FIRST = LocalDate.of(2025, 1, 1);
  public static final LocalDate LAST = LocalDate.of(2025, 12, 31);

  private int row = 2;
  public LocalDate date = LocalDate.of(2025, 3, 3);
  public String horse = "Bramble";
  public String work = "Full set";
  public String compareAs = "";
  public boolean fee;
  public Reason reason = Reason.ROUTINE;
  public Optional<Shaping> shaping = Optional.of(Shaping.HOT);
  public Optional<MaterialKind> kind = Optional.of(MaterialKind.KEG);
  public int shoes = 4;
  public int newShoes = 4;
  public OptionalInt lost = OptionalInt.empty();
  public String shape = "24";
  public boolean measured = true;
  public String jobMinutes = "70";
  public String drive = "10";
  public String making = "0";
  public String helper = "0";
  public String forge = "20";
  public String charged = "120";
  public String list = "120";
  public String materials = "24";
  public String gas = "1";
  public String sundries = "2";
  public String travel = "6";
  public String overhead = "8";

  public static CompareRates rates() {
    return rates(new BigDecimal("6"), new BigDecimal("5"));
  }

  /** The rates with another setting-up of the forge, both in minutes. */
  public static CompareRates rates(BigDecimal setupMinutes, BigDecimal setupGasMinutes) {
    return new CompareRates(
        "GBP",
        new FigureText(TextFiles.in("en", "GB"), "GBP"),
        new MinorUnit(2),
        Optional.of(new BigDecimal("30")),
        Optional.of(new BigDecimal("15")),
        Optional.of(new BigDecimal("0.04")),
        setupMinutes,
        setupGasMinutes,
        true,
        14,
        Optional.empty());
  }

  public static JobMaker job() {
    return new JobMaker();
  }

  public JobMaker row(int number) {
    row = number;
    return this;
  }

  public JobMaker hot(String shapeMinutes) {
    shaping = Optional.of(Shaping.HOT);
    shape = shapeMinutes;
    return this;
  }

  public JobMaker cold(String shapeMinutes) {
    shaping = Optional.of(Shaping.COLD);
    shape = shapeMinutes;
    forge = "0";
    return this;
  }

  public JobMaker horse(String name) {
    horse = name;
    return this;
  }

  public JobMaker on(LocalDate day) {
    date = day;
    return this;
  }

  public ComparedJob make() {
    BigDecimal labour =
        number(jobMinutes)
            .add(number(drive))
            .add(number(making))
            .multiply(new BigDecimal("30"))
            .add(number(helper).multiply(new BigDecimal("15")))
            .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
    return new ComparedJob(
        new SourceRow("Visits", 0, row, Map.of()),
        date,
        horse,
        horse,
        date + " yard",
        "Owner of " + horse,
        work,
        compareAs,
        fee,
        reason,
        shaping,
        shoes == 0 ? List.of() : List.of(new ShoeCount(kind, shoes)),
        shoes,
        newShoes,
        lost,
        new JobTime(
            shape.isEmpty() ? Optional.empty() : Optional.of(number(shape)),
            measured,
            number(jobMinutes),
            number(drive),
            number(making),
            number(helper),
            number(forge)),
        new JobMoney(
            number(charged),
            Optional.of(number(list)),
            Optional.of(number(list)),
            number(materials),
            number(gas),
            number(sundries),
            number(travel),
            number(overhead),
            labour));
  }

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  /** A year of an invented farrier: hot saves 1.5 minutes a shoe, handmade takes longer. */
  public static List<ComparedJob> book(long seed) {
    Random random = new Random(seed);
    List<ComparedJob> jobs = new ArrayList<>();
    int row = 2;
    for (int horse = 0; horse < 40; horse++) {
      double level = 0.8 * random.nextGaussian();
      boolean usuallyHot = random.nextInt(100) < 60;
      boolean handmade = random.nextInt(100) < 30;
      int shoes = random.nextInt(4) == 0 ? 2 : 4;
      LocalDate day = FIRST.plusDays(random.nextInt(45));
      while (!day.isAfter(LAST)) {
        jobs.add(visit(random, row++, "horse " + horse, level, usuallyHot, handmade, shoes, day));
        day = day.plusDays(35 + random.nextInt(25));
      }
    }
    jobs.sort(ComparedJob.ORDER);
    return jobs;
  }

  private static ComparedJob visit(
      Random random,
      int row,
      String horse,
      double level,
      boolean usuallyHot,
      boolean handmade,
      int shoes,
      LocalDate day) {
    JobMaker job = job().row(row).horse(horse).on(day);
    boolean hot = usuallyHot != (random.nextInt(100) < 25);
    boolean made = handmade != (random.nextInt(100) < 15);
    double perShoe = 7.5 + level + (hot ? -1.5 : 0) + 1.1 * random.nextGaussian();
    job.shaping = Optional.of(hot ? Shaping.HOT : Shaping.COLD);
    job.kind = Optional.of(made ? MaterialKind.HANDMADE : MaterialKind.KEG);
    job.work = (shoes == 4 ? "Full set" : "Fronts") + (made ? " handmade" : "");
    job.shoes = shoes;
    job.newShoes = random.nextInt(100) < 12 ? 0 : shoes;
    job.shape = random.nextInt(100) < 8 ? "" : tenths(perShoe * shoes);
    job.measured = random.nextInt(100) < 85;
    job.jobMinutes = tenths(perShoe * shoes + 20 + 5 * shoes + 4 * random.nextGaussian());
    job.drive = tenths(5 + random.nextInt(15));
    job.making = made ? String.valueOf(15 * job.newShoes) : "0";
    job.helper = random.nextInt(100) < 10 ? "20" : "0";
    job.forge = hot ? String.valueOf(5 * shoes) : "0";
    job.charged = String.valueOf((made ? 38 : 26) * shoes + random.nextInt(8));
    job.list = String.valueOf((made ? 38 : 26) * shoes + 4);
    job.materials = cents(job.newShoes * (made ? 2.4 : 4.6) + 1.1);
    job.gas = hot ? cents(0.04 * 5 * shoes + 0.21) : "0";
    job.travel = cents(3 + 6 * random.nextDouble());
    job.overhead = cents(6 + 2 * random.nextDouble());
    if (random.nextInt(100) < 7) {
      job.lost = OptionalInt.of(1);
    }
    return job.make();
  }

  private static String tenths(double value) {
    return BigDecimal.valueOf(Math.max(1, value)).setScale(1, RoundingMode.HALF_UP).toString();
  }

  private static String cents(double value) {
    return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).toString();
  }
}
