import { useMemo } from 'react';
import { cropName } from '../../document/cropValues';
import type { Garden } from '../../document/schema';
import { plantingsOn, todayOf } from '../../store/selectors';
import { otherNamesOf } from '../../words/otherNames';
import { eventKinds, eventWords } from '../beds/eventWords';
import { gardenParts } from '../garden/gardenParts';
import { useGoToPart } from '../garden/wantedPart';
import { useCommandLines } from '../frame/commandLines';
import { placesNow } from '../frame/placesNow';
import { cropGroupsOf, materialGroups } from '../lists';
import { usePutOnDesk } from '../desk';
import { useMowings, useMowingsStore } from '../store';
import { whenThere } from '../whenThere';
import type { Named } from './matchWords';
import { placeDoings } from './placeDoings';

export const findingGroups = ['Go to', 'Do', 'Beds', 'Settings', 'Tables'] as const;

/** Something that can be found by typing and then done. */
export interface Finding extends Named {
  readonly id: string;
  readonly group: (typeof findingGroups)[number];
  /** "Ctrl S"; '' where it has none */
  readonly keys: string;
  /** a few words on what it is, where its name does not say */
  readonly note: string;
  /** why it cannot be had now; null when it can */
  readonly notNow: string | null;
  /** there are so many of its kind that it is listed only when something is typed */
  readonly whenTyped: boolean;
  readonly run: () => void;
}

const finding = (
  id: string,
  group: Finding['group'],
  words: string,
  run: () => void,
  more: Partial<Pick<Finding, 'also' | 'keys' | 'note' | 'notNow' | 'whenTyped'>> = {},
): Finding => ({
  id,
  group,
  words,
  run,
  also: [],
  keys: '',
  note: '',
  notNow: null,
  whenTyped: group === 'Tables',
  ...more,
});

const focusHeading = (): void =>
  whenThere('main h1', (heading) => heading.focus({ preventScroll: true }));

/** Commands of the menu, and what is done by buttons on the pages. */
function useDoings(): readonly Finding[] {
  const lines = useCommandLines();
  const store = useMowingsStore();
  const hasGarden = useMowings((state) => state.garden !== null);
  const isStopped = useMowings((state) => state.drawsWork.isStopped);
  const hasBeds = useMowings((state) => (state.garden?.beds.length ?? 0) > 0);
  const ofMenu = lines
    .filter(({ name }) => name !== 'find')
    .map(({ name, words, keys, also, notNow, run }) =>
      finding(name, 'Do', words, run, { also, keys, notNow }),
    );
  if (!hasGarden) return ofMenu;
  const goToWeek = () => {
    store.getState().openBed(null);
    store.getState().goTo('this week');
  };
  return [
    finding(
      'log-mowing',
      'Do',
      'Log a mowing',
      () => {
        goToWeek();
        whenThere('.log-line input', (line) => line.focus());
      },
      { also: ['mown', 'clippings', 'write down', 'grass', 'bags'], note: 'This week' },
    ),
    finding(
      'plan',
      'Do',
      'Work out a plan',
      () => {
        goToWeek();
        store.getState().wantPlan();
        focusHeading();
      },
      {
        also: ['what to do', 'where it goes', 'collect'],
        note: 'This week',
        notNow: hasBeds ? null : 'there is no bed yet',
      },
    ),
    isStopped
      ? finding('imagine', 'Do', 'Go on imagining seasons', () => store.getState().resumeDraws(), {
          also: ['odds', 'ranges', 'draws'],
        })
      : finding('imagine', 'Do', 'Stop imagining seasons', () => store.getState().stopDraws(), {
          also: ['odds', 'ranges', 'draws', 'quiet'],
        }),
    ...placeDoings.map(({ id, place, words, also, note, ...more }) =>
      finding(
        id,
        'Do',
        words,
        () => {
          store.getState().openBed(null);
          store.getState().goTo(place);
          whenThere(`[data-doing="${id}"]`, (button) => {
            button.focus();
            button.click();
          });
        },
        { also, note, notNow: 'wantsBeds' in more && !hasBeds ? 'there is no bed yet' : null },
      ),
    ),
    ...ofMenu,
  ];
}

