// Changes of a running service, whose address is the argument. Prints what was seen.
import { CalibrationClient } from "calibration-api-client";

const [address] = process.argv.slice(2);
const api = new CalibrationClient(address);
const seen = {};

const all = [];
let page;
do {
  page = await api.listChanges({ limit: 50, after: page?.after });
  all.push(...page.items);
} while (page.next !== undefined);
seen.listed = [all.length > 50, all.every((change, i) => change.sequence === i + 1), all[0].what];

// Somebody stores while we wait.
const stored = [];
const writing = (async () => {
  for (let i = 0; i < 3; i++) {
    await new Promise(resolve => setTimeout(resolve, 100));
    stored.push((await api.createProduct({ name: `product ${i}` })).record.id);
  }
})();
const changes = api.followChanges({ after: page.after, kind: "product" });
const first = [];
for await (const change of changes) {
  first.push(change.id);
  if (first.length === 2)
    break;
}
await writing;

// As another program would that was given the cursor.
const rest = [];
for await (const change of new CalibrationClient(address).followChanges({ after: changes.after })) {
  rest.push(change.id);
  break;
}
seen.followed = [first.join() === stored.slice(0, 2).join(), rest.join() === stored[2]];
seen.refused = await api.listChanges({ after: "made-up" }).then(() => "no problem", problem => `${problem.status} ${problem.code}`);
console.log(JSON.stringify(seen));
