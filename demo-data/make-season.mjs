// Makes season.json, the invented season that the service loads with --demo.
//   node demo-data/make-season.mjs
// Every number is drawn from a seeded generator around a truth that is written here, so that each run gives the same file.
import { writeFileSync } from 'node:fs';

const random = seeded(20260320);

// What the service said to type in, read from its answers: this script computes no verdicts. 5 has two digits swapped on purpose.
const ADOPTED = { 4: 0.362, 5: 35.3, 6: 33.5, 7: 0.443, 8: 12, 9: 0.383, 10: 13.39, 11: 12.83, 12: 14.18 };

// ---- ids: 019d0000-<kind>-7000-8000-<number>, valid UUIDs of version 7 whose time falls into March 2026 ----
const kinds = { machine: 1, product: 2, lot: 3, scale: 4, container: 5, plan: 6, check: 7, adoption: 8, test: 9 };
const id = (kind, number) => `019d0000-000${kinds[kind]}-7000-8000-${String(number).padStart(12, '0')}`;
const machine = id('machine', 1);
const [barley, compound, clover, peas, sulphate] = [1, 2, 3, 4, 5].map(number => id('product', number));
const [barleyA, barleyB, compoundA, cloverA, peasA, sulphateA] = [1, 2, 3, 4, 5, 6].map(number => id('lot', number));
const [platform, bench] = [1, 2].map(number => id('scale', number));
const [bin, bucket, oldBin] = [1, 2, 3].map(number => id('container', number));
const [homeField, pondField, hillField] = [1, 2, 3].map(number => id('plan', number));

const PULSES = 250;

const requests = [];
const post = (path, body) => requests.push({ path: `/v1/${path}`, body });
const q = (value, unit) => ({ value, unit });

describeThings();
liveTheSeason();
writeFileSync(new URL('season.json', import.meta.url), `{ "requests": [\n${requests.map(one => written(one, 0)).join(',\n')}\n] }\n`);

