import type { InputErrorCode } from "miterwright/errors";
import { expect, test } from "vitest";

/** A wrong call: the whole message, the code, the path, and the call. */
export type Refusal = readonly [message: string, code: InputErrorCode, path: string, call: () => unknown];

/**
 * One test for each wrong call: it throws an InputError with exactly this message, code and path.
 *
 * @param rows - the wrong calls
 */
export function refuses(rows: readonly Refusal[]): void {
  test.each(rows)("%s", (message, code, path, call) => {
    expect(call).toThrow(expect.objectContaining({ name: "InputError", message, code, path }));
  });
}
