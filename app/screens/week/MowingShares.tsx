import type { Mowing } from '../../document/schema';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { sharesOfMowing } from './sharesOfMowing';
import { freshOf, partOfMowing } from './partOfMowing';

/** Where every part of a mowing went, in its own measure and by weight. */
export function MowingShares({ mowing }: { readonly mowing: Mowing }) {
  const garden = useGarden();
  const shown = useShown();
  return (
    <ul className="plain-list shares">
      {sharesOfMowing(garden, mowing).map(({ key, kind, words, dryKilograms }) => (
        <li key={key} className={`share share-${kind}`}>
          {words}{' '}
          <span className="nowrap">
            {partOfMowing(garden, mowing, dryKilograms, shown)}
            <span className="soft">
              {' '}
              ({shown.estimate(freshOf(garden, mowing, dryKilograms), shown.units.mass)})
            </span>
          </span>
        </li>
      ))}
    </ul>
  );
}
