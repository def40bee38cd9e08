// Lays the catch tests of season.json out as a table, one catch a row, as an operator would have kept them in a spreadsheet
// with semicolons between the cells and decimal commas: node demo-data/make-catches.mjs
import { readFileSync, writeFileSync } from "node:fs";

const folder = new URL(".", import.meta.url);
const { requests } = JSON.parse(readFileSync(new URL("season.json", folder), "utf8"));
const of = path => requests.filter(request => request.path === path).map(request => request.body);
const named = path => new Map(of(path).map(record => [record.id, record]));
const [products, scales, [machine]] = [named("/v1/products"), named("/v1/scales"), of("/v1/machines")];

const kilograms = quantity => quantity && (quantity.unit.startsWith("g") ? quantity.value / 1000 : quantity.value);
const grams = quantity => (quantity.unit === "g" ? quantity.value : quantity.value * 1000);

// What was typed in last for this meter and product; one of the meters takes a mass for several revolutions.
function valueInForce(test) {
  const last = of("/v1/adoptions").filter(one => one.meter === test.meter && one.product === test.product && one.occurredAt < test.occurredAt).at(-1);
  return last && (last.typedIn.unit === "kg" ? last.typedIn.value / meterOf(test).controllerEntry.revolutions : kilograms(last.typedIn));
}

// What holds for the whole test stands in the row of its first catch.
const ofTest = {
  "note": test => test.occurredAt.slice(0, 10),
  "meter": test => test.meter,
  "product.name": test => products.get(test.product).name,
  "product.material": test => products.get(test.product).material,
  "scale.division [g]": test => grams(scales.get(test.scale).division),
  "scale.accuracyClass": test => scales.get(test.scale).accuracyClass,
  "tareReading": test => test.tareReading,
  "valueInForce [kg/rev]": valueInForce,
  "controllerEntry.form": test => meterOf(test).controllerEntry.form,
  "controllerEntry.unit": test => meterOf(test).controllerEntry.unit,
  "controllerEntry.decimals": test => meterOf(test).controllerEntry.decimals,
  "controllerEntry.revolutions": test => meterOf(test).controllerEntry.revolutions,
  "pulsesPerRevolution [pulses/rev]": test => meterOf(test).pulsesPerRevolution?.value,
};
const ofCatch = {
  "gross [kg]": one => kilograms(one.gross),
  "tare [kg]": one => kilograms(one.tare),
  "net [kg]": one => kilograms(one.net),
  "revolutions [rev]": one => one.revolutions?.value,
  "pulses": one => one.pulses,
  "excluded.reason": one => one.excluded?.reason,
};
const meterOf = test => machine.meters.find(meter => meter.position === test.meter);

const cell = value => value === undefined ? "" : typeof value === "number" ? String(Number(value.toPrecision(12))).replace(".", ",") : value;
const rows = [["test", ...Object.keys(ofTest), ...Object.keys(ofCatch)]];
of("/v1/catch-tests").forEach((test, number) => test.catches.forEach((one, at) => rows.push([
  String(number + 1),
  ...Object.values(ofTest).map(read => at === 0 ? cell(read(test)) : ""),
  ...Object.values(ofCatch).map(read => cell(read(one))),
])));
if (rows.flat().some(text => /[;"\r\n]/.test(text)))
  throw new Error("A cell needs quotes.");
writeFileSync(new URL("season-catches.csv", folder), rows.map(row => row.join(";") + "\n").join(""));
