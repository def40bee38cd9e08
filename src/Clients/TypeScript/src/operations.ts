// Made from openapi/v1.json by `npm run generate`. Never edit it by hand.

import type { Call, Traits } from "./call.js";

/** The operations of the contract that ask and answer in JSON, each a method. */
export interface Calls {
  /**
   * Plans a catch test of one or several meters.
   *
   * For each meter: how much to catch and which bound acts, revolutions, run time, meter speed against its limits,
   * container fill, and how many catches the wanted precision takes; for the common run: when to stop which meter, the
   * steps with their dependencies, and the cautions. Nothing is stored.
   */
  planCatch: Call<"planCatch">;
  /**
   * Evaluates a catch test.
   *
   * From one or more catches: the mass per revolution with its uncertainty, whether the catches agree, what has changed
   * against the value in force, and what to do now. Nothing is stored; the same question always gets the same answer.
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
   * Machine, product, lot, scale and plan come from their records, the repeatability, the day-to-day component, the error of
   * the scale and the value in force from the history where it has them; the answer says what was used. The test is kept with
   * its full question, so that it can be evaluated again at any time. A wrong test is superseded by another with a reason.
   * Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
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
   * Lists every code with its cause and what to do.
   *
   * The stable codes of errors, refusals, findings, reasons and cautions, each with its cause, its remedy, and the statuses
   * or severities that it comes with: for translations and for help inside a client. People read the same at
   * `/reference/codes`. Within v1 codes are only added.
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
   * The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
   */
  replaceContainer: Call<"replaceContainer", "replaceContainer">;
  /**
   * Lists everything that happened.
   *
   * By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header.
   */
  listHistory: Call<"listHistory">;
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
   * The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
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
   * The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
   */
  replaceMachine: Call<"replaceMachine", "replaceMachine">;
  /**
   * Finds meter speeds, windows and the best metering element.
   *
   * For each metering element: its speed at the lowest and highest rate and ground speed, the ground speeds at which each
   * rate can be put down, the rates that can be put down at each ground speed, and how much room is left to its limits.
   * Elements come best first. Nothing is stored.
   */
  evaluateMeterSpeed: Call<"evaluateMeterSpeed">;
  /**
   * Computes the catch plan of a stored plan.
   *
   * Machine, products, lots, scale and container come from their records, the mass per revolution from the value in force, or from the plan's start value where none is. Computed anew with each call; nothing is stored.
   */
  planCatchOfPlan: Call<"planCatchOfPlan">;
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
   * The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
   */
  replacePlan: Call<"replacePlan", "replacePlan">;
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
   * The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
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
   * The span error found corrects later catch tests on that scale, and its uncertainty takes the place of the scale's limit.
   * After a failed check, tests since the last good one say so when they are read. Send an Idempotency-Key, or your own id,
   * to be able to repeat the request safely.
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
   * The whole description takes the place of the earlier one. Send the ETag of your last GET as If-Match.
   */
  replaceScale: Call<"replaceScale", "replaceScale">;
  /**
   * Lists every unit with its exact factor.
   *
   * The closed list of units that payloads take, by dimension, each with its exact factor to SI as a ratio of two whole
   * numbers and its codes in UCUM, UN/ECE Recommendation 20 and AgGateway ADAPT where they have one.
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
   * From its time on, the value is in force for its meter, element, setting and product, until a later one is adopted. The
   * number is stored as typed in. Of two values adopted for the same time the one received last is in force; both stay on
   * record. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
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
   * For each meter, element, setting and product with an adopted value: the number in the controller, since when, by whom
   * and why, with which lot and treatment it was found, and what it rests on. A correction of the test behind it is said,
   * but the number stays in force until another is adopted, because the controller uses it until then.
   */
  listValuesInForce: Call<"listValuesInForce">;
}

/** Where each operation is, and what it takes and gives. */
export const operationTable: Record<keyof Calls, Traits> = {
  planCatch: { method: "post", path: "/v1/calculations/catch-plan", takesBody: true },
  evaluateCatchTest: { method: "post", path: "/v1/calculations/catch-test", takesBody: true },
  listCatchTests: { method: "get", path: "/v1/catch-tests", givesPages: true },
  recordCatchTest: { method: "post", path: "/v1/catch-tests", takesBody: true, takesKey: true, givesTag: true },
  getCatchTest: { method: "get", path: "/v1/catch-tests/{id}", takesId: true, givesTag: true },
  recomputeCatchTest: { method: "post", path: "/v1/catch-tests/{id}/recomputations", takesId: true },
  listCodes: { method: "get", path: "/v1/codes" },
  listContainers: { method: "get", path: "/v1/containers", givesPages: true },
  createContainer: { method: "post", path: "/v1/containers", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getContainer: { method: "get", path: "/v1/containers/{id}", takesId: true, givesTag: true, givesEditable: true },
  replaceContainer: { method: "put", path: "/v1/containers/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
  listHistory: { method: "get", path: "/v1/history", givesPages: true },
  listLots: { method: "get", path: "/v1/lots", givesPages: true },
  createLot: { method: "post", path: "/v1/lots", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getLot: { method: "get", path: "/v1/lots/{id}", takesId: true, givesTag: true, givesEditable: true },
  replaceLot: { method: "put", path: "/v1/lots/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
  listMachines: { method: "get", path: "/v1/machines", givesPages: true },
  createMachine: { method: "post", path: "/v1/machines", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getMachine: { method: "get", path: "/v1/machines/{id}", takesId: true, givesTag: true, givesEditable: true },
  replaceMachine: { method: "put", path: "/v1/machines/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
  evaluateMeterSpeed: { method: "post", path: "/v1/calculations/meter-speed", takesBody: true },
  planCatchOfPlan: { method: "get", path: "/v1/plans/{id}/catch-plan", takesId: true },
  listPlans: { method: "get", path: "/v1/plans", givesPages: true },
  createPlan: { method: "post", path: "/v1/plans", takesBody: true, takesKey: true, givesTag: true, givesEditable: true },
  getPlan: { method: "get", path: "/v1/plans/{id}", takesId: true, givesTag: true, givesEditable: true },
  replacePlan: { method: "put", path: "/v1/plans/{id}", takesId: true, takesBody: true, givesTag: true, givesEditable: true },
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
  listUnits: { method: "get", path: "/v1/units" },
  listAdoptions: { method: "get", path: "/v1/adoptions", givesPages: true },
  adoptValue: { method: "post", path: "/v1/adoptions", takesBody: true, takesKey: true, givesTag: true },
  getAdoption: { method: "get", path: "/v1/adoptions/{id}", takesId: true, givesTag: true },
  listValuesInForce: { method: "get", path: "/v1/machines/{id}/values-in-force", takesId: true },
};
