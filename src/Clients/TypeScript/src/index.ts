export { CalibrationClient, type ClientOptions } from "./client.js";
export { ApiProblem, VersionConflict } from "./problems.js";
export { quantity, type Quantity, type Unit } from "./quantities.js";
export { newId } from "./ids.js";
export type { BatchLine, BatchOptions, Calculation, QuestionOf, ResultOf } from "./batch.js";
export type { CallOptions, Described, Stored } from "./call.js";
export type { Pages } from "./pages.js";
export type { RetryRules } from "./retries.js";
export type * from "./schema.js";
