package clenchbook.comparison.questions;

import clenchbook.book.MaterialKind;
import clenchbook.book.Names;
import clenchbook.book.Reason;
import clenchbook.book.Shaping;
import clenchbook.statistics.Side;
import clenchbook.texts.Message;
import java.util.Optional;

/** A question that the book is asked; side A is compared with side B. */
public enum Question {
  /** Shoes shaped at the forge with shoes shaped cold; steel only. */
  HOT_WITH_COLD(
      "hot with cold",
      Way.HOT,
      Way.COLD,
      "comparison.question.hot",
      "comparison.question.hot.heading") {
    @Override
    Optional<Exclusion> leavesOut(ComparedJob job) {
      if (job.has(MaterialKind.ALUMINIUM)) {
        return Optional.of(Exclusion.ALUMINIUM);
      }
      boolean shaped = job.shaped(Shaping.HOT) || job.shaped(Shaping.COLD);
      return shaped ? Optional.empty() : Optional.of(Exclusion.NOT_SHAPED);
    }

    @Override
    Side side(ComparedJob job) {
      return job.shaped(Shaping.HOT) ? Side.A : Side.B;
    }

    @Override
    String group(ComparedJob job) {
      return job.compareAs().isEmpty() ? job.work() : job.compareAs();
    }

    @Override
    String recipe(ComparedJob job) {
      return kindWord(job) + ", " + shoesWord(job);
    }

    @Override
    String effect(ComparedJob job) {
      return group(job);
    }

    @Override
    public Message sort(ComparedJob job) {
      String key =
          job.kind().isEmpty()
              ? "comparison.sort.unknown"
              : job.has(MaterialKind.HANDMADE) ? "comparison.sort.handmade" : "comparison.sort.keg";
      return Message.of(key, group(job), job.shoes(), helpers(job));
    }
  },

  /** Shoes made by hand with shoes made by machine. */
  HANDMADE_WITH_KEG(
      "handmade with keg",
      Way.HANDMADE,
      Way.KEG,
      "comparison.question.handmade",
      "comparison.question.handmade.heading") {
    @Override
    Optional<Exclusion> leavesOut(ComparedJob job) {
      if (job.kind().isEmpty()) {
        return Optional.of(Exclusion.KIND_UNKNOWN);
      }
      if (job.kind().get() == MaterialKind.ALUMINIUM) {
        return Optional.of(Exclusion.ALUMINIUM);
      }
      if (job.reason() == Reason.LOST_SHOE) {
        return Optional.of(Exclusion.LOST_SHOE_CALL);
      }
      if (job.newShoes() < job.shoes()) {
        return Optional.of(Exclusion.RESET);
      }
      return job.shaping().isEmpty() ? Optional.of(Exclusion.NOT_SHAPED) : Optional.empty();
    }

    @Override
    Side side(ComparedJob job) {
      return job.has(MaterialKind.HANDMADE) ? Side.A : Side.B;
    }

    @Override
    String group(ComparedJob job) {
      return job.compareAs().isEmpty() ? shoesWord(job) : job.compareAs();
    }

    @Override
    String recipe(ComparedJob job) {
      return job.shaping().map(HANDMADE_WITH_KEG::shapingWord).orElse("");
    }

    @Override
    String effect(ComparedJob job) {
      return group(job) + ", " + recipe(job);
    }

    @Override
    public Message sort(ComparedJob job) {
      Object group =
          job.compareAs().isEmpty()
              ? Message.of("comparison.sort.shoes", job.shoes())
              : job.compareAs();
      String key =
          job.shaped(Shaping.HOT)
              ? "comparison.sort.hot"
              : job.shaped(Shaping.COLD) ? "comparison.sort.cold" : "comparison.sort.unshaped";
      return Message.of(key, group, helpers(job));
    }
  };

  private final String title;
  private final Way a;
  private final Way b;
  private final String key;
  private final String headingKey;

  Question(String title, Way a, Way b, String key, String headingKey) {
    this.title = title;
    this.a = a;
    this.b = b;
    this.key = key;
    this.headingKey = headingKey;
  }

  /** Why the question's own rule leaves a job with shoes out; empty where it lets it in. */
  abstract Optional<Exclusion> leavesOut(ComparedJob job);

  abstract Side side(ComparedJob job);

  /** The name that makes jobs alike, before kind, number of shoes or shaping. */
  abstract String group(ComparedJob job);

  /** What else must be alike. */
  abstract String recipe(ComparedJob job);

  /** What has an effect of its own in the least-squares model. */
  abstract String effect(ComparedJob job);

  /**
   * Why a job can't enter the question, the first reason that applies.
   *
   * @param job a job that was done
   * @return empty where it enters
   */
  public Optional<Exclusion> exclusion(ComparedJob job) {
    if (job.shoes() == 0) {
      return Optional.of(Exclusion.NO_SHOES);
    }
    return job.mixed() ? Optional.of(Exclusion.MIXED_KINDS) : leavesOut(job);
  }

  /** The stratum of a job that enters; names that differ only in case are one. */
  public String stratum(ComparedJob job) {
    return Names.key(stratumName(job));
  }

  /** The stratum of a job that enters, for people. */
  public abstract Message sort(ComparedJob job);

  /** The stratum of a job that enters, as files have it. */
  public String stratumName(ComparedJob job) {
    return group(job) + ", " + recipe(job) + helperWord(job);
  }

  /** The name under which the job has an effect in the least-squares model. */
  public String effectName(ComparedJob job) {
    return Names.key(effect(job)) + helperWord(job);
  }

  /** The question's name in files. */
  public String title() {
    return title;
  }

  /** The question's name for people. */
  public Message told() {
    return Message.of(key);
  }

  /** The question's name as a heading. */
  public Message heading() {
    return Message.of(headingKey);
  }

  /** The way of side A. */
  public Way a() {
    return a;
  }

  /** The way of side B. */
  public Way b() {
    return b;
  }

  /** What side A is called in files. */
  public String nameA() {
    return a.word();
  }

  /** What side B is called in files. */
  public String nameB() {
    return b.word();
  }

  private static int helpers(ComparedJob job) {
    return job.helped() ? 1 : 0;
  }

  private static String helperWord(ComparedJob job) {
    return job.helped() ? ", with a helper" : "";
  }

  private static String kindWord(ComparedJob job) {
    return job.kind().map(MaterialKind::word).orElse("kind not given");
  }

  private static String shoesWord(ComparedJob job) {
    return job.shoes() == 1 ? "1 shoe" : job.shoes() + " shoes";
  }

  private String shapingWord(Shaping shaping) {
    return shaping == Shaping.NONE ? "not shaped" : shaping.word();
  }
}
