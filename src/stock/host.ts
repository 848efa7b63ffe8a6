/** What the hosts of JavaScript have and the language itself has not. */
interface Host {
  readonly performance?: { readonly now: () => number };
  readonly setTimeout?: (callback: () => void, milliseconds: number) => unknown;
}

/** Reads a clock that nobody sets while it runs, where there is one. */
export function readClock(): number {
  return ((globalThis as Host).performance ?? Date).now();
}

/** Leaves the event loop a turn, where there is one. */
export function nextTurn(): Promise<void> {
  const { setTimeout: later } = globalThis as Host;
  return later === undefined ? Promise.resolve() : new Promise((resolve) => later(resolve, 0));
}
