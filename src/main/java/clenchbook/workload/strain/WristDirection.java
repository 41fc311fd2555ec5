package clenchbook.workload.strain;

/** Which way the wrist is bent during an effort. */
public enum WristDirection {
  /** Palm towards the forearm. */
  FLEXION,
  /** Back of the hand towards the forearm. */
  EXTENSION
}
