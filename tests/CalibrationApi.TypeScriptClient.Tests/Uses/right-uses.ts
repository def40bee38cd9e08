// Uses of the client that have to compile.
import { numberIn, CalibrationClient, quantity, type CatchTestRequest, type MassQuantity, type ScaleRequest } from "calibration-api-client";

const api = new CalibrationClient("http://localhost:5000", { retries: { attempts: 2 } });
const signal = AbortSignal.timeout(1000);

const spoken: MassQuantity = quantity(12.5, "lb");
const written: MassQuantity = { value: 12.5, unit: "lb" };
const question: CatchTestRequest = {
  scale: { division: { value: 0.02, unit: "kg" } },
  catches: [{ net: spoken, revolutions: quantity(40, "rev") }, { net: written, turns: { value: 20, unit: "rev" } }],
};
const mass: number = (await api.evaluateCatchTest(question, { units: "us", signal })).massPerRevolution.value;

const created = await api.createScale({ name: "platform", division: quantity(20, "g") }, { idempotencyKey: "a key", signal });
const body: ScaleRequest = { ...created.editable, retired: true };
await api.replaceScale(created.record.id, body, { ifMatch: created.etag });
const unchanged: undefined | { etag: string } = await api.getScale(created.record.id, { ifNoneMatch: created.etag });
const read: { etag: string } = await api.getScale(created.record.id);
const note: string | undefined = (await api.getPlan("id", { units: "metric" })).editable.note;

for await (const item of api.listHistory({ verdict: "adopt", limit: 50, signal }))
  console.log(item.occurredAt, mass, unchanged, read, note);
for await (const line of api.batch("catch-test", [question], { signal }))
  console.log(line.line, line.problem ? line.problem.detail : line.result.verdict);
const changes = api.followChanges({ kind: "catch-test", machine: "id", after: undefined, signal });
for await (const change of changes)
  console.log(change.what, change.sequence, changes.after);
const page: string = (await api.listChanges({ wait: "20s", limit: 10 })).after;
console.log(page);
const csv: string | undefined = (await api.http.GET("/v1/history", { headers: { Accept: "text/csv" }, parseAs: "text" })).data;
console.log(csv);

const keyed = new CalibrationClient("http://localhost:5000", { key: "calk_invented" });
const made = await keyed.createKey({ name: "yard tablet", scopes: ["calculate", "read"] }, { idempotencyKey: "a key", signal });
const text: string | undefined = made.record.key;
const successor: string | undefined = (await keyed.rotateKey(made.record.id, { until: "2026-12-31T18:00:00Z" })).record.key;
const ended: string | undefined = (await keyed.revokeKey(made.record.id, { reason: "Lost." })).record.revokedBecause;
const workspace = await keyed.createWorkspace({ name: "Ottermere farm" });
await keyed.replaceWorkspace(workspace.record.id, { ...workspace.editable, retired: true }, { ifMatch: workspace.etag });
const first: string | undefined = (await keyed.createKeyOfWorkspace(workspace.record.id, { name: "first", scopes: ["admin"] })).record.key;
for await (const entry of keyed.listAudit({ key: made.record.id, action: "createScale", order: "oldest-first", limit: 50 }))
  console.log(entry.at, entry.target, text, successor, ended, first);

export const pounds: number = numberIn(quantity(18.7, "kg"), "lb");
