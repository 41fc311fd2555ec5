package clenchbook.workload.methods;

import clenchbook.texts.Message;
import clenchbook.workload.hours.Phrase;

/**
 * A published way of scoring work, and how far it may be trusted.
 *
 * @param name what it is called, as the reports and the figures name it
 * @param edition the paper, standard or regulation and its year
 * @param validRange the inputs for which it was stated; outside them nothing is computed
 * @param notCovered what it says nothing about
 */
public record Method(Phrase name, Message edition, Message validRange, Message notCovered) {

  /** Refuses a method that leaves one of its four statements out. */
  public Method {
    if (name.english().isBlank()
        || edition.isEmpty()
        || validRange.isEmpty()
        || notCovered.isEmpty()) {
      throw new IllegalArgumentException("a method states its name, edition, range and limits");
    }
  }
}
