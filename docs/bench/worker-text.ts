import { WORKER_SCRIPT, WORKER_TEXT } from "./stock-messages.js";

/** The part of a browser's Trusted Types that is used. Without them addresses are plain texts. */
interface TrustedTypes {
  readonly createPolicy: (
    name: string,
    rules: { readonly createScriptURL: (address: string) => string },
  ) => { readonly createScriptURL: (address: string) => URL };
}

let makeAddress: ((address: string) => string | URL) | undefined;

/**
 * The address of our own script, as the page's policy asks for it. A policy is made once.
 *
 * @param address - where the script is
 * @returns the same, trusted
 */
export function scriptAddress(address: string): string | URL {
  if (makeAddress === undefined) {
    const { trustedTypes } = globalThis as { readonly trustedTypes?: TrustedTypes };
    const policy = trustedTypes?.createPolicy("stock-worker", { createScriptURL: (own) => own });
    makeAddress = (own) => policy?.createScriptURL(own) ?? own;
  }
  return makeAddress(address);
}

let text: Promise<string> | undefined;

/**
 * The text of the worker in which sticks are fitted. It comes when sticks are first fitted, as a script: a page that was opened as a file may load no worker and
 * no text from another file.
 *
 * @returns the text; rejected where the script is missing, after which it is asked for again
 */
export function workerText(): Promise<string> {
  text ??= new Promise<string>((resolve, reject) => {
    const script = document.createElement("script");
    script.src = scriptAddress(WORKER_SCRIPT) as string;
    script.onload = (): void => {
      resolve((globalThis as unknown as Record<string, string>)[WORKER_TEXT]!);
    };
    script.onerror = (): void => {
      text = undefined;
      script.remove();
      reject(new Error(`${WORKER_SCRIPT} was not loaded`));
    };
    document.head.append(script);
  });
  return text;
}
