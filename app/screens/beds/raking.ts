import { dayOf, type DayNumber } from '../../core/days';
import { flowKinds } from '../../core/season/flows';
import { areaOn } from '../../document/bedPast';
import { broughtLayers, leftAfter, lyingOnEve } from '../../document/broughtLayers';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import { massOf } from '../../document/layerMass';
import {
  materialById,
  materialFrom,
  mowingOf,
  type MaterialValues,
} from '../../document/materialValues';
import type { Application, Bed, Garden, GardenEvent } from '../../document/schema';
import type { BedResults, LayingPart } from '../../store/contract';

/** Layers that came with the ground; on its first morning less what was done to one ground alone. */
const broughtNow = ({ input }: Pick<BedResults, 'input'>, eve: number) =>
  broughtLayers(input).map(({ layer, dryKgPerM2, morning }) => ({
    layer,
    dryKgPerM2: eve < 0 ? dryKgPerM2 * leftAfter(morning) : dryKgPerM2,
  }));

/** A layer as it lies before the work of a day begins. */
interface Lying {
  readonly application: Application;
  readonly dryKgPerM2: number;
}

export type Raking = Extract<GardenEvent, { kind: 'rake off' }>;

// raking comes before laying on a day: it finds what lay the evening before
const morningOf = ({ season }: Pick<BedResults, 'season'>, day: DayNumber): number =>
  Math.min(day, season.today + 1) - 1 - season.firstDay;

function lyingBefore(garden: Garden, results: BedResults, day: DayNumber): readonly Lying[] {
  const index = morningOf(results, day);
  const laid = [
    ...results.input.layers.map((layer) => ({ layer, dryKgPerM2: layer.dryKgPerM2 })),
    ...broughtNow(results, index),
  ];
  return laid.flatMap(({ layer: { id }, dryKgPerM2: asLaid }) => {
    const application = garden.applications.find((one) => one.id === id);
    const dryKgPerM2 = asLaid * lyingOnEve(results.season, id, index + 1);
    return application && dryKgPerM2 > 0 ? [{ application, dryKgPerM2 }] : [];
  });
}

/**
 * The whole cover of a bed before the work of a day begins [kg dry matter per m2]; 0 outside the run.
 * On the first morning of a bed made of others it is the layers that came with their ground.
 */
export function dryLyingBefore({ input, season }: BedResults, day: DayNumber): number {
  const index = morningOf({ season }, day);
  if (index !== -1) return season.coverDryKg[index] ?? 0;
  return broughtNow({ input }, index).reduce(
    (sum, { layer, dryKgPerM2 }) => sum + dryKgPerM2 * lyingOnEve(season, layer.id, 0),
    0,
  );
}

/**
 * The layer that was laid last and still lies on the morning of a day, as a share of all that lies
 * there; everything laid on that one day counts as one layer.
 *
 * @returns null where nothing lies
 */
export function topLayer(
  garden: Garden,
  results: BedResults,
  day: DayNumber,
): { readonly laidOn: string; readonly share: number; readonly material: MaterialValues } | null {
  const lying = lyingBefore(garden, results, day);
  const all = dryLyingBefore(results, day);
  const laidOn = lying
    .map(({ application }) => application.date)
    .sort()
    .at(-1);
  if (laidOn === undefined || all <= 0) return null;
  const top = lying.filter(({ application }) => application.date === laidOn);
  const dry = top.reduce((sum, { dryKgPerM2 }) => sum + dryKgPerM2, 0);
  const [most] = [...top].sort((one, other) => other.dryKgPerM2 - one.dryKgPerM2);
  return most
    ? {
        laidOn,
        share: Math.min(1, dry / all),
        material: materialFrom(garden, most.application.from),
      }
    : null;
}

/** What came off a bed by raking. */
export interface TakenOff {
  readonly dryKilograms: number;
  readonly nitrogenGrams: number;
  /** what most of it was */
  readonly material: MaterialValues;
  /** lawns and stores it came from whose stuff is held back from beds, by name */
  readonly heldBack: readonly string[];
}

/**
 * What a raking took off, as the run has it: dry matter by the share that was raked, nitrogen by
 * the run's own flows of that day, split by share where a bed was raked more than once on it.
 *
 * @returns null where nothing was lying, or the run does not yet know of this raking
 * @source the run; no measured constant enters
 */
