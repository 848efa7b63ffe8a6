/** Work done in steps: it yields at each pause, so that its driver can look at the clock, and returns its result. */
export type Steps<T> = Generator<undefined, T>;

/** Pieces that are read, or layouts that are written, between two pauses: about a millisecond. */
export const RECORDS_BETWEEN_PAUSES = 1000;

/** Does the work to its end and returns its result. */
export function finish<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
