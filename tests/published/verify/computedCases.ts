import { join } from 'node:path';
import type { SingleMeasure } from '../../../app/amounts/measureText';
import { readMeasure } from '../../../app/amounts/readMeasure';
import { usUnits } from '../../../app/amounts/unitSystem';
import {
  gramsPerM2PerCentimetrePerPoundPerAcreInch,
  gramsPerM2PerPoundPer1000SquareFeet,
  kilogramsPerM3PerPoundPerCubicYard,
  litresPerBushel,
  millimetresPerInch,
} from '../../../app/core/conversions';
import { decayParameters } from '../../../app/core/cover/decay';
import { fromShown, toShown } from '../../../app/core/shownUnit';
import { burnsShare } from '../../../app/core/soil/leaching';
import { temperatureFactor } from '../../../app/core/soil/temperature';
import { asPublished, breakEven, decompose, printedDays } from '../decomposition';
import { readCases } from '../readCases';
import type { Comparison, ComparisonGroup, Standing } from './comparison';

const casesOf = (name: string, file?: string): readonly string[][] =>
  readCases(join(import.meta.dirname, '..', name), file).rows;

const compare =
  (source: string, place: string, standing: Standing = 'computed apart') =>
  (quantity: string, printed: string | undefined, ours: number): Comparison => ({
    source,
    place,
    quantity,
    printed: printed ?? '',
    ours,
    within: 'digits',
    standing,
  });

function decomposition(
  materialClass: 'green' | 'mature',
  folder: string,
  source: string,
): Comparison[] {
  const solved = compare(source, 'equations solved apart (Runge-Kutta)');
  const rows = casesOf(folder).flatMap(([ratio = '', decay, microbes, humified, ...printed]) => {
    const parameters = decayParameters(materialClass, Number(ratio), asPublished);
    return [
      solved(`C:N ${ratio}: decay per day`, decay, parameters.decay),
      solved(`C:N ${ratio}: C:N of microbes`, microbes, parameters.microbeCarbonToNitrogen),
      solved(`C:N ${ratio}: humified share`, humified, parameters.humusShare),
      ...printedDays.flatMap((days, at) => {
        const { nitrogen, carbon } = decompose(materialClass, Number(ratio), days, days);
        return [
          solved(`C:N ${ratio}, day ${days}: mg N per g C`, printed[at], nitrogen),
          solved(
            `C:N ${ratio}, day ${days}: % of C gone`,
            printed[at + printedDays.length],
            carbon,
          ),
        ];
      }),
    ];
  });
  const even = casesOf(folder, 'break-even.csv').map(([day, printed]) =>
    solved(
      `C:N with nothing freed nor tied up by day ${day}`,
      printed,
      breakEven(materialClass, Number(day), 9, 60),
    ),
  );
  return [...rows, ...even];
}

/** The table took 273 for 273.15: its temperature is ours plus this. */
const kelvinSlip = 0.15;
const lloyd = compare(
  'Lloyd and Taylor 1994',
  'table worked out from the equation, with 273 K for 0 deg C',
);
const warmth = casesOf('LloydTaylor1994-temperature')
  .filter(([celsius]) => Number(celsius) >= 1)
  .flatMap(([celsius, at10, at15]) => {
    const ours = temperatureFactor(Number(celsius) - kelvinSlip);
    return [
      lloyd(`${celsius} deg C, 1 at 10`, at10, ours / temperatureFactor(10)),
      lloyd(`${celsius} deg C, 1 at 15`, at15, ours / temperatureFactor(15 - kelvinSlip)),
    ];
  });

const washing = casesOf('Scotter1993-leaching').flatMap(([p, vm, h, burns, limit]) => {
  const [drainage, capacity, depth] = [Number(p), Number(vm), Number(h)];
  const what = `${p} cm of drainage, ${vm} % held, ${h} cm deep`;
  return [
    compare('Burns 1975', 'worked out from the recalled form; a check beside the program')(
      what,
      burns,
      burnsShare(drainage, capacity, depth),
    ),
    compare('Scotter, White and Dyson 1993', 'worked out: limit of Burns’ form')(
      what,
      limit,
      burnsShare(drainage * 1e6, capacity, depth * 1e6),
    ),
  ];
});

const ways: Readonly<Record<string, (value: number) => number>> = {
  'lb/yd3 kg/m3': (value) => value * kilogramsPerM3PerPoundPerCubicYard,
  'g/m2 lb/1000ft2': (value) => toShown(value, usUnits.nitrogenPerArea),
  'lb/1000ft2 g/m2': (value) => value * gramsPerM2PerPoundPer1000SquareFeet,
  'lb/acre/in g/m2/cm': (value) => value * gramsPerM2PerCentimetrePerPoundPerAcreInch,
  'kg/ha g/m2': (value) => (value * 1000) / 10_000,
  'in mm': (value) => value * millimetresPerInch,
  'bushel L': (value) => value * litresPerBushel,
  'F C': (value) => fromShown(value, usUnits.temperature),
};
const conversions = casesOf('definitions-conversions').map(([from, value, to, printed]) =>
  compare('readings of the sources, converted', 'definitions-conversions')(
    `${value} ${from} in ${to}`,
    printed,
    ways[`${from} ${to}`]?.(Number(value)) ?? NaN,
  ),
);
const definitions = casesOf('definitions-conversions', 'definitions.csv').map(
  ([typed = '', field, inside]) => {
    const reading = readMeasure(typed, field as SingleMeasure, { units: 'metric', containers: [] });
    if (!reading.ok) throw new Error(reading.error.kind);
    return compare(
      'international yard and pound agreement, gallon and bushel acts',
      'definitions',
      'recalled',
    )(typed, inside, reading.value.value);
  },
);

export const computedGroups: readonly ComparisonGroup[] = [
  {
    title: 'Decomposition of green material, solved apart',
    equations: [],
    comparisons: decomposition(
      'green',
      'Justes2009-decomposition',
      'Justes, Mary and Nicolardot 2009',
    ),
  },
  {
    title: 'Decomposition of mature material, solved apart',
    equations: [],
    comparisons: decomposition(
      'mature',
      'Nicolardot2001-decomposition',
      'Nicolardot, Recous and Mary 2001',
    ),
  },
  { title: 'Speed by temperature, worked out apart', equations: [], comparisons: warmth },
  { title: 'Nitrate washed past a depth, worked out apart', equations: [], comparisons: washing },
  { title: 'Units', equations: [], comparisons: [...conversions, ...definitions] },
];
