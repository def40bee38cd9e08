import { test } from "node:test";
import assert from "node:assert/strict";
import { ApiProblem, VersionConflict } from "calibration-api-client";
import { against, cut, json, problem } from "./stub.mjs";

const scale = { name: "platform", division: { value: 20, unit: "g" } };
const question = { scale: { division: { value: 20, unit: "g" } }, catches: [] };
const stored = json(201, { id: "1", revision: 1, createdAt: "a", updatedAt: "b", ...scale }, { ETag: '"r1"' });
const busy = (status, headers = { "Retry-After": "0" }) => json(status, problem(status, "busy"), headers);

for (const status of [429, 503]) {
  test(`status ${status} is tried again, a storing request with the same key`, () => against([busy(status), busy(status), stored], async (api, asked) => {
    const { record, etag } = await api.createScale(scale);

    assert.equal(record.id, "1");
    assert.equal(etag, '"r1"');
    const keys = asked.map(one => one.headers["idempotency-key"]);
    assert.equal(keys.length, 3);
    assert.match(keys[0], /^"[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}"$/);
    assert.deepEqual(new Set(keys).size, 1);
    assert.deepEqual(asked.map(one => JSON.parse(one.body)), [scale, scale, scale]);
  }));
}

test("two requests have two keys, and a key of the caller's own is kept", () => against([stored], async (api, asked) => {
  await api.createScale(scale);
  await api.createScale(scale);
  await api.createScale(scale, { idempotencyKey: "mine" });
  await api.http.POST("/v1/scales", { body: scale });

  const keys = asked.map(one => one.headers["idempotency-key"]);
  assert.equal(keys[2], "mine");
  assert.equal(new Set(keys).size, 4);
  assert.ok(keys.every(Boolean));
}));

test("a calculation stores nothing and has no key", () => against([json(200, { verdict: "keep" })], async (api, asked) => {
  await api.evaluateCatchTest(question);

  assert.equal(asked[0].headers["idempotency-key"], undefined);
}));

test("the attempts have an end", () => against([busy(503)], async (api, asked) => {
  const problem = await api.listUnits().catch(error => error);

  assert.ok(problem instanceof ApiProblem);
  assert.equal(problem.status, 503);
  assert.equal(problem.retryAfter, 0);
  assert.equal(asked.length, 3);
}, { retries: { attempts: 3 } }));

test("a longer wait than allowed is not waited for", () => against([busy(429, { "Retry-After": "3600" })], async (api, asked) => {
  const problem = await api.listUnits().catch(error => error);

  assert.equal(problem.retryAfter, 3600);
  assert.match(problem.message, / The service asks to wait 3600 s before the next try\.$/);
  assert.equal(asked.length, 1);
}));

test("Retry-After may be a date", () => against([busy(429, { "Retry-After": new Date(0).toUTCString() }), json(200, { units: [] })], async (api, asked) => {
  assert.deepEqual((await api.listUnits()).units, []);
  assert.equal(asked.length, 2);
}));

test("an answer that was lost is asked for again with the same key", () => against([cut, stored], async (api, asked) => {
  const { record } = await api.createScale(scale);

  assert.equal(record.id, "1");
  assert.equal(asked[0].headers["idempotency-key"], asked[1].headers["idempotency-key"]);
}, { retries: { longestPause: 1 } }));

test("an attempt that meets the first one still at work waits for its answer", () => against([busy(409), stored], async (api, asked) => {
  await api.createScale(scale);

  assert.equal(asked.length, 2);
}));

test("a replacement whose answer was lost is not repeated, because it may have been made", () => against([cut, stored], async (api, asked) => {
  await assert.rejects(api.replaceScale("1", scale, { ifMatch: '"r1"' }), TypeError);

  assert.equal(asked.length, 1);
  assert.equal(asked[0].headers["if-match"], '"r1"');
}));

for (const status of [400, 404, 409, 412, 422, 500]) {
  test(`status ${status} is not tried again`, () => against([json(status, problem(status, "code-of-it"))], async (api, asked) => {
    const thrown = await api.getScale("1").catch(error => error);

    assert.equal(asked.length, 1);
    assert.ok(thrown instanceof ApiProblem);
    assert.equal(thrown instanceof VersionConflict, status === 412);
    assert.equal(thrown.status, status);
    assert.equal(thrown.code, "code-of-it");
    assert.equal(thrown.sentence, "It cannot be done.");
    assert.equal(thrown.traceId, "trace");
  }));
}

test("an answer that is no problem of the service is thrown with its status", () => against([response => response.writeHead(502).end("<html>Bad gateway")], async api => {
  const thrown = await api.listUnits().catch(error => error);

  assert.equal(thrown.status, 502);
  assert.equal(thrown.code, undefined);
  assert.match(thrown.message, /502/);
}));

test("a signal ends a call", async () => {
  const stop = new AbortController();
  await against([() => stop.abort(new Error("enough"))], async api => {
    await assert.rejects(api.listUnits({ signal: stop.signal }), /enough/);
  });
});

test("a signal ends the wait between two attempts", async () => {
  const stop = new AbortController();
  const waits = response => {
    busy(503, { "Retry-After": "25" })(response);
    response.on("close", () => setTimeout(() => stop.abort(new Error("enough")), 50));
  };
  await against([waits], async (api, asked) => {
    await assert.rejects(api.listUnits({ signal: stop.signal }), /enough/);

    assert.equal(asked.length, 1);
  });
});