export function takenOff(
  garden: Garden,
  bed: Bed,
  results: BedResults,
  raking: Raking,
): TakenOff | null {
  const day = dayOf(raking.date);
  const index = day - results.season.firstDay;
  if (index < 0 || index >= results.season.days) return null;
  const lying = lyingBefore(garden, results, day);
  const rakings = garden.events.filter(
    (event): event is Raking =>
      event.kind === 'rake off' && event.bedId === bed.id && event.date === raking.date,
  );
  // the answer may still be that of the garden before the raking was written down or changed
  const answered = results.input.events.flatMap((event) =>
    event.kind === 'rake off' && event.day === day ? [event.share] : [],
  );
  const written = rakings.map(({ share }) => share);
  if (String(answered.sort()) !== String(written.sort())) return null;
  let stays = 1;
  let own = 0;
  for (const event of rakings) {
    if (event.id === raking.id) own = stays * event.share;
    stays *= 1 - event.share;
  }
  const nitrogen = flowKinds.reduce(
    (sum, { to, why }, flow) =>
      to === 'removed' && why === 'raked off'
        ? sum +
          (results.season.flows[flow]?.[index] ?? 0) -
          // raked off one of its grounds before they were one
          (index === 0 ? (results.season.brought?.flows[flow] ?? 0) : 0)
        : sum,
    0,
  );
  const areaM2 = areaOn(bed, raking.date);
  const dry = dryLyingBefore(results, day) * own * areaM2;
  // layers that were raked off whole are gone from `left`, not from the morning before
  const [most] = [...lying].sort((one, other) => other.dryKgPerM2 - one.dryKgPerM2);
  if (!most || dry <= 0 || stays >= 1) return null;
  const top = topLayer(garden, results, day);
  const isTop = top !== null && Math.abs(top.share - raking.share) < 0.005;
  return {
    dryKilograms: dry,
    nitrogenGrams: ((nitrogen * own) / (1 - stays)) * areaM2,
    material: isTop ? top.material : materialFrom(garden, most.application.from),
    heldBack: heldBackSources(garden, lying),
  };
}

function heldBackSources(garden: Garden, lying: readonly Lying[]): readonly string[] {
  const names = lying.flatMap(({ application: { from } }) => {
    const mowing = mowingOf(garden, from);
    if (mowing) {
      const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
      return lawn && lawnHeldBack(garden, lawn, dayOf(mowing.date)) ? [lawn.name] : [];
    }
    const stock =
      from.source === 'stock' ? garden.stock.find(({ id }) => id === from.stockId) : undefined;
    const { answer } = stock?.treatment ?? { answer: 'nothing' };
    return stock && (answer === 'treated' || answer === 'unknown') ? [stock.name] : [];
  });
  return [...new Set(names)];
}

/** Bounds of a lot's own nitrogen in the file [% of dry weight]. */
const contents = { least: 0.01, most: 20 } as const;

/**
 * What came off as something to be laid elsewhere: its dry matter and the nitrogen it still has,
 * as crisp stuff of its material. How far it has rotted is known by its nitrogen only.
 *
 * @returns null where it holds next to nothing
 */
export function partOfTaken(
  garden: Garden,
  taken: TakenOff,
  write: (kilograms: number) => string,
): LayingPart | null {
  const material = materialById(garden, taken.material.id);
  const handling = { condition: 'crisp', wetness: 'dry' } as const;
  const one = massOf(garden, { kind: 'mass', kilograms: 1 }, material, handling, null);
  const nitrogenPercent = taken.nitrogenGrams / taken.dryKilograms / 10;
  if (taken.dryKilograms < 0.05 || one.dryKilograms <= 0 || nitrogenPercent < contents.least)
    return null;
  const kilograms = taken.dryKilograms / one.dryKilograms;
  return {
    from: { source: 'elsewhere', materialId: material.id },
    amount: {
      text: write(kilograms),
      quantity: { kind: 'mass', kilograms },
      certainty: 'about',
    },
    ...handling,
    nitrogenPercent: Math.min(contents.most, nitrogenPercent),
  };
}
