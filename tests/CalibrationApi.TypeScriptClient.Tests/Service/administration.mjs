// Workspaces, keys and audit of a running service, whose address and key are the arguments. Prints what was seen.
import { CalibrationClient, VersionConflict, newId } from "calibration-api-client";

const [address, key] = process.argv.slice(2);
const api = new CalibrationClient(address, { key });
const codeOf = async promise => promise.then(() => "no problem", problem => `${problem.status} ${problem.code}`);
const seen = {};

const id = newId();
const request = { id, name: "yard tablet", scopes: ["calculate", "read"] };
const made = await api.createKey(request);
const again = await api.createKey(request);
seen.made = [made.record.key.startsWith(made.record.start), made.replayed, again.record.key === undefined, again.replayed];

const tablet = new CalibrationClient(address, { key: made.record.key });
seen.may = [(await tablet.listMachines().all()).length > 0, await codeOf(tablet.createWorkspace({ name: "none" })), await codeOf(tablet.listKeys().all())];
seen.none = await codeOf(new CalibrationClient(address).listMachines().all());

const read = await api.getKey(id);
seen.read = [read.record.state, await api.getKey(id, { ifNoneMatch: read.etag }) === undefined];
const successor = (await api.rotateKey(id, { until: new Date(Date.now() + 60_000).toISOString() })).record;
seen.rotated = [successor.replaces === id, successor.key.startsWith(successor.start)];
const ended = (await api.revokeKey(id, { reason: "The tablet was lost." })).record;
seen.revoked = [ended.state, ended.revokedBecause, await codeOf(tablet.listMachines().all())];
const keys = [];
for await (const page of api.listKeys({ limit: 1 }).pages())
  keys.push(page.map(one => one.name));
seen.keys = keys;

const workspace = await api.createWorkspace({ name: "Ottermere farm" });
const first = (await api.createKeyOfWorkspace(workspace.record.id, { name: "first administrator", scopes: ["admin", "read"] })).record;
const inside = new CalibrationClient(address, { key: first.key });
seen.inside = [await inside.listMachines().all(), (await inside.listAudit().all()).map(one => one.action)];
const renamed = await api.replaceWorkspace(workspace.record.id, { ...workspace.editable, retired: true }, { ifMatch: workspace.etag });
const late = await api.replaceWorkspace(workspace.record.id, workspace.editable, { ifMatch: workspace.etag }).catch(error => error);
seen.workspaces = [renamed.record.revision, late instanceof VersionConflict, (await api.listWorkspaces().all()).length, (await api.listWorkspaces({ includeRetired: true, limit: 1 }).all()).length];

seen.audit = (await api.listAudit({ order: "oldest-first", limit: 2, action: "revokeKey" }).all()).map(one => one.target === `/v1/keys/${id}`);
// Counted by day, so one code can come twice around midnight.
seen.refusals = [...new Set((await api.listRefusals({ limit: 1 }).all()).map(one => one.code))].sort();
seen.withoutKey = [...new Set((await api.listRefusalsWithoutKey({ limit: 1 }).all()).map(one => one.code))];
console.log(JSON.stringify(seen));
