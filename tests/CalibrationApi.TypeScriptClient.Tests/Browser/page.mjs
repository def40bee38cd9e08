// What a page of a caller does with the client: the addresses of the service come with the page's own.
import { ApiProblem, CalibrationClient, VersionConflict, newId, quantity } from "calibration-api-client";

const service = new URLSearchParams(location.search).get("service");
const api = new CalibrationClient(service);
const question = kilograms => ({
  scale: { division: quantity(0.02, "kg") },
  valueInForce: quantity(0.36, "kg/rev"),
  catches: [{ net: quantity(kilograms, "kg"), revolutions: quantity(40, "rev") }],
});

async function run() {
  const seen = {};
  seen.verdict = (await api.evaluateCatchTest(question(14.5))).verdict;

  const body = { id: newId(), name: "scale of a page", division: quantity(20, "g") };
  const created = await api.createScale(body);
  seen.etag = created.etag;
  seen.replayed = [created.replayed, (await api.createScale(body)).replayed];
  seen.unchanged = await api.getScale(body.id, { ifNoneMatch: created.etag }) === undefined;
  seen.note = (await api.replaceScale(body.id, { ...created.editable, note: "from a page" }, { ifMatch: created.etag })).record.note;
  const conflict = await api.replaceScale(body.id, created.editable, { ifMatch: created.etag }).catch(error => error);
  seen.conflict = conflict instanceof VersionConflict && conflict.code;

  const problem = await api.evaluateCatchTest({ ...question(14.5), catches: [] }).catch(error => error);
  seen.problem = problem instanceof ApiProblem && [problem.status, problem.pointer, problem.code];

  const sizes = [];
  for await (const items of api.listHistory({ limit: 20 }).pages())
    sizes.push(items.length);
  seen.pages = sizes.length > 2 && sizes.slice(0, -1).every(size => size === 20);
  const { response } = await api.http.GET("/v1/history", { params: { query: { limit: "20" } }, headers: { Accept: "text/csv" }, parseAs: "text" });
  seen.link = /rel="next"/.test(response.headers.get("Link"));

  seen.batch = [];
  async function* questions() {
    yield question(14.5);
    yield question(-1);
    yield question(15.2);
  }
  for await (const { line, result, problem } of new CalibrationClient(service).batch("catch-test", questions()))
    seen.batch.push(`${line} ${result?.verdict ?? problem.errors[0].code}`);
  return seen;
}

window.outcome = run().catch(error => ({ failure: String(error) }));