function bedsOf(garden: Garden, today: number, open: (id: string) => void): readonly Finding[] {
  return garden.beds.map(({ id, name }) => {
    const grown = [
      ...new Set(plantingsOn(garden, id, today).map(({ cropId }) => cropName(garden, cropId))),
    ];
    const note = grown.join(', ');
    return finding(`bed ${id}`, 'Beds', name, () => open(id), { note, also: grown });
  });
}

/** What is written down by a button of a bed's page: "rake" or "soil test far". */
const bedDoingsOf = (garden: Garden, open: (id: string) => void): readonly Finding[] =>
  garden.beds.flatMap(({ id, name }) =>
    eventKinds.map((kind) =>
      finding(
        `${kind} ${id}`,
        'Do',
        `${eventWords[kind].button}: ${name}`,
        () => {
          open(id);
          whenThere(`[data-bed="${CSS.escape(id)}"] [data-writes="${kind}"]`, (button) => {
            button.focus();
            button.click();
          });
        },
        { note: 'Beds', whenTyped: true },
      ),
    ),
  );

/** All that can be found in the window as it stands; rows of tables only when something is typed. */
export function useFindings(): readonly Finding[] {
  const store = useMowingsStore();
  const garden = useMowings((state) => state.garden);
  const today = useMowings(todayOf);
  const units = useMowings((state) => state.shownUnits);
  const doings = useDoings();
  const goToPart = useGoToPart();
  const putOnDesk = usePutOnDesk();

  const ofGarden = useMemo((): readonly Finding[] => {
    if (!garden) return [];
    const { goTo, openBed, setUnits } = store.getState();
    const places = placesNow.map(({ place, words }) =>
      finding(`place ${place}`, 'Go to', words, () => {
        openBed(null);
        goTo(place);
        focusHeading();
      }),
    );
    const parts = gardenParts.map(({ id, words }) =>
      finding(`part ${id}`, 'Go to', words, () => goToPart(id), { note: 'Garden' }),
    );
    const open = (id: string): void => {
      openBed(id);
      goTo('beds');
    };
    const measure = (own: typeof units, words: string, also: readonly string[]): Finding =>
      finding(`units ${own}`, 'Settings', words, () => setUnits(own), {
        also,
        notNow: units === own ? 'so it is now' : null,
      });
    const row = (what: 'material' | 'crop', id: string, words: string): Finding =>
      finding(
        `row ${what} ${id}`,
        'Tables',
        words,
        () => {
          putOnDesk('tables leaf', `${what}s`);
          putOnDesk(`tables ${what} search`, '');
          putOnDesk(`tables ${what} open`, id);
          openBed(null);
          goTo('tables');
          whenThere('.row-name[aria-expanded="true"]', (name) => {
            name.scrollIntoView({ block: 'center' });
            name.focus({ preventScroll: true });
          });
        },
        { note: what, also: otherNamesOf(id) },
      );
    return [
      ...places,
      ...parts,
      ...bedsOf(garden, today, open),
      ...bedDoingsOf(garden, open),
      measure('metric', 'Measure in metres, kilograms and litres', ['metric', 'units']),
      measure('us', 'Measure in feet, pounds and gallons', ['US', 'units', 'inches']),
      ...materialGroups(garden).flatMap(({ options }) =>
        options.map(({ value, label }) => row('material', value, label)),
      ),
      ...cropGroupsOf(garden).flatMap(({ options }) =>
        options.map(({ value, label }) => row('crop', value, label)),
      ),
    ];
  }, [garden, goToPart, putOnDesk, store, today, units]);

  return [...ofGarden, ...doings];
}
