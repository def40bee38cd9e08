// Made from openapi/v1.json by `npm run generate`. Never edit it by hand.

import type { Call, Traits } from "./call.js";

/** The operations of the contract that ask and answer in JSON, each a method. */
export interface Calls {
  /**
   * Lists what was done in the workspace, and with which key.
   *
   * Whatever was stored or changed, and the first export of a list by a key in an hour; other reading is not listed. Entries are only ever added. Page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listAudit: Call<"listAudit">;
  /**
   * Counts the requests with keys of the workspace that were turned away.
   *
   * By day, page by page; follow the next link. Counted and not listed one by one, so that nobody fills the disk by being turned away; kept for 400 days.
   */
  listRefusals: Call<"listRefusals">;
  /**
   * Counts the requests without a known key that were turned away.
   *
   * Of the whole installation, because such a request belongs to no workspace. By day, page by page; follow the next link. Counted and not listed one by one, so that nobody fills the disk by being turned away; kept for 400 days.
   */
  listRefusalsWithoutKey: Call<"listRefusalsWithoutKey">;
  /**
   * Finds the bulk density of a product and how sure it is.
   *
   * From weighings of a known volume, a filled tank, a test weight or a stated number: the density with its interval, in every unit, beside the published densities of its material. A density far from them is challenged, a measured one never replaced. With nothing but a reference it gives a published value to start from. On wish what a tank holds and how far that goes. Nothing is stored.
   */
  evaluateBulkDensity: Call<"evaluateBulkDensity">;
  /**
   * Plans a catch test of one or several meters.
   *
   * For each meter: how much to catch and which bound acts, revolutions, run time, meter speed against its limits, container fill, and how many catches the wanted precision takes; for the common run: when to stop which meter, the steps with their dependencies, and the cautions. Nothing is stored.
   */
  planCatch: Call<"planCatch">;
  /**
   * Evaluates a catch test.
   *
   * From one or more catches: the mass per revolution with its uncertainty, whether the catches agree, what has changed against the value in force, and what to do now. Nothing is stored; the same question always gets the same answer.
   */
  evaluateCatchTest: Call<"evaluateCatchTest">;
  /**
   * Lists catch tests.
   *
   * By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
   */
  listCatchTests: Call<"listCatchTests">;
  /**
   * Records a catch test.
   *
   * Machine, product, lot, scale and plan come from their records, the repeatability, the day-to-day component, the error of the scale and the value in force from the history where it has them; the answer says what was used. The test is kept with its full question, so that it can be evaluated again at any time. A wrong test is superseded by another with a reason. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
   */
  recordCatchTest: Call<"recordCatchTest">;
  /**
   * Reads a stored catch test.
   *
   * As entered, as asked and as answered then, with what came to light since. Quantities come in other units on request; sentences stay as written.
   */
  getCatchTest: Call<"getCatchTest">;
  /**
   * Evaluates a stored catch test again and says whether anything differs.
   *
   * The stored question goes through the engine as it is now; every value is compared with the stored answer. Nothing is changed.
   */
  recomputeCatchTest: Call<"recomputeCatchTest">;
  /**
   * Lists every stored change, in the order in which it was stored.
   *
   * What was described, changed, recorded or superseded, whenever it happened: what was entered offline on Sunday and arrived on Tuesday stands at its place of Tuesday. Whoever reads on from the after of the last page sees each change once and misses none; wait=20s holds the request until there is one. Keys and workspaces are not listed. What was stored before the service kept this list stands at its beginning, in the order in which it was received, with the creation and the last change of what is described. Page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listChanges: Call<"listChanges">;
  /**
   * Lists every code with its cause and what to do.
   *
   * The stable codes of errors, refusals, findings, reasons and cautions, each with its cause, its remedy, and the statuses or severities that it comes with: for translations and for help inside a client. People read the same at `/reference/codes`. Within v1 codes are only added.
   */
  listCodes: Call<"listCodes">;
  /**
   * Lists every container.
   *
   * In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listContainers: Call<"listContainers">;
  /**
   * Creates a container.
   *
   * Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
   */
  createContainer: Call<"createContainer", "replaceContainer">;
  /**
   * Reads a container.
   *
   * As entered, with its revision. If-None-Match with the ETag saves the transfer.
   */
  getContainer: Call<"getContainer", "replaceContainer">;
  /**
   * Describes a container anew, or retires it.
   *
   * The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
   */
  replaceContainer: Call<"replaceContainer", "replaceContainer">;
  /**
   * Evaluates the runs of a distance sensor over a measured course.
   *
   * From one or more runs: pulses per distance and the rolling circumference with their uncertainty, slip against reference runs, ground speed, the width that passes really cover, what wrong numbers in the controller do to the rate, and what to type in. Nothing is stored.
   */
  evaluateDistanceSensor: Call<"evaluateDistanceSensor">;
  /**
   * Finds the turns of a drive wheel for areas, and evaluates turn tests.
   *
   * For ground-driven machines: how often to turn the drive wheel for an area, what has to fall meanwhile in all and from each outlet, the rate that turn tests give with its uncertainty, whether it is close enough to its target, a first correction of the setting, and outlets that differ from the others. Nothing is stored.
   */
  evaluateDriveWheelTurns: Call<"evaluateDriveWheelTurns">;
  /**
   * Finds which displacement per revolution a metering element needs, and which element at hand comes nearest.
   *
   * The displacements with which the meter stays inside its speeds at every rate and ground speed, and the part of them that does so with the wanted probability, for density and fill efficiency are only roughly known. Where no displacement serves, the answer says what would: a narrower range of speeds or rates, or several elements. Elements at hand come best first. Where the mass per revolution of an element was measured, ask `meter-speed`. No verdict: only a catch test says what a meter delivers. Nothing is stored.
   */
  evaluateElementFit: Call<"evaluateElementFit">;
  /**
   * Lists everything that happened.
   *
   * By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
   */
  listHistory: Call<"listHistory">;
  /**
   * Lists the keys of the workspace.
   *
   * Those that have ended too, in the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listKeys: Call<"listKeys">;
  /**
   * Makes a key for this workspace.
   *
   * The text of the key is in the answer once and is stored nowhere. If that answer is lost, revoke the key and make another.
   */
  createKey: Call<"createKey">;
  /**
   * Reads a key.
   *
   * Everything but its text, which nobody keeps.
   */
  getKey: Call<"getKey">;
  /**
   * Makes a key that takes the place of another.
   *
   * The new key has the name and the scopes of the old one, which goes on until the stated instant, so that every client can change over in between. The text of the new key is in the answer once and is stored nowhere.
   */
  rotateKey: Call<"rotateKey">;
  /**
   * Revokes a key.
   *
   * It opens nothing from the next request on. A key stays revoked; to go on, make another.
   */
  revokeKey: Call<"revokeKey">;
  /**
   * Lists every lot of a product.
   *
   * In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listLots: Call<"listLots">;
  /**
   * Creates a lot of a product.
   *
   * Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
   */
  createLot: Call<"createLot", "replaceLot">;
  /**
   * Reads a lot of a product.
   *
   * As entered, with its revision. If-None-Match with the ETag saves the transfer.
   */
  getLot: Call<"getLot", "replaceLot">;
  /**
   * Describes a lot of a product anew, or retires it.
   *
   * The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
   */
  replaceLot: Call<"replaceLot", "replaceLot">;
  /**
   * Lists every machine with its meters.
   *
   * In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listMachines: Call<"listMachines">;
  /**
   * Creates a machine with its meters.
   *
   * Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
   */
  createMachine: Call<"createMachine", "replaceMachine">;
  /**
   * Reads a machine with its meters.
   *
   * As entered, with its revision. If-None-Match with the ETag saves the transfer.
   */
  getMachine: Call<"getMachine", "replaceMachine">;
  /**
   * Describes a machine with its meters anew, or retires it.
   *
   * The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
   */
  replaceMachine: Call<"replaceMachine", "replaceMachine">;
  /**
   * Finds meter speeds, windows and the best metering element.
   *
   * For each metering element: its speed at the lowest and highest rate and ground speed, the ground speeds at which each rate can be put down, the rates that can be put down at each ground speed, and how much room is left to its limits. Elements come best first. Nothing is stored.
   */
  evaluateMeterSpeed: Call<"evaluateMeterSpeed">;
  /**
   * Finds what a new lot or treatment changes, and whether to test.
   *
   * The rate for the same seeds per area from the new kernel mass; the mass per revolution predicted by the ratio of bulk densities; whether to test now, at the next fill or not at all; and what is sown if nothing is changed. The rule: test now when a density is unknown, or when the value in force is within the tolerance of the truth with a probability under 0.80; no test when lot, treatment and density are the same and that probability is 0.95 or more; otherwise test at the next fill. Nothing is stored.
   */
  evaluateNewLot: Call<"evaluateNewLot">;
  /**
   * Computes the catch plan of a stored plan.
   *
   * Machine, products, lots, scale and container come from their records, the mass per revolution from the value in force, from the plan's start value where none is, else from the volume of the element and the bulk density. Computed anew with each call; nothing is stored.
   */
  planCatchOfPlan: Call<"planCatchOfPlan">;
  /**
   * Computes rates and set-up of a stored plan.
   *
   * One view of the field before the first catch: rates from the stand, the lot and the nutrients wanted; whether each element reaches its rate at the planned ground speeds; area per hour; where the fan may stand; what is placed with the seed against published limits; and what a new lot means for the value in force. What cannot be computed yet is listed under missing, with what to add; the rest is answered all the same. Computed anew with each call; nothing is stored.
   */
  setUpOfPlan: Call<"setUpOfPlan">;
  /**
   * Lists every plan for a field.
   *
   * In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listPlans: Call<"listPlans">;
  /**
   * Creates a plan for a field.
   *
   * Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
   */
  createPlan: Call<"createPlan", "replacePlan">;
  /**
   * Reads a plan for a field.
   *
   * As entered, with its revision. If-None-Match with the ETag saves the transfer.
   */
  getPlan: Call<"getPlan", "replacePlan">;
  /**
   * Describes a plan for a field anew, or retires it.
   *
   * The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
   */
  replacePlan: Call<"replacePlan", "replacePlan">;
  /**
   * Finds the rates of products that supply the nutrients wanted.
   *
   * The rates that meet every target at the least cost, or the least total mass where there are no prices, after credits and fixed rates are taken off: what each product supplies, what remains over, what it costs, packages over an area. Among equal costs the least mass is taken, then earlier products before later ones. Where the targets cannot be met, the nearest rates: limits (at-most, most) are kept as far as they can be, then the sum over all targets of what is missing, or for exact targets too much, each divided by its target, is least; findings say why. Nothing is stored.
   */
  evaluateProductRate: Call<"evaluateProductRate">;
  /**
   * Lists every product.
   *
   * In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listProducts: Call<"listProducts">;
  /**
   * Creates a product.
   *
   * Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
   */
  createProduct: Call<"createProduct", "replaceProduct">;
  /**
   * Reads a product.
   *
   * As entered, with its revision. If-None-Match with the ETag saves the transfer.
   */
  getProduct: Call<"getProduct", "replaceProduct">;
  /**
   * Describes a product anew, or retires it.
   *
   * The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
   */
  replaceProduct: Call<"replaceProduct", "replaceProduct">;
  /**
   * Lists checks of scales.
   *
   * By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
   */
  listScaleChecks: Call<"listScaleChecks">;
  /**
   * Records a check of a scale against known masses.
   *
   * The span error found corrects later catch tests on that scale, and its uncertainty takes the place of the scale's limit. After a failed check, tests since the last good one say so when they are read. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
   */
  recordScaleCheck: Call<"recordScaleCheck">;
  /**
   * Reads a check of a scale.
   *
   * As entered and as evaluated then.
   */
  getScaleCheck: Call<"getScaleCheck">;
  /**
   * Lists every scale.
   *
   * In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listScales: Call<"listScales">;
  /**
   * Creates a scale.
   *
   * Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
   */
  createScale: Call<"createScale", "replaceScale">;
  /**
   * Reads a scale.
   *
   * As entered, with its revision. If-None-Match with the ETag saves the transfer.
   */
  getScale: Call<"getScale", "replaceScale">;
  /**
   * Describes a scale anew, or retires it.
   *
   * The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match.
   */
  replaceScale: Call<"replaceScale", "replaceScale">;
  /**
   * Compares fertilizer placed with the seed with published limits.
   *
   * The share of the seedbed that is used, the nutrients that lie with the seed in the worst zone, and every limit that is held for the crop and the region, with its source, year, place and conditions. A limit is used for its own crop, soil, moisture, opener and place only; where a source prints no number, there is none here. Where sources differ, all are shown and the stricter one leads. No answer says that a load is safe: local guidance, the product label and a licensed adviser go first. Nothing is stored.
   */
  evaluateSeedRowLimit: Call<"evaluateSeedRowLimit">;
  /**
   * Finds the seeding rate for a stand, or the stand of a rate.
   *
   * From plants per area, seeds per area, seeds in a length of row, or a mass per area: all the others, with seeds per length of row, packages and cost. Units are exact; a rate made by dividing by 10 can be compared. What is unusual for the crop is said with the published range. Nothing is stored.
   */
  evaluateSeedingRate: Call<"evaluateSeedingRate">;
  /**
   * Evaluates a stand count.
   *
   * From plants counted along rows, in frames or in hoops: plants per area with an interval that also holds for few and for clumped counts, how the counts scatter, how many of them a wanted precision takes, and which share of the seeds came up, with germination and without. Nothing is stored.
   */
  evaluateStandCount: Call<"evaluateStandCount">;
  /**
   * Finds the rate that reaches a minimum stand with a wanted probability.
   *
   * Emergence differs from season to season, and germination, kernel mass and metering are known only so well. The answer has the rate that reaches the minimum stand all the same with the wanted probability, what its margin costs, and how probable the minimum stand is at a rate of your own. Nothing is stored.
   */
  evaluateStandRisk: Call<"evaluateStandRisk">;
  /**
   * Lists every unit with its exact factor.
   *
   * The closed list of units that payloads take, by dimension, each with its exact factor to SI as a ratio of two whole numbers and its codes in UCUM, UN/ECE Recommendation 20 and AgGateway ADAPT where they have one.
   */
  listUnits: Call<"listUnits">;
  /**
   * Lists adoptions.
   *
   * By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
   */
  listAdoptions: Call<"listAdoptions">;
  /**
   * Adopts a value.
   *
   * From its time on, the value is in force for its meter, element, setting and product, until a later one is adopted. The number is stored as typed in. Of two values adopted for the same time the one received last is in force; both stay on record. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
   */
  adoptValue: Call<"adoptValue">;
  /**
   * Reads an adoption.
   *
   * As entered, with the mass per revolution that follows and with what came to light since.
   */
  getAdoption: Call<"getAdoption">;
  /**
   * Lists the values in force on a machine.
   *
   * For each meter, element, setting and product with an adopted value: the number in the controller, since when, by whom and why, with which lot and treatment it was found, and what it rests on. A correction of the test behind it is said, but the number stays in force until another is adopted, because the controller uses it until then. Page by page, at most 500 at once; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listValuesInForce: Call<"listValuesInForce">;
  /**
   * Finds what a metering element should deliver by its volume.
   *
   * Displacement times bulk density times fill efficiency, with an interval; as a start value for a catch plan. A value measured or in force is compared with it: how far off it is, which fill efficiency it implies, and what may be wrong when that is more than the element holds. No verdict: only a catch test says what the meter delivers. Nothing is stored.
   */
  evaluateVolumeCheck: Call<"evaluateVolumeCheck">;
  /**
   * Makes a key for a workspace, as its first one.
   *
   * For whoever runs the installation. From then on the administrators of that workspace make their own keys. The audit of both workspaces tells of it.
   */
  createKeyOfWorkspace: Call<"createKeyOfWorkspace">;
  /**
   * Lists the workspaces of the installation.
   *
   * In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.
   */
  listWorkspaces: Call<"listWorkspaces">;
  /**
   * Creates a workspace.
   *
   * It has no keys yet; make its first one next. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
   */
  createWorkspace: Call<"createWorkspace", "replaceWorkspace">;
  /**
   * Reads a workspace.
   *
   * If-None-Match with the ETag saves the transfer.
   */
  getWorkspace: Call<"getWorkspace", "replaceWorkspace">;
  /**
   * Renames a workspace, retires it or brings it back.
   *
   * The keys of a retired workspace open nothing from the next request on; its records stay. Send the ETag of your last GET as If-Match.
   */
  replaceWorkspace: Call<"replaceWorkspace", "replaceWorkspace">;
}

