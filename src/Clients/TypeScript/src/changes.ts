import { ApiProblem } from "./problems.js";
import { backOff, wait, type RetryRules } from "./retries.js";
import type { Calls } from "./operations.js";
import type { ChangeItem, ChangePage } from "./schema.js";

/** Which changes are wanted, and from where on. */
export type ChangeOptions = Omit<NonNullable<Parameters<Calls["listChanges"]>[0]>, "wait">;

/** Waits for changes, one request after another, without end: iterate over it. */
export class ChangeFeed implements AsyncIterable<ChangeItem> {
  readonly #read: (after: string | undefined) => Promise<ChangePage>;
  readonly #retries: RetryRules;
  readonly #signal: AbortSignal;
  #after: string | undefined;

  /** @param read Reads the page after a cursor, waiting for something to be there. */
  constructor(read: (after: string | undefined) => Promise<ChangePage>, retries: RetryRules, { after, signal }: ChangeOptions) {
    this.#read = read;
    this.#retries = retries;
    this.#signal = signal ?? new AbortController().signal;
    this.#after = after;
  }

  /**
   * The cursor behind the change that was handed out last. Store it together with what you did with that change, and give it to
   * `followChanges` after a restart: each change comes once. Undefined before the first answer of a feed from the beginning.
   */
  get after(): string | undefined {
    return this.#after;
  }

  async *[Symbol.asyncIterator](): AsyncGenerator<ChangeItem, void, undefined> {
    for (let failures = 0; ;) {
      let page: ChangePage;
      try {
        page = await this.#read(this.#after);
        failures = 0;
      } catch (error) {
        if (this.#signal.aborted || !isPassing(error))
          throw error;
        const asked = error instanceof ApiProblem ? error.retryAfter : undefined;
        await wait(asked === undefined ? Math.min(backOff(++failures) * 1000, this.#retries.longestPause) : asked * 1000, this.#signal);
        continue;
      }
      for (const change of page.items) {
        this.#after = change.cursor;
        yield change;
      }
      this.#after = page.after;
    }
  }
}

// A service that is away, busy or broken comes back; what it refuses, it refuses again.
function isPassing(error: unknown): boolean {
  return error instanceof ApiProblem ? error.status >= 500 || error.status === 408 || error.status === 429 : error instanceof TypeError;
}
