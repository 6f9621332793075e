import { materials, type MaterialId } from '../../../app/tables/materials';
import type { MaterialRow } from '../../../app/tables/shapes';
import type { Points } from '../../../app/core/season/draws/spread';
import { actingOf, carbonToNitrogenOf } from '../field';
import { breakEven, incubate, incubateSlow } from '../incubation';
import { around, exactly, type Cases, type Ours } from './shape';

/** A residue mixed into soil in a laboratory: % of its nitrogen set free. */
export const jar =
  (id: string, kind: 'green' | 'mature', ratio: Points, celsius: number, days: Points): Ours =>
  (values) =>
    incubate(
      {
        kind,
        carbonToNitrogen: values.of(`C:N of ${id}`, ratio) * actingOf(id, values),
        celsius,
        days: Math.round(values.of(`days of ${id}`, days)),
      },
      values,
    ).nitrogenPercent;

const catchCrop =
  (id: string, ratio: number): Ours =>
  (values) => {
    const acting = actingOf(id, values);
    const jarOf = {
      kind: 'green',
      carbonToNitrogen: ratio * acting,
      celsius: 15,
      days: 168,
    } as const;
    // of the carbon there is, not of what acts
    return incubate(jarOf, values).perGramCarbon * acting;
  };

const week =
  (kind: 'green' | 'mature', id: MaterialId): Ours =>
  (values) =>
    incubate(
      { kind, carbonToNitrogen: carbonToNitrogenOf(id, values), celsius: 15, days: 7 },
      values,
    ).carbonPercent;

const slow =
  (id: MaterialId, celsius: Points, days: number, basis: 'total' | 'organic'): Ours =>
  (values) => {
    const row: MaterialRow = materials[id];
    const share = (name: string, spread: Points | undefined): number =>
      spread ? values.of(`${name} of ${id}`, spread, true) : 0;
    return incubateSlow(
      {
        ready: share('ready share', row.mineralShare),
        slow: share('slow share', row.slowShare),
        kind: row.slowKind ?? 'compost',
      },
      values.of('warmth of a jar', celsius),
      days,
      basis,
      values,
    );
  };
/** Warmth of a laboratory where the abstract gives none. Assumed. */
const laboratory: Points = { low: 20, typical: 23, high: 28 };
const laboratoryCompost = slow('compost-garden', laboratory, 63, 'total');
/** Four warmths of 10, 15, 20 and 25 C decay together as fast as 18 C. */
const tenToTwentyFive = exactly(18);

/** Incubations: mixed into moist soil at one warmth, with all the nitrogen that is wanted at hand. */
export const jars: Cases = {
  R01: jar('R01', 'green', exactly(10), 20, exactly(112)),
  R03: jar('R03', 'green', { low: 10, typical: 12, high: 15 }, 25, {
    low: 68,
    typical: 98,
    high: 168,
  }),
  R09: jar('R09', 'green', around(11, 15), 25, exactly(120)),
  R10: jar('R10', 'mature', around(12, 16), 25, exactly(120)),
  R11: jar('R11', 'green', around(10, 14), 25, exactly(115)),
  R12: jar('R12', 'green', around(13, 18), 25, exactly(115)),
  R13: jar('R13', 'green', around(15, 22), 25, exactly(115)),
  R14: jar('R14', 'green', around(12, 16), 25, exactly(140)),
  R04: catchCrop('R04', 9.5),
  R05: catchCrop('R05', 34),
  R06: (values) => breakEven('mature', 15, 168, values),
  NA01: slow('compost-poultry', exactly(23), 84, 'total'),
  NA02: slow('alfalfa-meal', exactly(23), 84, 'total'),
  NA03: slow('blood-meal', exactly(23), 84, 'total'),
  NA06: slow('feather-meal', tenToTwentyFive, 56, 'organic'),
  NA07: slow('blood-meal', tenToTwentyFive, 56, 'organic'),
  NA08: slow('feather-meal', tenToTwentyFive, 14, 'organic'),
  NA09: slow('feather-meal', exactly(25), 56, 'organic'),
  NA10: slow('manure-cow-fresh', exactly(25), 84, 'organic'),
  NA11: slow('compost-cattle-manure', exactly(25), 84, 'organic'),
  NA12: slow('compost-garden', exactly(25), 84, 'organic'),
  NA13: slow('compost-garden', exactly(25), 168, 'organic'),
  R21: laboratoryCompost,
  R22: laboratoryCompost,
  R23: laboratoryCompost,
  NA15: week('green', 'vegetable-trimmings'),
  NA16: week('mature', 'straw-barley'),
};
