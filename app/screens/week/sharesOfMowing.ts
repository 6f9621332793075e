import { anyBed } from '../../document/bedPast';
import { driedShare, mowingAccount } from '../../document/accounts';
import { shareWords } from '../../words/weekWords';
import type { Garden, Mowing } from '../../document/schema';

/** One place that a part of a mowing went to. */
export interface MowingShare {
  readonly key: string;
  readonly words: string;
  readonly dryKilograms: number;
  readonly kind: 'bed' | 'lawn' | 'heap' | 'store' | 'lost' | 'open';
}

const nameOf = (
  things: readonly { readonly id: string; readonly name: string }[],
  wanted: string,
): string | undefined => things.find(({ id }) => id === wanted)?.name;

/** Where a mowing went, all of it: beds, beds since deleted, and the rest; by dry matter. */
export function sharesOfMowing(garden: Garden, mowing: Mowing): readonly MowingShare[] {
  const { layers, gone, leftDryKilograms, leftShare, totalDryKilograms } = mowingAccount(
    garden,
    mowing,
  );
  const byBed = new Map<string, number>();
  for (const layer of layers) {
    // the account of the mowing as if this were its only layer
    const dry = mowingAccount({ ...garden, applications: [layer] }, mowing).laidDryKilograms;
    byBed.set(layer.bedId, (byBed.get(layer.bedId) ?? 0) + dry);
  }
  const onBeds = [
    ...[...byBed].map(([bedId, dryKilograms]): MowingShare => ({
      key: bedId,
      words: anyBed(garden, bedId)?.name ?? '',
      dryKilograms,
      kind: 'bed',
    })),
    ...gone.map(({ name, dryKilograms }, index): MowingShare => ({
      key: `gone ${index}`,
      words: `${name}, a bed since deleted,`,
      dryKilograms,
      kind: 'bed',
    })),
  ];
  if (leftShare <= 0.005 || totalDryKilograms <= 0) return onBeds;
  const { rest } = mowing;
  if (rest.to === 'store')
    return [
      ...onBeds,
      {
        key: 'rest',
        words: shareWords.dried(nameOf(garden.stock, rest.stockId) ?? shareWords.store),
        dryKilograms: driedShare * leftDryKilograms,
        kind: 'store',
      },
      {
        key: 'lost',
        words: shareWords.lost,
        dryKilograms: (1 - driedShare) * leftDryKilograms,
        kind: 'lost',
      },
    ];
  const words =
    rest.to === 'lawn'
      ? shareWords.lawn
      : rest.to === 'heap'
        ? shareWords.heap(
            nameOf(garden.stock, rest.stockId) ?? shareWords.aHeap,
            rest.leaves ? (nameOf(garden.stock, rest.leaves.stockId) ?? null) : null,
          )
        : shareWords.inHand;
  const kind = rest.to === 'undecided' ? 'open' : rest.to;
  return [...onBeds, { key: 'rest', words, dryKilograms: leftDryKilograms, kind }];
}
