import type { components } from "./schema.js";
import { unitFactors } from "./units.js";

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

type Factors = typeof unitFactors;

/** The units of the same dimension as a unit. */
export type Alike<Symbol extends Unit> = {
  [Other in keyof Factors]: Factors[Other][0] extends Factors[Symbol][0] ? Other : never;
}[keyof Factors];

/**
 * The number of a quantity in another unit of the same dimension, converted here without asking the service:
 * `numberIn(quantity(1, "kg"), "lb")`. A unit of something else does not compile.
 */
export function numberIn<Symbol extends Unit>({ value, unit }: Quantity<Symbol>, wanted: Alike<Symbol>): number {
  if (wanted as string === unit)
    return value;
  const given = unitFactors[unit] as readonly [string, number, number, number] | undefined;
  const other = unitFactors[wanted] as readonly [string, number, number, number] | undefined;
  if (!given || !other || given[0] !== other[0])
    throw new RangeError(`'${unit}' cannot be converted to '${wanted}'.`);
  return ((value * given[1]) / given[2] + given[3] - other[3]) * (other[2] / other[1]);
}
