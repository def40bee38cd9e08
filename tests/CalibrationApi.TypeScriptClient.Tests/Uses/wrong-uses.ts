// Uses of the client that must not compile; the end of a line says with which error.
import { CalibrationClient, numberIn, quantity, type CatchOfTest, type MassPerAreaQuantity, type MassQuantity } from "calibration-api-client";

const api = new CalibrationClient("http://localhost:5000");
const division = quantity(0.02, "kg");

const wrongDimension: MassQuantity = { value: 12.5, unit: "kg/ha" }; // wrong: TS2322
const wrongDimensionSpoken: MassQuantity = quantity(12.5, "kg/ha"); // wrong: TS2322
const unknownUnit: MassQuantity = { value: 12.5, unit: "kgs" }; // wrong: TS2322
const unknownUnitSpoken = quantity(12.5, "kgs"); // wrong: TS2345
const massAsLength = numberIn(quantity(12.5, "kg"), "m"); // wrong: TS2345
const noUnit: MassPerAreaQuantity = 68; // wrong: TS2322
const revolutionsAsMass: CatchOfTest = { net: quantity(40, "rev"), revolutions: quantity(14.5, "rev") }; // wrong: TS2322
const misspelt: CatchOfTest = { nett: quantity(14.5, "kg") }; // wrong: TS2561
await api.evaluateCatchTest({ scale: { division } }); // wrong: TS2345 the catches are missing
await api.evaluateCatchTest({ scale: { division }, catches: [] }, { units: "imperial" }); // wrong: TS2322
await api.replaceScale("id", { name: "platform", division }); // wrong: TS2554 without the revision that it changes
await api.getScale("id", { ifMatch: "r1" }); // wrong: TS2769
for await (const item of api.listHistory({ verdict: "good" })) // wrong: TS2322
  console.log(item);
for await (const line of api.batch("catch-tset", [])) // wrong: TS2345
  console.log(line);
await api.createKey({ name: "tablet", scopes: ["operator"] }); // wrong: TS2322
const secret = (await api.getKey("id")).record.key; // wrong: TS2339 it is shown once
await api.revokeKey("id", {}); // wrong: TS2345 the reason is missing

export { secret, wrongDimension, wrongDimensionSpoken, unknownUnit, unknownUnitSpoken, massAsLength, noUnit, revolutionsAsMass, misspelt };