/** Where each operation is, and what it takes and gives. */
export const operationTable: Record<keyof Calls, Traits> = {
  listAudit: { method: "get", path: "/v1/audit", givesPages: true },
  listRefusals: { method: "get", path: "/v1/audit/refusals", givesPages: true },
  listRefusalsWithoutKey: { method: "get", path: "/v1/audit/refusals/without-key", givesPages: true },
  evaluateBulkDensity: { method: "post", path: "/v1/calculations/bulk-density", takesBody: true },
  planCatch: { method: "post", path: "/v1/calculations/catch-plan", takesBody: true },
  evaluateCatchTest: { method: "post", path: "/v1/calculations/catch-test", takesBody: true },
  listCatchTests: { method: "get", path: "/v1/catch-tests", givesPages: true },
  recordCatchTest: { method: "post", path: "/v1/catch-tests", takesBody: true, takesKey: true, givesTag: true },
  getCatchTest: { method: "get", path: "/v1/catch-tests/{id}", takesId: true, givesTag: true },
  recomputeCatchTest: { method: "post", path: "/v1/catch-tests/{id}/recomputations", takesId: true },
  listChanges: { method: "get", path: "/v1/changes" },
  listCodes: { method: "get", path: "/v1/codes" },
  listContainers: { method: "get", path: "/v1/containers", givesPages: true },
  createContainer: { method: "post", path: "/v1/containers", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getContainer: { method: "get", path: "/v1/containers/{id}", takesId: true, givesTag: true, givesEditable: true },
  replaceContainer: { method: "put", path: "/v1/containers/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
  evaluateDistanceSensor: { method: "post", path: "/v1/calculations/distance-sensor", takesBody: true },
  evaluateDriveWheelTurns: { method: "post", path: "/v1/calculations/drive-wheel-turns", takesBody: true },
  evaluateElementFit: { method: "post", path: "/v1/calculations/element-fit", takesBody: true },
  listHistory: { method: "get", path: "/v1/history", givesPages: true },
  listKeys: { method: "get", path: "/v1/keys", givesPages: true },
  createKey: { method: "post", path: "/v1/keys", takesBody: true, takesKey: true, givesTag: true },
  getKey: { method: "get", path: "/v1/keys/{id}", takesId: true, givesTag: true },
  rotateKey: { method: "post", path: "/v1/keys/{id}/rotations", takesId: true, takesBody: true, takesKey: true, givesTag: true },
  revokeKey: { method: "post", path: "/v1/keys/{id}/revocations", takesId: true, takesBody: true, takesKey: true, givesTag: true },
  listLots: { method: "get", path: "/v1/lots", givesPages: true },
  createLot: { method: "post", path: "/v1/lots", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getLot: { method: "get", path: "/v1/lots/{id}", takesId: true, givesTag: true, givesEditable: true },
  replaceLot: { method: "put", path: "/v1/lots/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
  listMachines: { method: "get", path: "/v1/machines", givesPages: true },
  createMachine: { method: "post", path: "/v1/machines", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getMachine: { method: "get", path: "/v1/machines/{id}", takesId: true, givesTag: true, givesEditable: true },
  replaceMachine: { method: "put", path: "/v1/machines/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
  evaluateMeterSpeed: { method: "post", path: "/v1/calculations/meter-speed", takesBody: true },
  evaluateNewLot: { method: "post", path: "/v1/calculations/new-lot", takesBody: true },
  planCatchOfPlan: { method: "get", path: "/v1/plans/{id}/catch-plan", takesId: true },
  setUpOfPlan: { method: "get", path: "/v1/plans/{id}/set-up", takesId: true },
  listPlans: { method: "get", path: "/v1/plans", givesPages: true },
  createPlan: { method: "post", path: "/v1/plans", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getPlan: { method: "get", path: "/v1/plans/{id}", takesId: true, givesTag: true, givesEditable: true },
  replacePlan: { method: "put", path: "/v1/plans/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
  evaluateProductRate: { method: "post", path: "/v1/calculations/product-rate", takesBody: true },
  listProducts: { method: "get", path: "/v1/products", givesPages: true },
  createProduct: { method: "post", path: "/v1/products", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getProduct: { method: "get", path: "/v1/products/{id}", takesId: true, givesTag: true, givesEditable: true },
  replaceProduct: { method: "put", path: "/v1/products/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
  listScaleChecks: { method: "get", path: "/v1/scale-checks", givesPages: true },
  recordScaleCheck: { method: "post", path: "/v1/scale-checks", takesBody: true, takesKey: true, givesTag: true },
  getScaleCheck: { method: "get", path: "/v1/scale-checks/{id}", takesId: true, givesTag: true },
  listScales: { method: "get", path: "/v1/scales", givesPages: true },
  createScale: { method: "post", path: "/v1/scales", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getScale: { method: "get", path: "/v1/scales/{id}", takesId: true, givesTag: true, givesEditable: true },
  replaceScale: { method: "put", path: "/v1/scales/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
  evaluateSeedRowLimit: { method: "post", path: "/v1/calculations/seed-row-limit", takesBody: true },
  evaluateSeedingRate: { method: "post", path: "/v1/calculations/seeding-rate", takesBody: true },
  evaluateStandCount: { method: "post", path: "/v1/calculations/stand-count", takesBody: true },
  evaluateStandRisk: { method: "post", path: "/v1/calculations/stand-risk", takesBody: true },
  listUnits: { method: "get", path: "/v1/units" },
  listAdoptions: { method: "get", path: "/v1/adoptions", givesPages: true },
  adoptValue: { method: "post", path: "/v1/adoptions", takesBody: true, takesKey: true, givesTag: true },
  getAdoption: { method: "get", path: "/v1/adoptions/{id}", takesId: true, givesTag: true },
  listValuesInForce: { method: "get", path: "/v1/machines/{id}/values-in-force", takesId: true, givesPages: true },
  evaluateVolumeCheck: { method: "post", path: "/v1/calculations/volume-check", takesBody: true },
  createKeyOfWorkspace: { method: "post", path: "/v1/workspaces/{id}/keys", takesId: true, takesBody: true, takesKey: true, givesTag: true },
  listWorkspaces: { method: "get", path: "/v1/workspaces", givesPages: true },
  createWorkspace: { method: "post", path: "/v1/workspaces", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getWorkspace: { method: "get", path: "/v1/workspaces/{id}", takesId: true, givesTag: true, givesEditable: true },
  replaceWorkspace: { method: "put", path: "/v1/workspaces/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
};
