import { amount, amountWithUnit, degrees } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { keyWords, seasonLineWords, stageWords } from '../../words/seasonChart';
import { stuffWords } from '../../words/stuffWords';
import { stuffs, type Stuff } from '../cover/data';
import type { ChartValue } from '../ChartSays';
import type { EndLabel, NitrateGeometry } from './geometry';
import type { DayReading } from './reading';
import { stages, type Stage } from './strips';

/** What a line of the key stands for. */
export type KeyName =
  | EndLabel['name']
  | 'ready'
  | 'likely'
  | 'past'
  | 'from'
  | 'rain of the day'
  | 'watered'
  | 'air warmth'
  | 'soil warmth'
  | `stage ${Stage}`
  | `laid ${Stuff}`;

export interface KeyRow {
  readonly name: KeyName;
  readonly words: string;
  /** on the chosen day; of a published line the line's own */
  readonly value: string;
}

/** The key of the drawing, by panel; each line carries the value of the chosen day. */
export interface KeyRows {
  readonly supply: readonly KeyRow[];
  readonly nitrate: readonly KeyRow[];
  /** marks on the stems, and colours of what was laid: those that are drawn */
  readonly plantings: readonly KeyRow[];
  readonly layers: readonly KeyRow[];
  readonly rain: readonly KeyRow[];
  readonly warmth: readonly KeyRow[];
}

/** The lines of a key that have a value, as they are read. */
export const keyValues = (rows: KeyRows): readonly ChartValue[] =>
  Object.values<readonly KeyRow[]>({ ...rows })
    .flat()
    // of what is not known there is nothing to tell
    .filter(({ value }) => /\d/.test(value))
    .map(({ name, words, value }) => ({ key: name, of: words, text: value }));

/** What of the view has no line of its own in the reading. */
export interface KeyDrawn {
  readonly watering: boolean;
  readonly stages: ReadonlySet<Stage>;
  readonly stuffs: ReadonlySet<Stuff>;
}

const lines = ['demand', 'got', 'usable'] as const;

/**
 * The key and the reading in one: lines first, then bands as they lie on each other, from the top
 * down. Which lines there are hangs on the whole view, so that none comes and goes with the day.
 */
export function keyRows(
  reading: DayReading,
  labels: readonly EndLabel[],
  nitrate: Pick<NitrateGeometry, 'enough' | 'likely'>,
  units: ChartUnits,
  drawn: KeyDrawn,
): KeyRows {
  const grams = (value: number) => amount(value, units.nitrogen);
  const has = (name: EndLabel['name']): boolean => labels.some((label) => label.name === name);
  const row = (name: EndLabel['name'], value: number): KeyRow => ({
    name,
    words: seasonLineWords[name],
    value: grams(value),
  });
  const valueOf: Readonly<Record<(typeof lines)[number], number>> = {
    demand: reading.demand,
    got: reading.got,
    usable: reading.supply - reading.gone,
  };
  return {
    supply: [
      ...lines.filter(has).map((name) => row(name, valueOf[name])),
      ...reading.bands
        .filter(({ name }) => has(name))
        .toReversed()
        .map((band) => row(band.name, band.grams)),
      ...(has('gone') ? [row('gone', reading.gone)] : []),
    ],
    nitrate: [
      {
        name: 'ready',
        words: keyWords.ready,
        value: `${grams(reading.readyTop)} (${Math.round(reading.nitrateMgPerKg)} mg/kg)`,
      },
      ...(nitrate.likely
        ? [
            {
              name: 'likely' as const,
              words: keyWords.likely,
              value: reading.likely
                ? `${grams(reading.likely.low)}–${grams(reading.likely.high)}`
                : '–',
            },
          ]
        : []),
      ...nitrate.enough.toReversed().map(({ name, mgPerKg }) => ({
        name,
        words: keyWords[name],
        value: `${mgPerKg} mg/kg`,
      })),
    ],
    plantings: stages
      .filter((stage) => drawn.stages.has(stage))
      .map((stage) => ({ name: `stage ${stage}`, words: stageWords[stage], value: '' })),
    layers: stuffs
      .filter((stuff) => drawn.stuffs.has(stuff))
      .map((stuff) => ({ name: `laid ${stuff}`, words: stuffWords[stuff], value: '' })),
    rain: [
      {
        name: 'rain of the day',
        words: keyWords.rain,
        value: amountWithUnit(reading.rain, units.rain),
      },
      ...(drawn.watering
        ? [
            {
              name: 'watered' as const,
              words: keyWords.watered,
              value: amountWithUnit(reading.watered, units.rain),
            },
          ]
        : []),
    ],
    warmth: [
      {
        name: 'air warmth',
        words: keyWords.air,
        value: `${degrees(reading.airMinimum, units)} to ${degrees(reading.airMaximum, units)} ${units.warmth.short}`,
      },
      {
        name: 'soil warmth',
        words: keyWords.soil,
        value: `${degrees(reading.soil, units)} ${units.warmth.short}`,
      },
    ],
  };
}