// ---- what the farm has ----
function describeThings() {
  const limits = (minimum, maximum) => ({ minimum: q(minimum, 'rpm'), maximum: q(maximum, 'rpm') });
  post('machines', {
    id: machine, name: 'air seeder', timeZone: 'Europe/Vienna', workingWidth: q(9, 'm'), rowSpacing: q(15, 'cm'), opener: 'disc', seedRowWidth: q(25, 'mm'), drive: 'separate',
    note: 'Invented, like everything in this file.',
    tanks: [{ name: 'front tank', volume: q(2400, 'L') }, { name: 'middle tank', volume: q(1800, 'L') }, { name: 'rear tank', volume: q(300, 'L') }],
    meters: [
      {
        position: 'front', tank: 'front tank', coveredWidth: q(9, 'm'), outlets: 60,
        elements: [
          { name: 'coarse roller', displacementPerRevolution: q(0.62, 'L'), pocketsPerRevolution: 12, speedLimits: limits(4, 90) },
          { name: 'medium roller', displacementPerRevolution: q(0.28, 'L'), pocketsPerRevolution: 18, speedLimits: limits(4, 90) },
        ],
        counterResolution: q(0.1, 'rev'), controllerEntry: { form: 'mass-per-revolution', unit: 'kg/rev', decimals: 3 },
      },
      {
        position: 'middle', tank: 'middle tank', coveredWidth: q(9, 'm'), outlets: 60,
        elements: [{ name: 'coarse roller', displacementPerRevolution: q(0.78, 'L'), pocketsPerRevolution: 10, speedLimits: limits(4, 80) }],
        pulsesPerRevolution: q(PULSES, 'pulses/rev'), controllerEntry: { form: 'mass-per-revolutions', revolutions: 20, unit: 'kg', decimals: 2 },
      },
      {
        position: 'rear', tank: 'rear tank', coveredWidth: q(9, 'm'), outlets: 24,
        elements: [
          { name: 'small-seed roller', displacementPerRevolution: q(0.045, 'L'), pocketsPerRevolution: 24, speedLimits: limits(3, 60) },
          { name: 'finest roller', displacementPerRevolution: q(0.016, 'L'), pocketsPerRevolution: 36, speedLimits: limits(3, 60) },
        ],
        counterResolution: q(0.1, 'rev'), controllerEntry: { form: 'mass-per-revolution', unit: 'g/rev', decimals: 1 },
      },
    ],
    restorePoints: [
      { name: 'lids of the tanks', toOpen: 'let the pressure out and set the lids ajar', toRestore: 'close the lids and feel along each seal' },
      { name: 'slide under each meter', toOpen: 'pull the pin and swing the slide out', toRestore: 'swing it in, put the pin back and feel for the clip' },
      { name: 'motors of the other meters', toOpen: 'unplug them', toRestore: 'plug them in again, each at its own colour' },
      { name: 'controller', toOpen: 'let it believe in the planned ground speed', toRestore: 'let it read the wheel again and look at the working width' },
    ],
  });

  const product = (number, name, material, density, price, more) =>
    post('products', { id: id('product', number), name, material, bulkDensity: q(density, 'kg/hL'), ...more, price: { value: price, currency: 'EUR', per: 't' } });
  const share = (nutrient, percent) => ({ nutrient, share: q(percent, '%') });
  product(1, 'spring barley', 'free-flowing', 64, 420, { fanSpeedLimits: limits(3000, 4000) });
  product(2, 'compound fertilizer 15-15-15', 'free-flowing', 104, 520, { analysis: [share('N', 15), share('P2O5', 15), share('K2O', 15)], nitrogenForm: 'other', fanSpeedLimits: limits(3300, 4400) });
  product(3, 'red clover', 'small-seed', 78, 6200);
  product(4, 'field peas', 'free-flowing', 80, 480);
  product(5, 'ammonium sulphate', 'dusty', 96, 340, { analysis: [share('N', 21), share('S', 24)], nitrogenForm: 'ammonium-sulfate', note: 'Crystals. Cakes when the air is damp.' });

  post('lots', { id: barleyA, product: barley, name: 'barley, first delivery', thousandKernelMass: q(46.5, 'g/1000'), germination: q(96, '%'), purity: q(99.5, '%'), bulkDensity: q(64.5, 'kg/hL'), moisture: q(13.4, '%'), treatment: 'liquid dressing' });
  post('lots', { id: barleyB, product: barley, name: 'barley, second delivery', thousandKernelMass: q(51.2, 'g/1000'), germination: q(94, '%'), purity: q(99.2, '%'), bulkDensity: q(67.2, 'kg/hL'), moisture: q(12.6, '%'), treatment: 'undressed' });
  post('lots', { id: compoundA, product: compound, name: 'fertilizer of this spring', bulkDensity: q(104, 'kg/hL') });
  post('lots', { id: cloverA, product: clover, name: 'clover of last year', thousandKernelMass: q(1.9, 'g/1000'), germination: q(88, '%'), purity: q(98, '%'), bulkDensity: q(78, 'kg/hL'), moisture: q(9.5, '%') });
  post('lots', { id: peasA, product: peas, name: 'own peas, cleaned', thousandKernelMass: q(245, 'g/1000'), germination: q(92, '%'), purity: q(99, '%'), bulkDensity: q(80.5, 'kg/hL'), moisture: q(13.8, '%') });
  post('lots', { id: sulphateA, product: sulphate, name: 'sulphate in big bags', bulkDensity: q(96, 'kg/hL') });

  post('scales', { id: platform, name: 'platform scale', division: q(0.02, 'kg'), accuracyClass: 'III', capacity: q(60, 'kg'), daysBetweenChecks: 60 });
  post('scales', { id: bench, name: 'bench scale', division: q(5, 'g'), capacity: q(15, 'kg'), daysBetweenChecks: 45, note: 'No class on its data plate.' });
  post('containers', { id: bin, name: 'grey bin', volume: q(30, 'L'), tare: q(1.62, 'kg') });
  post('containers', { id: bucket, name: 'bucket', volume: q(12, 'L'), tare: q(480, 'g') });
  post('containers', { id: oldBin, name: 'cracked bin', volume: q(30, 'L'), tare: q(1.7, 'kg'), retired: true, note: 'Loses clover through the crack.' });

  const front = (productId, lot, rate, more) => ({ meter: 'front', element: 'coarse roller', product: productId, lot, targetRate: q(rate, 'kg/ha'), ...more });
  const middle = (productId, lot, rate, more) => ({ meter: 'middle', element: 'coarse roller', product: productId, lot, targetRate: q(rate, 'kg/ha'), ...more });
  const rear = { meter: 'rear', element: 'small-seed roller', product: clover, lot: cloverA, targetRate: q(8, 'kg/ha') };
  const sowing = (tank, air, moisture) => ({ tankLevel: q(tank, '%'), productMoisture: q(moisture, '%'), airTemperature: q(air, 'degC'), fanSpeed: q(3400, 'rpm') });
  const common = { machine, scale: platform, container: bin, groundSpeed: q(9, 'km/h'), workingSpeeds: { minimum: q(7, 'km/h'), maximum: q(10, 'km/h') } };
  post('plans', { id: homeField, name: 'home field: barley with clover under it', ...common, area: q(34, 'ha'), sowingConditions: sowing(60, 10, 13.4), meters: [front(barley, barleyA, 170), middle(compound, compoundA, 150), rear] });
  post('plans', { id: pondField, name: 'pond field: the second delivery of barley', ...common, area: q(22, 'ha'), sowingConditions: sowing(60, 14, 12.6), 
    nutrients: [{ nutrient: 'N', amount: q(22.5, 'kg/ha') }, { nutrient: 'P2O5', amount: q(20, 'kg/ha') }], seedRow: { crop: 'barley', soil: 'medium', moisture: 'good', region: 'elsewhere' },
    // The rate of barley follows from the stand and the lot, that of the fertilizer from the nutrients.
    meters: [
      { meter: 'front', element: 'coarse roller', product: barley, lot: barleyB, stand: { plants: q(290, '/m2'), emergence: q(86, '%') } },
      { meter: 'middle', element: 'coarse roller', product: compound, lot: compoundA, withSeed: true },
    ],
  });
  post('plans', {
    id: hillField, name: 'hill field: peas', ...common, groundSpeed: q(8, 'km/h'), workingSpeeds: { minimum: q(6, 'km/h'), maximum: q(9, 'km/h') }, area: q(18, 'ha'), sowingConditions: sowing(60, 13, 13.8),
    meters: [front(peas, peasA, 210, { startValue: { value: 0.4, unit: 'kg/rev', relativeUncertainty: q(5, '%') } }), middle(sulphate, sulphateA, 90, { startValue: { value: 0.56, unit: 'kg/rev', relativeUncertainty: q(10, '%') } })],
  });
}

