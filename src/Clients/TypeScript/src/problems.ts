import type { Problem, ProblemError } from "./schema.js";

/** The service refused a request or failed. Decide by `code`; show `sentence`. */
export class ApiProblem extends Error {
  /** The HTTP status. */
  readonly status: number;
  /** Every error found, each with its place, code and sentence. Empty when something before the service answered. */
  readonly errors: readonly ProblemError[];
  /** Name of the request in the service's log. */
  readonly traceId: string | undefined;
  /** Seconds after which the service wants to be asked again. */
  readonly retryAfter: number | undefined;

  constructor(status: number, problem: Problem | undefined, retryAfter?: number) {
    const told = problem ? messageOf(problem) : `The service answered with status ${status} and no explanation.`;
    super(retryAfter === undefined ? told : `${told} The service asks to wait ${Math.ceil(retryAfter)} s before the next try.`);
    this.name = new.target.name;
    this.status = status;
    this.errors = problem?.errors ?? [];
    this.traceId = problem?.traceId;
    this.retryAfter = retryAfter;
  }

  /** Stable code of the first error. */
  get code(): string | undefined {
    return this.errors[0]?.code;
  }

  /** Where in the body the first error is, as a JSON pointer such as `#/catches/0/net`. */
  get pointer(): string | undefined {
    return this.errors[0]?.pointer;
  }

  /** What is wrong and what to do about it. */
  get sentence(): string {
    return this.errors[0]?.detail ?? this.message;
  }
}

/** The record was changed since it was read (status 412). Read it again, make the change anew, and replace that revision. */
export class VersionConflict extends ApiProblem {}

/** The problem that an answer tells of. */
export function problemOf(response: Response, body: unknown): ApiProblem {
  const kind = response.status === 412 ? VersionConflict : ApiProblem;
  return new kind(response.status, isProblem(body) ? body : undefined, secondsUntilRetry(response));
}

/** What Retry-After says, in seconds; it is a number of them or a date. */
export function secondsUntilRetry(response: Response): number | undefined {
  const text = response.headers.get("Retry-After");
  if (text === null)
    return undefined;
  const seconds = /^\d+$/.test(text) ? Number(text) : (Date.parse(text) - Date.now()) / 1000;
  return Number.isNaN(seconds) ? undefined : Math.max(0, seconds);
}

function isProblem(body: unknown): body is Problem {
  return typeof body === "object" && body !== null && "detail" in body && "errors" in body && Array.isArray(body.errors);
}

function messageOf(problem: Problem): string {
  const errors = problem.errors.filter(error => error.detail !== problem.detail)
    .map(error => [error.pointer ?? error.parameter ?? error.header, error.detail].filter(Boolean).join(": "));
  return [problem.detail, ...errors].join(" ");
}
