import { celsiusFromFahrenheit } from '../core/conversions';
import type { Certainty, Quantity } from '../core/lawn/quantity';
import { failure, success, type Result } from '../core/result';
import type { ShownUnit } from '../core/shownUnit';
import type {
  AmountFailure,
  Dimension,
  MeasureField,
  ReadingContext,
  Refusal,
  TypedUnit,
} from './amount';
import { genericContainers } from './genericContainers';
import { limits, limitText, measureLimits, temperatureLimits, tidyNumber } from './limits';
import { measureUnit } from './measureText';
import { suggestionFor } from './suggest';
import { tidyText } from './tidyText';
import { dimensionOf, understand, type Said } from './understand';
import { shownUnitOf } from './unitWords';
import { unitsOf } from './unitSystem';

/** A single measure in the field's inside unit: mm for rain and depth, m for length, deg C, kg, L, m2. */
export interface Measure {
  readonly text: string;
  readonly value: number;
  readonly certainty: Certainty;
  readonly unit: TypedUnit | null;
  /** length and width in m, where an area was typed as "4 ft x 8 ft" */
  readonly sides: readonly [number, number] | null;
}

type PlainField = Exclude<MeasureField, 'water' | 'temperature'>;
const takes: Readonly<Record<PlainField, Dimension>> = {
  rain: 'length',
  depth: 'length',
  length: 'length',
  area: 'area',
  volume: 'volume',
  weight: 'mass',
};
/** inside units in one of the arithmetic's (m, m2, m3, kg) */
const scale: Readonly<Record<PlainField, number>> = {
  rain: 1000,
  depth: 1000,
  length: 1,
  area: 1,
  volume: 1000,
  weight: 1,
};
const shownIn = (field: PlainField, context: ReadingContext): ShownUnit =>
  measureUnit(field, unitsOf(context.units));

const refuse = (refusal: Refusal): Result<never, Refusal> => failure(refusal);

function oneSaid(
  text: string,
  field: MeasureField,
  context: ReadingContext,
): Result<{ said: Said; certainty: Certainty }, Refusal> {
  const { today: _today, ...dateless } = context;
  const understood = understand(text, dateless, { sharedUnits: field === 'area', mown: false });
  if (!understood.ok) {
    const { error } = understood;
    return error.kind === 'unknown-unit' && field === 'water' && genericContainers.has(error.word)
      ? refuse({ kind: 'unknown-container', word: error.word })
      : understood;
  }
  const [said, second] = understood.value.said;
  if (!said) return refuse({ kind: 'not-an-amount' });
  if (second) return refuse({ kind: 'two-amounts' });
  return success({ said, certainty: understood.value.certainty });
}

function readPlain(
  text: string,
  field: PlainField,
  context: ReadingContext,
): Result<Measure, Refusal> {
  const one = oneSaid(text, field, context);
  if (!one.ok) return one;
  const { said, certainty } = one.value;
  const found = dimensionOf(said.value);
  const isZero = said.value.amount === 0 && field === 'rain';
  if (found !== takes[field] && !(found === 'number' && (context.bareNumber || isZero)))
    return refuse(
      found === 'number'
        ? { kind: 'no-unit', number: said.value.amount }
        : { kind: 'wrong-dimension', found },
    );
  const value = tidyNumber(
    found === 'number'
      ? said.value.amount * shownIn(field, context).size
      : said.value.amount * scale[field],
  );
  if (value < 0) return refuse({ kind: 'negative' });
  if (value === 0 && field !== 'rain') return refuse({ kind: 'zero' });
  const limit = measureLimits[field];
  if (value > limit)
    return refuse({ kind: 'too-large', limit: limitText(limit, shownIn(field, context)) });
  const inside = field === 'length' || field === 'area' ? 'm' : 'mm';
  const shown = said.unit ? shownUnitOf(said.unit, inside) : null;
  return success({
    text: text.trim(),
    value,
    certainty,
    unit:
      said.unit && shown
        ? {
            dimension: said.unit.dimension,
            shown: field === 'rain' ? { ...shown, style: 'decimal' } : shown,
          }
        : null,
    sides: said.sides,
  });
}

const degrees = /^([+-]?\d+(?:\.\d+)?)\s*(?:°|deg(?:rees?)?)?\s*(c|f|celsius|fahrenheit)?$/;

function readDegrees(text: string, context: ReadingContext): Result<Measure, Refusal> {
  const tidy = tidyText(text, 'metric');
  if (!tidy.ok) return tidy;
  const match = degrees.exec(tidy.value.replace(/^(?:minus|-)\s*(?=\d)/, '-'));
  if (!match) return refuse({ kind: 'not-an-amount' });
  const scaleTyped = match[2]?.[0];
  const number = Number(match[1]);
  if (scaleTyped === undefined && !context.bareNumber) return refuse({ kind: 'no-unit', number });
  const isFahrenheit = (scaleTyped ?? (context.units === 'us' ? 'f' : 'c')) === 'f';
  const value = tidyNumber(isFahrenheit ? celsiusFromFahrenheit(number) : number);
  if (value < temperatureLimits.lowest || value > temperatureLimits.highest)
    return refuse({
      kind: 'too-large',
      limit: limitText(temperatureLimits.highest, unitsOf(context.units).temperature),
    });
  return success({ text: text.trim(), value, certainty: 'plain', unit: null, sides: null });
}

