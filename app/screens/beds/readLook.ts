import type { LookKind } from '../../core/season/draws/signs';
import { lookAnswers, type Garden } from '../../document/schema';
import type { LookEvent } from '../../document/looks';
import { cropById } from '../../document/cropValues';

/** The answers as they stand in the dialog; null, or not there: not looked. */
export type LookEntry = Readonly<Partial<Record<LookKind, string | null>>>;

type LookAnswers = Omit<LookEvent, 'id' | 'date' | 'kind' | 'bedId' | 'note'>;

const oneOf = <Value extends string>(
  values: readonly Value[],
  text: string | null | undefined,
): Value | undefined => values.find((value) => value === text);

const yesOrNo = (text: string | null | undefined): boolean | undefined =>
  text === 'yes' ? true : text === 'no' ? false : undefined;

/** What the dialog means; null when nothing was looked for. What was not looked for is left out. */
export function readLook(entry: LookEntry): LookAnswers | null {
  const { nodules, leaves, soilSeen } = lookAnswers;
  const all = {
    nodules: oneOf(nodules, entry.nodules),
    leaves: oneOf(leaves, entry.leaves),
    smellsSour: yesOrNo(entry.smellsSour),
    moistFingerDeep: yesOrNo(entry.moistFingerDeep),
    slugsUnderBoard: yesOrNo(entry.slugsUnderBoard),
    soilSeen: oneOf(soilSeen, entry.soilSeen),
  };
  const given = Object.entries(all).filter(([, value]) => value !== undefined);
  return given.length > 0 ? (Object.fromEntries(given) as LookAnswers) : null;
}

/** Whether beans, peas or other legumes stand on a bed on a day, for as much as was typed. */
export const hasLegumeOn = (garden: Garden, bedId: string, date: string): boolean =>
  garden.plantings.some(
    (planting) =>
      planting.bedId === bedId &&
      planting.started <= date &&
      (planting.cleared === null || planting.cleared >= date) &&
      (cropById(garden, planting.cropId)?.legume ?? null) !== null,
  );
