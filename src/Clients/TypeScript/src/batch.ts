import type { CallOptions } from "./call.js";
import { problemOf } from "./problems.js";
import type { paths, Problem } from "./schema.js";

/** Names of the calculations, as in their paths. */
export type Calculation = {
  [Path in keyof paths]: Path extends `/v1/calculations/${infer Name}` ? (Name extends `${string}/${string}` ? never : Name) : never;
}[keyof paths];

type Asking<Name extends Calculation> = paths[`/v1/calculations/${Name}`] extends { post: infer Operation } ? Operation : never;

/** The question of a calculation. */
export type QuestionOf<Name extends Calculation> =
  Asking<Name> extends { requestBody: { content: { "application/json": infer Question } } } ? Question : never;

/** The answer of a calculation. */
export type ResultOf<Name extends Calculation> =
  Asking<Name> extends { responses: { 200: { content: { "application/json": infer Result } } } } ? Result : never;

/** The answer to one question of a batch: a result, or a problem with that question alone. */
export type BatchLine<Result> =
  | { readonly line: number; readonly result: Result; readonly problem?: never }
  | { readonly line: number; readonly problem: Problem; readonly result?: never };

/** Options of a batch. */
export interface BatchOptions extends CallOptions {
  /** Units of the answers. Default: those of each question. */
  readonly units?: "as-asked" | "metric" | "us" | undefined;
}

/** What sending a batch needs of the client. */
export interface BatchTransport {
  readonly address: string;
  readonly headers: Record<string, string>;
  readonly streamsBodies: boolean;
  readonly signal: AbortSignal | undefined;
  /** Sends a request whose body can be sent again. */
  readonly send: (request: Request) => Promise<Response>;
  /** Sends a request once. */
  readonly sendOnce: (request: Request) => Promise<Response>;
}

/** Sends questions as lines of JSON and gives their answers as they come, in the same order. */
export async function* runBatch<Result>(
  questions: Iterable<unknown> | AsyncIterable<unknown>,
  { address, headers, streamsBodies, signal, send, sendOnce }: BatchTransport,
): AsyncGenerator<BatchLine<Result>, void, undefined> {
  const stop = new AbortController();
  const forward = () => stop.abort(signal?.reason);
  signal?.addEventListener("abort", forward, { once: true });
  signal?.throwIfAborted();
  const source = new QuestionLines(questions);
  // A list is there already: sent whole, it can be sent again.
  const streams = streamsBodies && !Array.isArray(questions);
  let answered = 0;
  try {
    const request = new Request(address, {
      method: "POST",
      headers: { ...headers, "Content-Type": "application/x-ndjson", "Accept": "application/x-ndjson" },
      body: streams ? source.stream() : await source.blob(),
      signal: stop.signal,
      // Asked for by the fetch standard whenever a body is a stream; not yet known to the type.
      ...{ duplex: "half" },
    });
    const response = await (streams ? sendOnce : send)(request);
    if (!response.ok)
      throw problemOf(response, await response.json().catch(() => undefined));
    for await (const line of linesOf(response.body)) {
      answered++;
      yield JSON.parse(line) as BatchLine<Result>;
    }
  } catch (error) {
    throw source.failure ?? error;
  } finally {
    signal?.removeEventListener("abort", forward);
    stop.abort();
    source.stop();
  }
  if (answered < source.count)
    throw new Error(`The answer ended after ${answered} of ${source.count} lines. Send the rest again.`);
}

// Lines go out together while questions are ready at once, up to about this many characters.
const longestPiece = 16 * 1024;

/** Questions as NDJSON, one to a line. */
class QuestionLines {
  readonly #encoder = new TextEncoder();
  readonly #running: AsyncGenerator<string, void, undefined>;
  /** Questions taken so far. */
  count = 0;
  /** What the questions themselves threw, so that it is not taken for a failure of the network. */
  failure: unknown;

  constructor(questions: Iterable<unknown> | AsyncIterable<unknown>) {
    this.#running = this.#lines(questions);
  }

  // Questions are made when the network has room for them; one that is slow to come holds back none before it.
  stream(): ReadableStream<Uint8Array> {
    let coming: Promise<IteratorResult<string, void>> | undefined;
    return new ReadableStream({
      pull: async controller => {
        let piece = "";
        let turn: Promise<undefined> | undefined;
        for (let next = await (coming ?? this.#running.next()); !next.done; ) {
          piece += next.value;
          turn ??= nextTurn();
          coming = this.#running.next();
          // Should it fail before it is waited for, the failure is not lost: `#lines` keeps it.
          coming.catch(() => undefined);
          const ready = piece.length < longestPiece ? await Promise.race([coming, turn]) : undefined;
          if (ready === undefined)
            break;
          next = ready;
        }
        if (piece === "")
          controller.close();
        else
          controller.enqueue(this.#encoder.encode(piece));
      },
      cancel: () => this.stop(),
    });
  }

  async blob(): Promise<Blob> {
    const lines: string[] = [];
    for await (const line of this.#running)
      lines.push(line);
    return new Blob(lines);
  }

  /** Takes no more questions. Not every platform tells the stream of a request that the request has ended. */
  stop(): void {
    // Not waited for: a question that is just being made may take as long as it likes.
    this.#running.return().catch(() => undefined);
  }

  async *#lines(questions: Iterable<unknown> | AsyncIterable<unknown>): AsyncGenerator<string, void, undefined> {
    try {
      for await (const question of questions) {
        this.count++;
        yield `${JSON.stringify(question)}\n`;
      }
    } catch (error) {
      this.failure = error;
      throw error;
    }
  }
}

function nextTurn(): Promise<undefined> {
  return new Promise(resolve => setTimeout(resolve, 0));
}

async function* linesOf(body: ReadableStream<Uint8Array> | null): AsyncGenerator<string, void, undefined> {
  if (body === null)
    return;
  const reader = body.getReader();
  const decoder = new TextDecoder();
  let rest = "";
  for (let { done, value } = await reader.read(); !done; { done, value } = await reader.read()) {
    const lines = (rest + decoder.decode(value, { stream: true })).split("\n");
    rest = lines.pop()!;
    yield* lines.filter(line => line.trim() !== "");
  }
  if (rest.trim() !== "")
    yield rest;
}
