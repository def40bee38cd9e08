import { test } from "node:test";
import assert from "node:assert/strict";
import { inspect } from "node:util";
import { ApiProblem, CalibrationClient } from "calibration-api-client";
import { against, cut, json, problem, stub } from "./stub.mjs";

const key = "calk_invented";
const units = json(200, { units: [] });
const lines = response => response.writeHead(200, { "Content-Type": "application/x-ndjson" }).end('{"line":1,"result":{}}\n');
const shown = asked => asked.map(one => one.headers.authorization);

test("every sort of request shows the key", () => against([units, units, json(201, { id: "1" }, { ETag: '"r1"' }), lines, lines], async (api, asked) => {
  async function* made() {
    yield {};
  }

  await api.listUnits();
  await api.http.GET("/v1/units");
  await api.createScale({ name: "platform", division: { value: 20, unit: "g" } });
  for await (const line of api.batch("catch-test", [{}]))
    assert.equal(line.line, 1);
  for await (const line of api.batch("catch-test", made()))
    assert.equal(line.line, 1);

  assert.deepEqual(shown(asked), Array(5).fill(`Bearer ${key}`));
}, { key }));

test("a request that is sent again shows it once", () => against([cut, json(503, problem(503, "busy"), { "Retry-After": "0" }), units], async (api, asked) => {
  await api.listUnits();

  assert.deepEqual(shown(asked), Array(3).fill(`Bearer ${key}`));
}, { key, retries: { longestPause: 1 } }));

test("without a key nothing is shown", () => against([units], async (api, asked) => {
  await api.listUnits();

  assert.deepEqual(shown(asked), [undefined]);
}));

test("an authorization of the caller's own is kept", () => against([units], async (api, asked) => {
  await api.listUnits();

  assert.deepEqual(shown(asked), ["Basic b3duOm93bg=="]);
}, { key, headers: { Authorization: "Basic b3duOm93bg==" } }));

test("the next page is asked for at the caller's own address, wherever its link leads", async () => {
  const elsewhere = await stub(json(200, { items: [2] }));
  try {
    await against([json(200, { items: [1], next: `${elsewhere.address}/v1/keys?cursor=a` }), json(200, { items: [2] })], async (api, asked) => {
      assert.deepEqual(await api.listKeys({ limit: 1 }).all(), [1, 2]);

      assert.deepEqual(asked.map(one => one.url), ["/v1/keys?limit=1", "/v1/keys?limit=1&cursor=a"]);
      assert.deepEqual(shown(asked), Array(2).fill(`Bearer ${key}`));
      assert.deepEqual(elsewhere.asked, []);
    }, { key });
  } finally {
    elsewhere.close();
  }
});

test("a request that is led to another origin arrives without the key", async () => {
  const elsewhere = await stub(units);
  try {
    await against([response => response.writeHead(307, { Location: `${elsewhere.address}/v1/units` }).end()], async (api, asked) => {
      assert.deepEqual((await api.listUnits()).units, []);

      assert.deepEqual(shown(asked), [`Bearer ${key}`]);
      assert.deepEqual(shown(elsewhere.asked), [undefined]);
    }, { key });
  } finally {
    elsewhere.close();
  }
});

for (const [from, to, isShown] of [
  ["HTTPS://Service.Invalid:443/calibration/", "https://service.invalid/calibration", true],
  ["https://service.invalid", "https://service.invalid", true],
  ["https://service.invalid", "https://other.invalid", false],
  ["https://service.invalid", "http://service.invalid", false],
  ["https://service.invalid", "https://service.invalid:8443", false],
  ["https://service.invalid", "https://service.invalid.other.invalid", false],
  ["https://service.invalid", "https://service.invalid@other.invalid", false],
  ["https://service.invalid/calibration", "https://service.invalid/calibration-of-others", false],
  ["https://service.invalid/calibration", "https://service.invalid/calibration/..", false],
])
  test(`a client of ${from} ${isShown ? "shows" : "does not show"} its key at ${to}`, async () => {
    const asked = [];
    const fetch = async request => {
      asked.push(request.headers.get("Authorization"));
      return Response.json({ units: [] });
    };

    await new CalibrationClient(from, { key, fetch, retries: { attempts: 1 } }).http.GET("/v1/units", { baseUrl: to }).catch(() => undefined);

    // An address with a name in it is no address for fetch.
    assert.deepEqual(asked, to.includes("@") ? [] : [isShown ? `Bearer ${key}` : null]);
  });

for (const text of ["", " ", `${key}\n`, `Bearer ${key}`, `${key}é`])
  test(`${JSON.stringify(text)} is no key and is not repeated`, () => {
    assert.throws(() => new CalibrationClient("http://localhost:5000", { key: text }), error => error instanceof TypeError && !error.stack.includes(key));
  });

test("a client that is printed does not show its key", () => {
  assert.ok(!inspect(new CalibrationClient("http://localhost:5000", { key }), { depth: Infinity, showHidden: true }).includes(key));
});

for (const [status, code] of [[401, "key-revoked"], [403, "scope-missing"]])
  test(`status ${status} is a problem with its code, tried once and without the key`, () => against([json(status, problem(status, code))], async (api, asked) => {
    const thrown = await api.listKeys().all().catch(error => error);

    assert.ok(thrown instanceof ApiProblem);
    assert.deepEqual([thrown.status, thrown.code, asked.length], [status, code, 1]);
    assert.ok(!inspect(thrown).includes(key));
  }, { key }));
