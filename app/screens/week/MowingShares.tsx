import { Figured } from '../../controls/Figured';
import type { Mowing } from '../../document/schema';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { mowingWeightWhy } from '../why/mowingWhys';
import { sharesOfMowing } from './sharesOfMowing';
import { freshOf, partOfMowing } from './partOfMowing';

/** Where every part of a mowing went, in its own measure and by weight. */
export function MowingShares({
  mowing,
  opens = true,
}: {
  readonly mowing: Mowing;
  /** false where the weight of the whole beside it opens the why of its parts too */
  readonly opens?: boolean;
}) {
  const garden = useGarden();
  const shown = useShown();
  const weight = (dryKilograms: number): string =>
    shown.estimate(freshOf(garden, mowing, dryKilograms), shown.units.mass);
  return (
    <ul className="plain-list shares">
      {sharesOfMowing(garden, mowing).map(({ key, kind, words, dryKilograms }) => (
        <li key={key} className={`share share-${kind}`}>
          <Figured
            says={`${words} ${partOfMowing(garden, mowing, dryKilograms, shown)} (${weight(dryKilograms)})`}
            figures={
              opens
                ? [
                    {
                      text: weight(dryKilograms),
                      why: mowingWeightWhy(garden, mowing, shown, dryKilograms),
                    },
                  ]
                : []
            }
          />
        </li>
      ))}
    </ul>
  );
}
