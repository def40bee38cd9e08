import createClient, { type Client } from "openapi-fetch";
import { runBatch, type BatchLine, type BatchOptions, type Calculation, type QuestionOf, type ResultOf } from "./batch.js";
import type { Stored, Traits } from "./call.js";
import { ChangeFeed, type ChangeOptions } from "./changes.js";
import { newId } from "./ids.js";
import { keyShower } from "./keys.js";
import { operationTable, type Calls } from "./operations.js";
import { Pages, type Page } from "./pages.js";
import { problemOf } from "./problems.js";
import { sendWithRetries, usualRetries, type RetryRules } from "./retries.js";
import type { paths } from "./schema.js";

/** Settings of a client. */
export interface ClientOptions {
  /** The key that the service asks for. It goes to the address of the service and nowhere else. A service without keys takes requests from its own machine only. */
  readonly key?: string | undefined;
  /** Headers to send with every request. */
  readonly headers?: Record<string, string> | undefined;
  /** How often to try again when the service is busy or cannot be reached. */
  readonly retries?: Partial<RetryRules> | undefined;
  /** Sends requests in place of the platform's own `fetch`. */
  readonly fetch?: typeof globalThis.fetch | undefined;
  /** Send the questions of a batch while they are made. Default: everywhere but in browsers, which cannot over HTTP/1.1. */
  readonly streamsBodies?: boolean | undefined;
}

// The methods of Calls are made from the table of operations.
export interface CalibrationClient extends Calls {}

/**
 * The Calibration API: one method for each operation of the contract, by its name there. An answer that is not a success
 * is thrown as `ApiProblem`.
 */
export class CalibrationClient {
  /** The operations by path, as openapi-fetch offers them, with the same key, idempotency keys and retries: for other formats than JSON. */
  readonly http: Client<paths>;
  readonly #address: string;
  readonly #showKey: (request: Request) => void;
  readonly #headers: Record<string, string>;
  readonly #fetch: typeof globalThis.fetch;
  readonly #retries: RetryRules;
  readonly #streamsBodies: boolean;

  /** @param address Where the service is, for example `http://localhost:5000`. */
  constructor(address: string, { key, headers = {}, retries, fetch = globalThis.fetch, streamsBodies = !isBrowser() }: ClientOptions = {}) {
    this.#address = address.replace(/\/+$/, "");
    this.#showKey = keyShower(this.#address, key);
    this.#headers = headers;
    // A browser's fetch refuses to be called as a method of another object.
    this.#fetch = (...given) => fetch(...given);
    this.#retries = { ...usualRetries, ...retries };
    this.#streamsBodies = streamsBodies;
    this.http = createClient<paths>({ baseUrl: this.#address, headers, fetch: request => this.#send(request) });
    this.http.use({ onRequest: ({ request, schemaPath }) => withIdempotencyKey(request, schemaPath) });
    for (const [name, traits] of Object.entries(operationTable))
      Object.defineProperty(this, name, { value: (...given: unknown[]) => this.#call(traits, given) });
  }

  /**
   * Evaluates many questions in one request. Questions may be made while they are sent, and answers come in the same order
   * while the service works; a question that is refused gets a problem on its own line.
   */
  batch<Name extends Calculation>(
    calculation: Name,
    questions: Iterable<QuestionOf<Name>> | AsyncIterable<QuestionOf<Name>>,
    { units, signal }: BatchOptions = {},
  ): AsyncGenerator<BatchLine<ResultOf<Name>>, void, undefined> {
    return runBatch(questions, {
      address: `${this.#address}/v1/calculations/${calculation}/batch${units === undefined ? "" : `?units=${units}`}`,
      headers: this.#headers,
      streamsBodies: this.#streamsBodies,
      signal,
      send: request => this.#send(request),
      sendOnce: request => {
        this.#showKey(request);
        return this.#fetch(request);
      },
    });
  }

  /**
   * Hands out every stored change, each once and in the order in which it was stored, and waits for the next ones until you leave the
   * loop or abort the signal. A service that is away for a while is asked again from the same place.
   */
  followChanges(options: ChangeOptions = {}): ChangeFeed {
    return new ChangeFeed(after => this.listChanges({ ...options, after, wait: "20s" }), this.#retries, options);
  }

  #send(request: Request): Promise<Response> {
    this.#showKey(request);
    return sendWithRetries(request, this.#retries, this.#fetch);
  }

  #call(traits: Traits, given: unknown[]): unknown {
    const id = traits.takesId && given.shift();
    const body = traits.takesBody && given.shift();
    const { signal, idempotencyKey, ifMatch, ifNoneMatch, ...query } = (given[0] ?? {}) as GivenOptions;
    const ask = async (cursor?: string) => {
      const { data, error, response } = await this.#untyped.request(traits.method, traits.path, {
        params: { path: { id }, query: { ...query, cursor } },
        headers: { "Idempotency-Key": idempotencyKey, "If-Match": ifMatch, "If-None-Match": ifNoneMatch },
        ...(traits.takesBody && { body }),
        ...(signal && { signal }),
      });
      if (!response.ok && !(response.status === 304 && ifNoneMatch !== undefined))
        throw problemOf(response, error);
      return { data, response };
    };
    if (traits.givesPages)
      return new Pages(async cursor => (await ask(cursor)).data as Page<unknown>);
    return ask().then(({ data, response }) => traits.givesTag ? storedOf(traits, data, response) : data);
  }

  // The path is known only at run time here; Calls holds the types.
  get #untyped() {
    return this.http as unknown as {
      request(method: string, path: string, init: object): Promise<{ data?: unknown; error?: unknown; response: Response }>;
    };
  }
}

interface GivenOptions {
  readonly signal?: AbortSignal;
  readonly idempotencyKey?: string;
  readonly ifMatch?: string;
  readonly ifNoneMatch?: string;
}

const storingPaths = new Set(Object.values(operationTable).filter(traits => traits.takesKey).map(traits => traits.path));

// Every attempt is the same request, so every attempt has the same key.
function withIdempotencyKey(request: Request, path: string): void {
  if (request.method === "POST" && storingPaths.has(path) && !request.headers.has("Idempotency-Key"))
    request.headers.set("Idempotency-Key", `"${newId()}"`);
}

function storedOf(traits: Traits, record: unknown, response: Response): Stored<unknown> | undefined {
  if (response.status === 304)
    return undefined;
  const etag = response.headers.get("ETag") ?? "";
  const replayed = response.headers.get("Idempotent-Replayed") === "true";
  return { record, etag, replayed, ...(traits.givesEditable && { editable: editableOf(record) }) };
}

// A word that the service stored is one that it takes, though answers leave their lists of words open.
function editableOf(record: unknown): unknown {
  const { revision, createdAt, updatedAt, ...rest } = record as { [member: string]: unknown };
  return rest;
}

function isBrowser(): boolean {
  return "document" in globalThis || "WorkerGlobalScope" in globalThis;
}
