import type { PickGroup } from '../../controls/PickOne';
import { mowingMark } from '../../document/mowingMarks';
import type { DayNumber } from '../../core/days';
import { clippingsKeep } from '../../document/clippingsKeep';
import type { Garden, Mowing } from '../../document/schema';
import { mowingMarkWords } from '../../words/mowingMarkWords';
import { materialById } from '../../document/materialValues';
import { openMowings } from '../../store/selectors';
import { materialGroups } from '../lists';

const stockOptions = (garden: Garden, isWanted: (materialId: string) => boolean) =>
  garden.stock
    .filter(({ materialId }) => isWanted(materialId))
    .map((stock) => ({ value: `stock:${stock.id}`, label: stock.name }));

/** What is found on the spot; of a material that is in store too, said to be from elsewhere. */
function found(garden: Garden): PickGroup[] {
  const kept = new Set(garden.stock.map(({ materialId }) => materialId));
  return materialGroups(garden).map((group) => ({
    label: `Found or grown: ${group.label?.toLowerCase()}`,
    options: group.options.map(({ value, label }) => ({
      value: `elsewhere:${value}`,
      label: kept.has(value) ? `${label}, from elsewhere` : label,
    })),
  }));
}

const marked = (options: PickGroup['options'], mark: string) =>
  options.map(({ value, label }) => ({ value, label: `${label}, ${mark}` }));

export const mowingSource = (mowingId: string): string => `mowing:${mowingId}`;

/**
 * Everything that can be laid: what is cut and waiting, the stores, then what is found on the spot.
 *
 * @param today clippings that no longer keep come last, under words of their own
 * @param mownOn says a day YYYY-MM-DD
 */
export function whatGroups(
  garden: Garden,
  today: DayNumber,
  mownOn: (date: string) => string,
): readonly PickGroup[] {
  const namesFound = new Set(
    materialGroups(garden).flatMap(({ options }) => options.map(({ label }) => label)),
  );
  // a store called as its material is would stand twice in the list
  const stores = stockOptions(garden, () => true).flatMap((option) =>
    namesFound.has(option.label) ? marked([option], 'in store') : [option],
  );
  const ofMowing = ({ id, lawnId, date }: Mowing) => ({
    value: mowingSource(id),
    label: `Clippings of ${garden.lawns.find((lawn) => lawn.id === lawnId)?.name ?? 'a lawn'}, mown ${mownOn(date)}${mowingMarkWords({ ...mowingMark(garden, id), day: null }, String)}`,
  });
  const open = openMowings(garden);
  const waiting = open.filter((mowing) => clippingsKeep(mowing, today)).map(ofMowing);
  // still to be written down for the day they were laid
  const gone = open.filter((mowing) => !clippingsKeep(mowing, today)).map(ofMowing);
  return [
    { label: null, options: [{ value: '', label: 'Choose what is laid' }] },
    ...(waiting.length > 0 ? [{ label: 'Cut and waiting', options: waiting }] : []),
    ...(stores.length > 0 ? [{ label: 'From the stores', options: stores }] : []),
    ...found(garden),
    ...(gone.length > 0 ? [{ label: 'Mown long ago, not fresh any more', options: gone }] : []),
  ];
}

/**
 * What can be laid together with it; browns from the stores first, marked as one's own. What is of
 * a material that is in store, but is not from there, says so.
 */
export function brownGroups(garden: Garden, what: string): readonly PickGroup[] {
  const isBrown = (materialId: string) => materialById(garden, materialId).row.isBrowns;
  const other = (option: { value: string }) => option.value !== what;
  const browns = marked(stockOptions(garden, isBrown).filter(other), 'in store');
  const rest = stockOptions(garden, (id) => !isBrown(id)).filter(other);
  return [
    { label: null, options: [{ value: '', label: 'nothing, alone' }] },
    ...(browns.length > 0 ? [{ label: 'Browns from the stores', options: browns }] : []),
    ...(rest.length > 0 ? [{ label: 'Other stores', options: rest }] : []),
    ...found(garden).filter((group) => group.label?.includes('browns')),
  ];
}
