import type { GardenEvent } from '../document/schema';

type EventKind = GardenEvent['kind'];

const eventSteps: Readonly<
  Record<
    EventKind,
    { readonly log: (bed: string) => string; readonly thing: (bed: string) => string }
  >
> = {
  water: { log: (bed) => `Water ${bed}`, thing: (bed) => `a watering of ${bed}` },
  'rain gauge': { log: () => 'Log rain', thing: () => 'a reading of the rain gauge' },
  harvest: { log: (bed) => `Pick from ${bed}`, thing: (bed) => `a pick from ${bed}` },
  'soil test': {
    log: (bed) => `Log a soil test of ${bed}`,
    thing: (bed) => `a soil test of ${bed}`,
  },
  'rake off': { log: (bed) => `Rake cover off ${bed}`, thing: (bed) => `a raking of ${bed}` },
  'dig cover in': {
    log: (bed) => `Dig cover in on ${bed}`,
    thing: (bed) => `a digging in on ${bed}`,
  },
  'look and dig': {
    log: (bed) => `Look at ${bed}`,
    thing: (bed) => `a look at ${bed}`,
  },
  'nothing laid': {
    log: (bed) => `Lay nothing on ${bed}`,
    thing: (bed) => `“nothing laid” on ${bed}`,
  },
};

/** Names of steps, as in "Undo: Lay 2 bags on Gate bed". */
export const stepNames = {
  editGarden: () => 'Change the garden',
  editNormals: () => 'Change the monthly weather',
  goOnAWeek: () => 'Go on a week',
  bringWeather: (days: number) =>
    days === 1 ? 'Bring 1 day of weather' : `Bring ${String(days)} days of weather`,
  readThermometer: () => 'Log the thermometer',
  logMowing: (lawn: string, amount: string) =>
    amount.trim() === '' ? `Log a mowing of ${lawn}` : `Log ${amount.trim()} from ${lawn}`,
  editMowing: (lawn: string) => `Change a mowing of ${lawn}`,
  deleteMowing: (lawn: string) => `Delete a mowing of ${lawn}`,
  /** what the store is called that is begun for dried clippings */
  dryStore: 'Dry grass',
  restOf: (where: 'undecided' | 'lawn' | 'heap' | 'store' | 'dry') =>
    where === 'store' || where === 'dry'
      ? 'Dry the rest and keep it'
      : where === 'heap'
        ? 'Put the rest on the heap'
        : where === 'lawn'
          ? 'Leave the rest on the lawn'
          : 'Keep the rest in hand',
  leaveLying: (mowings: number) => `Leave ${mowings} mowings lying`,
  logBacklog: (mowings: number) =>
    mowings === 1 ? 'Add 1 earlier mowing' : `Add ${String(mowings)} earlier mowings`,
  /** `amounts` as they were typed, of all that was laid together */
  lay: (beds: readonly string[], amounts: readonly string[]) => {
    const what = amounts.map((amount) => amount.trim()).filter(Boolean);
    if (beds.length !== 1) return `Lay on ${String(beds.length)} beds`;
    return `Lay ${what.length > 0 ? `${what.join(' and ')} ` : ''}on ${beds[0] ?? ''}`;
  },
  doPlan: () => 'Do what the plan says',
  layNothing: (beds: readonly string[]) =>
    beds.length === 1
      ? `Lay nothing on ${beds[0] ?? ''}`
      : `Lay nothing on ${String(beds.length)} beds`,
  countIn: (bed: string) => `Count ${bed} in again`,
  editLayer: (bed: string) => `Change a layer on ${bed}`,
  deleteLayer: (bed: string) => `Delete a layer on ${bed}`,
  answerTreatment: (source: string) => `Say what was put on ${source}`,
  logEvent: (kind: EventKind, bed: string) => eventSteps[kind].log(bed),
  bringList: (mowings: number, rain: number) =>
    [
      mowings > 0 ? `${String(mowings)} ${mowings === 1 ? 'mowing' : 'mowings'}` : '',
      rain > 0 ? `${String(rain)} ${rain === 1 ? 'reading' : 'readings'} of rain` : '',
    ]
      .filter(Boolean)
      .join(' and ')
      .replace(/^/, 'Bring in '),
  editEvent: (kind: EventKind, bed: string) => `Change ${eventSteps[kind].thing(bed)}`,
  deleteEvent: (kind: EventKind, bed: string) => `Delete ${eventSteps[kind].thing(bed)}`,
  plant: (how: 'sown' | 'planted', what: string) => `${how === 'sown' ? 'Sow' : 'Plant'} ${what}`,
  add: (name: string) => `Add ${name}`,
  change: (name: string) => `Change ${name}`,
  remove: (name: string) => `Delete ${name}`,
  swapMaterial: (name: string, places: number) =>
    `Use ${name} in ${places === 1 ? '1 place' : `${String(places)} places`}`,
  weigh: (container: string, amounts: number) =>
    amounts === 0
      ? `Weigh one ${container}`
      : `Weigh one ${container}, used ${amounts === 1 ? 'once' : `${String(amounts)} times`}`,
} as const;