const readInside = (
  text: string,
  field: Exclude<MeasureField, 'water'>,
  context: ReadingContext,
): Result<Measure, Refusal> =>
  field === 'temperature' ? readDegrees(text, context) : readPlain(text, field, context);

/**
 * Reads one measure: rain and depth (mm), length (m), area (m2, also "25 x 20 ft"), volume (L),
 * weight (kg), temperature (deg C). Rain may be nothing; temperature may be below nought; all
 * else is above nought. A number alone is taken in the garden's unit when `context.bareNumber`.
 *
 * @returns the measure, or a failure that carries an entry which can be read
 */
export function readMeasure(
  text: string,
  field: Exclude<MeasureField, 'water'>,
  context: ReadingContext,
): Result<Measure, AmountFailure> {
  const measure = readInside(text, field, context);
  if (measure.ok) return measure;
  const reads = (candidate: string): boolean => readInside(candidate, field, context).ok;
  const suggestion = suggestionFor(measure.error, text, field, context, reads);
  return failure({ ...measure.error, field, suggestion });
}

/** Water as it was typed; `waterMillimetres` brings it to mm on a bed. */
export interface WaterReading {
  readonly text: string;
  readonly quantity: Extract<Quantity, { kind: 'volume' | 'containers' | 'depth' }>;
  readonly certainty: Certainty;
  readonly unit: TypedUnit | null;
  /** what a can was taken to hold [L], where the garden has none; else null */
  readonly assumedCanLitres: number | null;
}

/** A usual watering can; assumed where the garden has none of its own, and said so. */
const usualCan = { litres: 10, id: 'usual can' } as const;
const canNames = [
  { name: 'can', plural: 'cans' },
  { name: 'watering can', plural: 'watering cans' },
];

/** The garden's containers, and a usual can where none of them is called so. */
function withCan(context: ReadingContext): ReadingContext {
  const isCan = ({ name }: { readonly name: string }) => /\bcan$/i.test(name.trim());
  if (context.containers.some(isCan)) return context;
  const cans = canNames.map((names) => ({ ...usualCan, ...names }));
  return { ...context, containers: [...context.containers, ...cans] };
}

function water(text: string, garden: ReadingContext): Result<WaterReading, Refusal> {
  const context = withCan(garden);
  const one = oneSaid(text, 'water', context);
  if (!one.ok) return one;
  const { said, certainty } = one.value;
  const found = dimensionOf(said.value);
  const amount = tidyNumber(said.value.amount);
  const units = unitsOf(context.units);
  if (amount === 0) return refuse({ kind: 'zero' });
  if (amount < 0) return refuse({ kind: 'negative' });
  const shown = said.unit ? shownUnitOf(said.unit, 'mm') : null;
  const reading = (quantity: WaterReading['quantity']): Result<WaterReading, Refusal> =>
    success({
      text: text.trim(),
      quantity,
      certainty,
      unit: said.unit && shown ? { dimension: said.unit.dimension, shown } : null,
      assumedCanLitres: said.value.container?.id === usualCan.id ? usualCan.litres : null,
    });
  switch (found) {
    case 'number':
      if (!context.bareNumber) return refuse({ kind: 'no-unit', number: amount });
      return reading({ kind: 'depth', millimetres: amount * units.rain.size });
    case 'length':
      if (amount * 1000 > limits.depthMillimetres)
        return refuse({ kind: 'too-large', limit: limitText(limits.depthMillimetres, units.rain) });
      return reading({ kind: 'depth', millimetres: tidyNumber(amount * 1000) });
    case 'volume':
      if (amount * 1000 > limits.litres)
        return refuse({ kind: 'too-large', limit: limitText(limits.litres, units.volume) });
      return reading({ kind: 'volume', litres: tidyNumber(amount * 1000) });
    case 'containers': {
      const { container } = said.value;
      if (!container) return refuse({ kind: 'not-an-amount' });
      if (amount > limits.containers)
        return refuse({ kind: 'too-large', limit: `${limits.containers} ${container.plural}` });
      if (container.id === usualCan.id)
        return reading({ kind: 'volume', litres: tidyNumber(amount * container.litres) });
      return reading({ kind: 'containers', count: amount, containerId: container.id });
    }
    default:
      return refuse({ kind: 'wrong-dimension', found });
  }
}

/** Reads a watering: "10 mm", "half an inch", "20 L", "2 cans". A number alone is mm or inches. */
export function readWater(
  text: string,
  context: ReadingContext,
): Result<WaterReading, AmountFailure> {
  const reading = water(text, context);
  if (reading.ok) return reading;
  const reads = (candidate: string): boolean => water(candidate, context).ok;
  const suggestion = suggestionFor(reading.error, text, 'water', context, reads);
  return failure({ ...reading.error, field: 'water', suggestion });
}

/**
 * Depth of a watering on a bed [mm]: 1 L on 1 m2 is 1 mm (a definition).
 * @returns null when the container is not known
 */
export function waterMillimetres(
  quantity: WaterReading['quantity'],
  areaM2: number,
  containers: ReadingContext['containers'],
): number | null {
  switch (quantity.kind) {
    case 'depth':
      return quantity.millimetres;
    case 'volume':
      return quantity.litres / areaM2;
    case 'containers': {
      const container = containers.find((known) => known.id === quantity.containerId);
      return container ? (quantity.count * container.litres) / areaM2 : null;
    }
  }
}
