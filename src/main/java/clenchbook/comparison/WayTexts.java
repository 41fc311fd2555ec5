package clenchbook.comparison;

import clenchbook.comparison.questions.Question;
import clenchbook.comparison.questions.Way;
import clenchbook.texts.Message;

/** The texts that name a way, each whole, since a language bends the word by its sentence. */
final class WayTexts {
  private WayTexts() {}

  /** Jobs of a way and the horses they were done on. */
  static Message jobsOnHorses(Way way, int jobs, int horses) {
    return Message.of(
        switch (way) {
          case HOT -> "comparison.side.hot";
          case COLD -> "comparison.side.cold";
          case HANDMADE -> "comparison.side.handmade";
          case KEG -> "comparison.side.keg";
        },
        jobs,
        horses);
  }

  /** All jobs were of this way. */
  static Message only(Way way, Message title, long jobs) {
    return Message.of(
        switch (way) {
          case HOT -> "comparison.only.hot";
          case COLD -> "comparison.only.cold";
          case HANDMADE -> "comparison.only.handmade";
          case KEG -> "comparison.only.keg";
        },
        title,
        jobs);
  }

  /** So many more jobs of this way would tell, within a sentence. */
  static Message moreWouldTell(Way way, int jobs) {
    return Message.of(
        switch (way) {
          case HOT -> "comparison.more.hot";
          case COLD -> "comparison.more.cold";
          case HANDMADE -> "comparison.more.handmade";
          case KEG -> "comparison.more.keg";
        },
        jobs);
  }

  /** The same as a sentence. */
  static Message moreWouldTellSentence(Way way, int jobs) {
    return Message.of(
        switch (way) {
          case HOT -> "comparison.more.hot.sentence";
          case COLD -> "comparison.more.cold.sentence";
          case HANDMADE -> "comparison.more.handmade.sentence";
          case KEG -> "comparison.more.keg.sentence";
        },
        jobs);
  }

  /** The heading of a column of jobs. */
  static Message jobs(Way way) {
    return Message.of(
        switch (way) {
          case HOT -> "comparison.jobs.hot";
          case COLD -> "comparison.jobs.cold";
          case HANDMADE -> "comparison.jobs.handmade";
          case KEG -> "comparison.jobs.keg";
        });
  }

  /** The heading of a column of means. */
  static Message mean(Way way) {
    return Message.of(
        switch (way) {
          case HOT -> "comparison.mean.hot";
          case COLD -> "comparison.mean.cold";
          case HANDMADE -> "comparison.mean.handmade";
          case KEG -> "comparison.mean.keg";
        });
  }

  /** The heading of a column of a sort's jobs. */
  static Message jobsOfSort(Way way) {
    return Message.of(
        switch (way) {
          case HOT -> "comparison.sorts.jobs.hot";
          case COLD -> "comparison.sorts.jobs.cold";
          case HANDMADE -> "comparison.sorts.jobs.handmade";
          case KEG -> "comparison.sorts.jobs.keg";
        });
  }

  /** The heading of a column of a sort's means. */
  static Message meanOfSort(Way way) {
    return Message.of(
        switch (way) {
          case HOT -> "comparison.sorts.mean.hot";
          case COLD -> "comparison.sorts.mean.cold";
          case HANDMADE -> "comparison.sorts.mean.handmade";
          case KEG -> "comparison.sorts.mean.keg";
        });
  }

  /** One text of two, by the question. */
  static String by(Question question, String hotKey, String handmadeKey) {
    return question == Question.HOT_WITH_COLD ? hotKey : handmadeKey;
  }
}