// ---- what happened ----
function liveTheSeason() {
  const operator = 'operator', technician = 'service technician';
  const barleyFront = { meter: 'front', element: 'coarse roller', product: barley, scale: platform, plan: homeField, lot: barleyA };
  const secondBarley = { ...barleyFront, plan: pondField, lot: barleyB };
  const compoundMiddle = { meter: 'middle', element: 'coarse roller', product: compound, scale: platform, plan: homeField, lot: compoundA };
  const cloverRear = { meter: 'rear', element: 'small-seed roller', product: clover, scale: bench, plan: homeField, lot: cloverA };
  const peasFront = { meter: 'front', element: 'coarse roller', product: peas, scale: platform, plan: hillField, lot: peasA };
  const sulphateMiddle = { meter: 'middle', element: 'coarse roller', product: sulphate, scale: platform, plan: hillField, lot: sulphateA };

  const heavy = [10, 20, 40], light = [2, 5, 10];
  check(1, platform, '2026-03-12T10:05:00+01:00', heavy, 0.001, technician, 'Known masses of 10 kg and 20 kg.');
  check(2, bench, '2026-03-12T10:25:00+01:00', light, 0.0035, technician, 'Known masses of 2 kg, 5 kg and 10 kg.');

  adopt(1, barleyFront, null, q(0.342, 'kg/rev'), '2026-03-14T16:00:00+01:00', operator, 'From the chart on the tank; no test yet.');
  adopt(2, compoundMiddle, null, q(14.2, 'kg'), '2026-03-14T16:05:00+01:00', operator, 'From the notebook of last season.');
  adopt(3, cloverRear, null, q(31, 'g/rev'), '2026-03-14T16:10:00+01:00', operator, 'From the chart on the tank; no test yet.');

  // 20 March: the first tests.
  test(1, barleyFront, '2026-03-20T08:15:00+01:00', operator, { truth: 0.3615, turns: 45, catches: 2, conditions: [75, 7, 13.4], note: 'First test of the season.' });
  adopt(4, barleyFront, 1, q(ADOPTED[4], 'kg/rev'), '2026-03-20T08:50:00+01:00', operator, 'First test of the season.');
  test(2, compoundMiddle, '2026-03-20T09:30:00+01:00', operator, { truth: 0.7125, turns: 30, catches: 2, conditions: [80, 8], note: 'First test of the season.' });

  // 27 March: one week on, and the clover goes in. Its roller runs unevenly at first: two catches are too few.
  test(3, barleyFront, '2026-03-27T07:40:00+01:00', operator, { truth: 0.3622, turns: 45, catches: 2, conditions: [60, 6, 13.4] });
  test(4, compoundMiddle, '2026-03-27T08:20:00+01:00', operator, { truth: 0.705, turns: 30, catches: 2, conditions: [65, 6] });
  test(5, cloverRear, '2026-03-27T09:10:00+01:00', operator, { truth: 0.0332, turns: 120, catches: 2, repeatability: 0.09, conditions: [85, 8] });
  test(6, cloverRear, '2026-03-27T09:45:00+01:00', operator, { truth: 0.0332, turns: 120, catches: 4, repeatability: 0.009, conditions: [84, 8], note: 'Four catches this time.' });
  adopt(5, cloverRear, 6, q(ADOPTED[5], 'g/rev'), '2026-03-27T10:20:00+01:00', operator, 'Tested with four catches.', undefined, [{ code: 'typed-off-test', reason: 'It is what stands on the note from the machine.' }]);
  adopt(6, cloverRear, 6, q(ADOPTED[6], 'g/rev'), '2026-03-27T10:20:00+01:00', operator, 'Tested with four catches.', { record: id('adoption', 5), reason: 'Two digits were swapped when this was written down; the controller shows the right number.' });

  // 2 April: the empty bin was not weighed on the second catch. Recorded, then put right with a reason.
  const readings = test(7, barleyFront, '2026-04-02T06:50:00+02:00', operator, { truth: 0.3618, turns: 45, catches: 3, conditions: [55, 9, 13.4], tareForgottenAt: 1 });
  test(8, barleyFront, '2026-04-02T06:50:00+02:00', operator, { readings, conditions: [55, 9, 13.4], supersedes: { record: id('test', 7), reason: 'The empty bin was not weighed on the second catch and stood there as 0 kg. It is the same bin as on the others.' } });
  test(9, compoundMiddle, '2026-04-02T07:35:00+02:00', operator, { truth: 0.698, turns: 30, catches: 2, conditions: [70, 10] });

  // 7 and 8 April: a test on the last rest in the tank, not adopted, and the same meter after the next fill.
  test(10, barleyFront, '2026-04-07T18:20:00+02:00', operator, { truth: 0.343, turns: 45, catches: 2, conditions: [6, 15, 13.4], note: 'The tank is nearly empty. Not adopted; tested again after the next fill.' });
  test(11, barleyFront, '2026-04-08T07:10:00+02:00', operator, { truth: 0.3612, turns: 45, catches: 2, conditions: [80, 8, 13.4], note: 'After the fill.' });
  test(12, compoundMiddle, '2026-04-08T07:50:00+02:00', operator, { truth: 0.691, turns: 30, catches: 2, conditions: [75, 9] });
  test(13, cloverRear, '2026-04-08T08:30:00+02:00', operator, { truth: 0.0331, turns: 120, catches: 3, repeatability: 0.009, conditions: [60, 9] });

  // 10 April: peas and sulphate for the hill field.
  const predicted = { startValue: { value: 0.4, unit: 'kg/rev', relativeUncertainty: q(5, '%') } };
  test(14, peasFront, '2026-04-10T07:20:00+02:00', operator, { truth: 0.4455, turns: 42, catches: 1, conditions: [85, 10, 13.8], ...predicted, note: 'Clean-out done. The start value comes from displacement and bulk density.' });
  test(15, peasFront, '2026-04-10T07:45:00+02:00', operator, { truth: 0.4455, turns: 42, catches: 2, conditions: [84, 10, 13.8], ...predicted, note: 'The second test that was asked for.' });
  adopt(7, peasFront, 15, q(ADOPTED[7], 'kg/rev'), '2026-04-10T08:10:00+02:00', operator, 'Confirmed by a second test.');
  test(16, sulphateMiddle, '2026-04-10T08:40:00+02:00', operator, { truth: 0.585, turns: 30, catches: 3, repeatability: [0.02, -0.31, 0.03], conditions: [85, 10], note: 'It hung in the tank; one could hear the roller run empty.' });
  test(17, sulphateMiddle, '2026-04-10T09:30:00+02:00', operator, { truth: 0.594, turns: 30, catches: 3, repeatability: 0.025, conditions: [84, 11], note: 'Tank stirred, lumps taken out.' });
  test(18, sulphateMiddle, '2026-04-10T10:15:00+02:00', operator, { truth: 0.594, turns: 30, catches: 6, repeatability: 0.009, conditions: [82, 12], note: 'Six catches, to be sure.' });
  adopt(8, sulphateMiddle, 18, q(ADOPTED[8], 'kg'), '2026-04-10T11:00:00+02:00', operator, 'Tested with six catches.');

  // 13 April: the second delivery of barley is heavier and undressed, so it runs better.
  test(19, secondBarley, '2026-04-13T07:00:00+02:00', operator, { truth: 0.3825, turns: 44, catches: 3, conditions: [75, 11, 12.6], note: 'First test with the second delivery.' });
  adopt(9, secondBarley, 19, q(ADOPTED[9], 'kg/rev'), '2026-04-13T07:35:00+02:00', operator, 'New lot: heavier and undressed.');
  test(20, { ...compoundMiddle, plan: pondField }, '2026-04-13T08:05:00+02:00', operator, { truth: 0.684, turns: 30, catches: 2, conditions: [70, 12] });
  check(3, platform, '2026-04-14T10:00:00+02:00', heavy, 0.001, technician, 'Known masses of 10 kg and 20 kg.');

  test(21, peasFront, '2026-04-17T07:15:00+02:00', operator, { truth: 0.4465, turns: 42, catches: 2, conditions: [70, 12, 13.8] });
  test(22, sulphateMiddle, '2026-04-17T08:00:00+02:00', operator, { truth: 0.59, turns: 30, catches: 5, repeatability: 0.009, conditions: [75, 13] });

  // 20 April onwards: the fertilizer meter delivers less and less.
  test(23, secondBarley, '2026-04-20T06:55:00+02:00', operator, { truth: 0.3815, turns: 44, catches: 2, conditions: [65, 12, 12.6] });
  test(24, { ...compoundMiddle, plan: pondField }, '2026-04-20T07:40:00+02:00', operator, { truth: 0.675, turns: 30, catches: 2, conditions: [65, 13] });
  adopt(10, compoundMiddle, 24, q(ADOPTED[10], 'kg'), '2026-04-20T08:10:00+02:00', operator, 'The meter has been falling since March.');
  test(25, cloverRear, '2026-04-20T08:45:00+02:00', operator, { truth: 0.0333, turns: 120, catches: 4, repeatability: 0.009, conditions: [55, 13], excludedFirst: 'The roller was not full yet when counting began.' });
  test(26, { ...compoundMiddle, plan: pondField }, '2026-04-24T07:30:00+02:00', operator, { truth: 0.664, turns: 30, catches: 2, conditions: [60, 14] });
  test(27, secondBarley, '2026-04-27T06:45:00+02:00', operator, { truth: 0.3812, turns: 44, catches: 2, conditions: [60, 13, 12.6] });
  test(28, { ...compoundMiddle, plan: pondField }, '2026-04-27T07:25:00+02:00', operator, { truth: 0.655, turns: 30, catches: 2, conditions: [70, 14] });

  // 2 to 8 May: the platform scale was dropped, is found wrong and repaired; the fertilizer meter is opened and cleaned.
  test(29, { ...compoundMiddle, plan: pondField }, '2026-05-02T07:20:00+02:00', operator, { truth: 0.645, turns: 30, catches: 2, scaleError: 0.008, conditions: [65, 16], note: 'The scale no longer returns to zero by itself.' });
  test(30, cloverRear, '2026-05-02T08:10:00+02:00', operator, { truth: 0.0332, turns: 120, catches: 3, repeatability: 0.009, conditions: [50, 17] });
  check(4, platform, '2026-05-04T09:40:00+02:00', heavy, 0.008, technician, 'It had been dropped from the trailer in the last days of April.');
  check(5, platform, '2026-05-06T14:20:00+02:00', heavy, 0.0005, technician, 'After the repair.');
  test(31, { ...compoundMiddle, plan: pondField }, '2026-05-07T07:10:00+02:00', operator, { truth: 0.634, turns: 30, catches: 3, conditions: [60, 17], note: 'With the repaired scale.' });
  adopt(11, compoundMiddle, 31, q(ADOPTED[11], 'kg'), '2026-05-07T07:40:00+02:00', operator, 'Fallen further; weighed on the repaired scale.');
  test(32, { ...compoundMiddle, plan: pondField }, '2026-05-08T07:05:00+02:00', technician, { truth: 0.711, turns: 30, catches: 3, conditions: [60, 17], note: 'Roller taken out: a crust in every pocket. Washed, dried, put back.' });
  test(33, { ...compoundMiddle, plan: pondField }, '2026-05-08T07:50:00+02:00', technician, { truth: 0.711, turns: 30, catches: 3, conditions: [59, 18], note: 'The second test that was asked for, set up anew: bin weighed again, pulses counted by hand, meter primed.' });
  adopt(12, compoundMiddle, 33, q(ADOPTED[12], 'kg'), '2026-05-08T08:20:00+02:00', technician, 'Roller cleaned; it delivers what it did in March. A second test agrees.');
}

