import { secondsUntilRetry } from "./problems.js";

/** How often and how long the client tries again when the service is busy or cannot be reached. */
export interface RetryRules {
  /** Attempts in all, the first one included. Default 4; 1 never tries again. */
  readonly attempts: number;
  /** Longest pause between two attempts, in milliseconds. Asked to wait longer, the client gives up at once, and its error
   * says how long to wait. Default 30 000. */
  readonly longestPause: number;
}

export const usualRetries: RetryRules = { attempts: 4, longestPause: 30_000 };

/** Sends a request again while the service is busy (429, 503) or, if that cannot do a thing twice, cannot be reached. */
export async function sendWithRetries(request: Request, rules: RetryRules, fetch: typeof globalThis.fetch): Promise<Response> {
  for (let attempt = 1; ; attempt++) {
    if (attempt >= rules.attempts)
      return fetch(request);
    let pause: number | undefined;
    try {
      const response = await fetch(request.clone());
      pause = isBusy(response, request) ? (secondsUntilRetry(response) ?? backOff(attempt)) * 1000 : undefined;
      if (pause === undefined || pause > rules.longestPause)
        return response;
      await response.body?.cancel();
    } catch (error) {
      if (request.signal.aborted || !canBeRepeated(request))
        throw error;
      pause = Math.min(backOff(attempt) * 1000, rules.longestPause);
    }
    await wait(pause, request.signal);
  }
}

// 409 with a time to wait: an earlier attempt with the same key is still being worked on.
function isBusy(response: Response, request: Request): boolean {
  return response.status === 429 || response.status === 503
    || (response.status === 409 && response.headers.has("Retry-After") && request.headers.has("Idempotency-Key"));
}

// When no answer came, the request may have been carried out. Twice is as good as once for whatever is only read or
// calculated, and for what carries a key.
function canBeRepeated(request: Request): boolean {
  return request.method === "GET" || request.headers.has("Idempotency-Key") || new URL(request.url).pathname.includes("/v1/calculations/");
}

// Half a second, one, two; a part of it at random, so that clients that failed together do not come back together.
export function backOff(attempt: number): number {
  return 0.25 * 2 ** attempt * (0.5 + Math.random() / 2);
}

export function wait(milliseconds: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    const stop = () => {
      clearTimeout(timer);
      reject(signal.reason);
    };
    const timer = setTimeout(() => {
      signal.removeEventListener("abort", stop);
      resolve();
    }, milliseconds);
    if (signal.aborted)
      stop();
    else
      signal.addEventListener("abort", stop, { once: true });
  });
}
