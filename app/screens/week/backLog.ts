import type { BackLogEntry } from '../../amounts/readBackLog';
import { textFromDay } from '../../core/days';
import type { Application, Garden, Mowing, Wetness } from '../../document/schema';
import type { BacklogDraft, Recipe } from '../../store/contract';
import { freshIds } from '../../store/freshIds';

export interface BackLogChoices {
  readonly lawnId: string;
  /** '' when it was left on the lawn */
  readonly bedId: string;
  readonly wetness: Wetness;
  readonly condition: Application['condition'];
}

/** Entries that are alike and evenly spaced, laid on one bed, as one draft; otherwise null. */
export function regularDraft(
  entries: readonly BackLogEntry[],
  choices: BackLogChoices,
): BacklogDraft | null {
  const [first, second] = entries;
  const last = entries.at(-1);
  if (!first || !last || choices.bedId === '') return null;
  const step = second ? second.day - first.day : 7;
  const words = JSON.stringify(first.reading.amount);
  const isEven = entries.every(
    ({ day, reading }, index) =>
      day === first.day + index * step && JSON.stringify(reading.amount) === words,
  );
  if (!isEven || step < 1) return null;
  return {
    lawnId: first.reading.lawnId ?? choices.lawnId,
    bedId: choices.bedId,
    from: textFromDay(first.day),
    to: textFromDay(last.day),
    everyDays: step,
    amount: first.reading.amount,
    wetness: first.reading.wetness ?? choices.wetness,
    condition: first.reading.condition ?? choices.condition,
    placement: 'laid',
  };
}

/** Entries of any days and amounts, as one change of the garden. */
export function backLogRecipe(
  entries: readonly BackLogEntry[],
  choices: BackLogChoices,
  garden: Garden,
): Recipe {
  const nextMowing = freshIds('mowing', garden.mowings);
  const nextLayer = freshIds('application', garden.applications);
  const made = entries.map(({ day, reading }) => {
    const date = textFromDay(day);
    const wetness = reading.wetness ?? choices.wetness;
    const mowing: Mowing = {
      id: nextMowing(),
      date,
      lawnId: reading.lawnId ?? choices.lawnId,
      amount: reading.amount,
      wetness,
      kind: null,
      rest: { to: 'lawn' },
    };
    const layer: Application | null =
      choices.bedId === '' || reading.amount.quantity.kind === 'mown'
        ? null
        : {
            id: nextLayer(),
            date,
            bedId: choices.bedId,
            from: { source: 'mowing', mowingId: mowing.id },
            amount: reading.amount,
            condition: reading.condition ?? choices.condition,
            wetness,
            placement: 'laid',
            mixtureId: null,
            passedStops: [],
          };
    return { mowing, layer };
  });
  return (draft) => {
    for (const { mowing, layer } of made) {
      draft.mowings.push(mowing);
      if (layer) draft.applications.push(layer);
    }
  };
}