// ---- how an entry is made ----
function check(number, scale, occurredAt, knownKilograms, error, recordedBy, note) {
  const division = scale === platform ? 0.02 : 0.005;
  post('scale-checks', { id: id('check', number), scale, readings: knownKilograms.map(known => ({ known: q(known, 'kg'), indicated: q(shown(known * (1 + error), division), 'kg') })), occurredAt, recordedBy, note });
}

function adopt(number, { meter, element, product, lot }, testNumber, typedIn, occurredAt, recordedBy, reason, supersedes, despite) {
  post('adoptions', { id: id('adoption', number), machine, meter, element, product, lot, test: testNumber ? id('test', testNumber) : undefined, typedIn, reason, despite, occurredAt, recordedBy, supersedes });
}

function test(number, place, occurredAt, recordedBy, { readings, conditions: [tank, air, moisture], note, supersedes, startValue, ...how }) {
  const { meter, element, product, lot, scale, plan } = place;
  const made = readings ?? weigh(meter, how);
  const catches = readings ? made.map(one => ({ ...one, tare: q(1.62, 'kg') })) : made;
  post('catch-tests', {
    id: id('test', number), machine, meter, element, product, lot, scale, plan, occurredAt, recordedBy, note,
    tareReading: meter === 'rear' ? 'zeroed' : undefined, startValue, catches,
    conditions: { tankLevel: q(tank, '%'), productMoisture: moisture ? q(moisture, '%') : undefined, airTemperature: q(air, 'degC'), fanSpeed: q(3400, 'rpm') }, supersedes,
  });
  return made;
}

