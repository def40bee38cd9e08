import { test } from "node:test";
import assert from "node:assert/strict";
import { ApiProblem, CalibrationClient } from "calibration-api-client";
import { json, problem, stub } from "./stub.mjs";

// The address in `next` is the one that the service knows itself by, which its callers may not reach.
const page = (items, cursor) => json(200, { items, ...(cursor && { next: `http://inside.example/v1/history?limit=2&machine=m&cursor=${cursor}` }) });

test("iterating follows the pages with the same question, at the caller's own address", async () => {
  const service = await stub(page([1, 2], "a+b"), page([3, 4], "c"), page([5]));
  try {
    const api = new CalibrationClient(`${service.address}/`);

    const items = [];
    for await (const item of api.listHistory({ machine: "m", limit: 2 }))
      items.push(item);

    assert.deepEqual(items, [1, 2, 3, 4, 5]);
    assert.deepEqual(service.asked.map(one => one.url), [
      "/v1/history?machine=m&limit=2", "/v1/history?machine=m&limit=2&cursor=a%20b", "/v1/history?machine=m&limit=2&cursor=c",
    ]);
  } finally {
    service.close();
  }
});

test("pages are asked for only when they are wanted", async () => {
  const service = await stub(page([1, 2], "a"), page([3, 4], "b"));
  try {
    for await (const item of new CalibrationClient(service.address).listScales())
      if (item === 2)
        break;

    assert.equal(service.asked.length, 1);
  } finally {
    service.close();
  }
});

test("a list can be iterated twice, by pages, and as a whole", async () => {
  const service = await stub(page([1], "a"), page([2]), page([1], "a"), page([2]));
  try {
    const list = new CalibrationClient(service.address).listScales();

    const pages = [];
    for await (const items of list.pages())
      pages.push(items);

    assert.deepEqual(pages, [[1], [2]]);
    assert.deepEqual(await list.all(), [1, 2]);
  } finally {
    service.close();
  }
});

test("a page that is refused is thrown where it is read", async () => {
  const service = await stub(page([1], "a"), json(400, problem(400, "cursor-invalid")));
  try {
    const items = [];
    await assert.rejects(async () => {
      for await (const item of new CalibrationClient(service.address).listScales())
        items.push(item);
    }, error => error instanceof ApiProblem && error.code === "cursor-invalid");

    assert.deepEqual(items, [1]);
  } finally {
    service.close();
  }
});
