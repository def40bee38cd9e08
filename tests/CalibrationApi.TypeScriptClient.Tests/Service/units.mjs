// Every unit that the service lists, told in every other one of its dimension by the client and by the factors of the service.
import { CalibrationClient, numberIn, quantity } from "calibration-api-client";

const api = new CalibrationClient(process.argv[2]);
const { units } = await api.listUnits();
const [apart, compared] = [[], units.flatMap(from => units.filter(to => to.dimension === from.dimension).map(to => [from, to]))];
for (const [from, to] of compared) {
  const inSi = 7.3 * from.toSi.numerator / from.toSi.denominator + (from.offsetInSi ?? 0);
  const expected = (inSi - (to.offsetInSi ?? 0)) / (to.toSi.numerator / to.toSi.denominator);
  const told = numberIn(quantity(7.3, from.symbol), to.symbol);
  if (!(Math.abs(told - expected) <= 1e-12 * Math.abs(expected)))
    apart.push(`${from.symbol} in ${to.symbol}: ${told}, not ${expected}`);
}
let refused = "nothing";
try {
  numberIn(quantity(1, "kg"), "m");
} catch (error) {
  refused = `${error.name}: ${error.message}`;
}
console.log(JSON.stringify({ apart, manyCompared: compared.length > 200, refused, pounds: numberIn(quantity(0.45359237, "kg"), "lb") }));
