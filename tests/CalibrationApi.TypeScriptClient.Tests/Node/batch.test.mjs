import { test } from "node:test";
import assert from "node:assert/strict";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { ApiProblem } from "calibration-api-client";
import { against, json, problem } from "./stub.mjs";

// Answers each line as it comes.
const lineByLine = Object.assign(async (response, request) => {
  response.writeHead(200, { "Content-Type": "application/x-ndjson; charset=utf-8" });
  let line = 0;
  for await (const text of createInterface({ input: request })) {
    const { number } = JSON.parse(text);
    const answer = number < 0 ? { problem: problem(422, "number-out-of-range") } : { result: { twice: 2 * number } };
    if (!response.write(`${JSON.stringify({ line: ++line, ...answer })}\n`))
      await once(response, "drain");
  }
  response.end();
}, { reads: false });

const whole = (text, headers = {}) => response => response.writeHead(200, { "Content-Type": "application/x-ndjson", ...headers }).end(text);

async function collect(lines) {
  const all = [];
  for await (const line of lines)
    all.push(line);
  return all;
}

test("answers come while questions are still being made, in order", () => against([lineByLine], async (api, asked) => {
  const answered = [];
  let ahead = 0;
  async function* questions() {
    for (let number = 1; number <= 5; number++) {
      yield { number };
      // The next question waits until this one is answered: only a client that streams both ways gets to the end.
      while (answered.length < number)
        await new Promise(resolve => setTimeout(resolve, 5));
      ahead = Math.max(ahead, number - answered.length);
    }
  }

  for await (const { line, result } of api.batch("catch-test", questions()))
    answered.push([line, result.twice]);

  assert.deepEqual(answered, [[1, 2], [2, 4], [3, 6], [4, 8], [5, 10]]);
  assert.equal(ahead, 0);
  assert.equal(asked[0].url, "/v1/calculations/catch-test/batch");
  assert.equal(asked[0].headers["content-type"], "application/x-ndjson");
  assert.equal(asked[0].headers["accept"], "application/x-ndjson");
}));

test("a question that is refused has its problem on its own line", () => against([lineByLine], async api => {
  const lines = await collect(api.batch("catch-test", [{ number: 1 }, { number: -1 }, { number: 3 }], { units: "us" }));

  assert.deepEqual(lines.map(one => one.result?.twice ?? one.problem.errors[0].code), [2, "number-out-of-range", 6]);
}));

test("many questions pass through without being gathered", () => against([lineByLine], async api => {
  const many = 5_000;
  let made = 0;
  function* questions() {
    for (; made < many; made++)
      yield { number: made };
  }

  let answered = 0;
  for await (const { result } of api.batch("catch-test", questions()))
    assert.equal(result.twice, 2 * answered++);

  assert.equal(answered, many);
}));

test("lines are put together again wherever the network cuts them", () => against([async response => {
  response.writeHead(200, { "Content-Type": "application/x-ndjson" });
  for (const byte of Buffer.from('{"line":1,"result":{"twice":"zwölf"}}\n\n{"line":2,"result":{"twice":"€"}}')) {
    response.write(Buffer.of(byte));
    await new Promise(resolve => setImmediate(resolve));
  }
  response.end();
}], async api => {
  const lines = await collect(api.batch("catch-test", [{}, {}]));

  assert.deepEqual(lines.map(one => one.result.twice), ["zwölf", "€"]);
}));

test("a batch that is refused as a whole throws its problem", () => against([json(406, problem(406, "not-acceptable"))], async api => {
  await assert.rejects(collect(api.batch("catch-test", [{ number: 1 }])), error => error instanceof ApiProblem && error.code === "not-acceptable");
}));

test("a list of questions is sent again when the service is busy", () => against([
  json(503, problem(503, "busy"), { "Retry-After": "0" }), whole('{"line":1,"result":{}}\n'),
], async (api, asked) => {
  assert.equal((await collect(api.batch("catch-test", [{ number: 1 }]))).length, 1);

  assert.deepEqual(asked.map(one => one.body), ['{"number":1}\n', '{"number":1}\n']);
}));

test("an answer that ends too early is not taken for the whole", () => against([whole('{"line":1,"result":{}}\n')], async api => {
  await assert.rejects(collect(api.batch("catch-test", [{}, {}, {}])), /after 1 of 3 lines/);
}));

test("a connection that breaks off throws", () => against([response => {
  response.writeHead(200, { "Content-Type": "application/x-ndjson" });
  response.write('{"line":1,"result":{}}\n', () => response.destroy());
}], async api => {
  await assert.rejects(collect(api.batch("catch-test", [{}, {}])));
}));

test("what the questions themselves throw comes out", () => against([lineByLine], async api => {
  async function* broken() {
    yield { number: 1 };
    throw new RangeError("the file ended");
  }

  await assert.rejects(collect(api.batch("catch-test", broken())), { name: "RangeError", message: "the file ended" });
}));

test("whoever stops reading stops the questions too", () => against([lineByLine], async api => {
  let stopped;
  const ended = new Promise(resolve => { stopped = resolve; });
  async function* endless() {
    try {
      for (let number = 0; ; number++) {
        yield { number };
        await new Promise(resolve => setTimeout(resolve, 1));
      }
    } finally {
      stopped();
    }
  }

  for await (const { line } of api.batch("catch-test", endless()))
    if (line === 3)
      break;

  await ended;
}));

test("a signal ends a batch", () => against([lineByLine], async api => {
  const stop = new AbortController();
  async function* slow() {
    yield { number: 1 };
    await new Promise(() => undefined);
  }

  await assert.rejects(async () => {
    for await (const _ of api.batch("catch-test", slow(), { signal: stop.signal }))
      stop.abort(new Error("enough"));
  }, /enough/);
}));

test("where bodies cannot be streamed, the questions are gathered first", () => against([whole('{"line":1,"result":{}}\n{"line":2,"result":{}}\n')], async (api, asked) => {
  async function* questions() {
    yield { number: 1 };
    yield { number: 2 };
  }

  assert.equal((await collect(api.batch("catch-test", questions()))).length, 2);
  assert.equal(asked[0].body, '{"number":1}\n{"number":2}\n');
  assert.equal(asked[0].headers["content-length"], "26");
}, { streamsBodies: false }));