// One test: the truth of the day, the scatter of the catches around it, and what scale and counter show of that.
function weigh(meter, { truth, turns, catches, repeatability = 0.006, scaleError = meter === 'rear' ? 0.0035 : 0.001, tareForgottenAt, excludedFirst }) {
  const ofTheDay = truth * (1 + 0.003 * normal());
  return Array.from({ length: catches }, (_, i) => {
    const revolutions = turns + Math.round(10 * (random() - 0.5)) / 10;
    const scatter = Array.isArray(repeatability) ? repeatability[i] : repeatability * normal();
    const net = ofTheDay * revolutions * (1 + scatter) * (excludedFirst && i === 0 ? 0.96 : 1) * (1 + scaleError);
    const excluded = excludedFirst && i === 0 ? { reason: excludedFirst } : undefined;
    if (meter === 'rear')
      return { net: q(Math.round(1000 * shown(net, 0.005)), 'g'), revolutions: q(revolutions, 'rev'), excluded };
    const weighed = { gross: q(shown(net + 1.62, 0.02), 'kg'), tare: q(tareForgottenAt === i ? 0 : 1.62, 'kg') };
    return meter === 'middle' ? { ...weighed, pulses: Math.round(PULSES * revolutions) } : { ...weighed, revolutions: q(revolutions, 'rev') };
  });
}

function shown(kilograms, division) {
  return Number((Math.round(kilograms / division) * division).toFixed(3));
}

// ---- chance, the same in every run ----
function seeded(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

function normal() {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

// ---- how the file is written: what fits on a line stays on a line ----
function written(value, depth) {
  const flat = inline(value);
  if (typeof value !== 'object' || flat.length + 2 * depth <= 150)
    return flat;
  const [pad, end] = ['  '.repeat(depth + 1), '  '.repeat(depth)];
  return Array.isArray(value)
    ? `[\n${value.map(one => pad + written(one, depth + 1)).join(',\n')}\n${end}]`
    : `{\n${members(value).map(([name, one]) => `${pad}${JSON.stringify(name)}: ${written(one, depth + 1)}`).join(',\n')}\n${end}}`;
}

function inline(value) {
  if (Array.isArray(value))
    return `[${value.map(inline).join(', ')}]`;
  return value !== null && typeof value === 'object'
    ? `{ ${members(value).map(([name, one]) => `${JSON.stringify(name)}: ${inline(one)}`).join(', ')} }`
    : JSON.stringify(value);
}

function members(value) {
  return Object.entries(value).filter(([, one]) => one !== undefined);
}
