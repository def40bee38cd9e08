import { test } from "node:test";
import assert from "node:assert/strict";
import { ApiProblem } from "calibration-api-client";
import { against, cut, json, problem } from "./stub.mjs";

const quick = { retries: { attempts: 1, longestPause: 1 } };
const page = (items, after) => json(200, { items: items.map(sequence => ({ sequence, cursor: `c${sequence}` })), after });

test("changes go on over broken connections and busy services, each once", () =>
  against(
    [page([1, 2], "c2"), cut, json(503, problem(503, "service-busy")), page([], "e"), page([3], "c3")],
    async (api, asked) => {
      const seen = [];
      for await (const change of api.followChanges({ kind: "plan", machine: "m", limit: 2 })) {
        seen.push(change.sequence);
        if (seen.length === 3)
          break;
      }

      assert.deepEqual(seen, [1, 2, 3]);
      const usual = "kind=plan&machine=m&limit=2";
      assert.deepEqual(asked.map(one => one.url.replace("/v1/changes?", "").split("&").sort().join("&")), [
        undefined, "c2", "c2", "c2", "e",
      ].map(after => `${usual}&wait=20s${after ? `&after=${after}` : ""}`.split("&").sort().join("&")));
    },
    quick,
  ));

test("the cursor behind the change at hand is there to be kept, and leads on after a restart", () =>
  against([page([1, 2], "c2"), page([2], "c2")], async (api, asked) => {
    const changes = api.followChanges();
    for await (const change of changes)
      if (change.sequence === 1)
        break;
    assert.equal(changes.after, "c1");

    for await (const change of api.followChanges({ after: changes.after })) {
      assert.equal(change.sequence, 2);
      break;
    }
    assert.ok(asked[1].url.includes("after=c1"), asked[1].url);
  }));

test("a cursor that is refused is thrown and not tried again", () =>
  against([json(410, problem(410, "database-restored"))], async (api, asked) => {
    await assert.rejects(async () => {
      for await (const change of api.followChanges({ after: "old" }))
        assert.fail(`${change.sequence}`);
    }, error => error instanceof ApiProblem && error.code === "database-restored");

    assert.equal(asked.length, 1);
  }));

test("waiting ends with the signal", () =>
  against([() => {}], async (api, asked) => {
    const ending = new AbortController();
    const waiting = (async () => {
      for await (const change of api.followChanges({ signal: ending.signal }))
        assert.fail(`${change.sequence}`);
    })();
    while (asked.length === 0)
      await new Promise(resolve => setTimeout(resolve, 5));
    ending.abort();

    await assert.rejects(waiting, { name: "AbortError" });
  }));
