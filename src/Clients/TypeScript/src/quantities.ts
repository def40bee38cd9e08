import type { components } from "./schema.js";

type Schemas = components["schemas"];

/** Every unit that can be sent. */
export type Unit = {
  [Name in keyof Schemas]: Name extends `${string}Quantity`
    ? Schemas[Name] extends { unit: infer Symbol extends string } ? (string extends Symbol ? never : Symbol) : never
    : never;
}[keyof Schemas];

/** A number with its unit; the unit decides where it fits. */
export interface Quantity<Symbol extends Unit> {
  value: number;
  unit: Symbol;
}

/**
 * A quantity, for example `quantity(68, "kg/ha")`, the same as `{ value: 68, unit: "kg/ha" }`. A unit that does not exist
 * does not compile, nor does a quantity where the contract asks for another one.
 */
export function quantity<const Symbol extends Unit>(value: number, unit: Symbol): Quantity<Symbol> {
  return { value, unit };
}
