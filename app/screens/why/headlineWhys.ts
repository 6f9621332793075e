import { standingPlantings } from '../../core/season/plantingAccount';
import { bedLedger, type BedLedger } from '../../core/season/ledger';
import { lastDayOf, seasonFirstDay } from '../../core/season/seasonAccount';
import type { Headline } from '../../core/season/draws/runDraws';
import { cropById } from '../../document/cropValues';
import { coefficientRows } from '../../tables/coefficients';
import { percent } from '../../words/chartFormat';
import type { Why } from '../../words/why';
import { whyWords } from '../../words/why';
import { needMet } from '../needMet';
import { ratioWhy, type BedWhyFacts } from './bedWhys';
import { rootsTake } from './notInSum';
import { rowSource } from './sourcesOf';

/** The account of the season that holds today, its imagined days included. */
function wholeSeason({ results }: BedWhyFacts): BedLedger {
  const { input, season } = results;
  return bedLedger(season, seasonFirstDay(input, input.today), lastDayOf(season));
}

function met(facts: BedWhyFacts, range: string): Why {
  const { results, garden, shown } = facts;
  const { input, season } = results;
  const grams = (gramsPerM2: number) => shown.estimate(gramsPerM2, shown.units.nitrogenPerArea);
  const share = needMet(results);
  return {
    of: 'Share of what its crops can use that they get.',
    formula:
      '(Taken from the soil, what is more than they can use left out, + gathered from the air) ÷ all they can use from first day to last.',
    inputs: [
      ...standingPlantings(input, input.today).flatMap(({ id, crop }) => {
        const run = season.plantings.find((planting) => planting.id === id);
        return run
          ? [
              [
                cropById(garden, crop.id)?.name ?? crop.id,
                `${percent(run.demandMet)} of ${grams(run.demand)}`,
              ] as const,
            ]
          : [];
      }),
      ...(share === null ? [] : [['Together, likely course', percent(share)] as const]),
    ],
    range,
    sources: [whyWords.model, ...rootsTake()],
  };
}

function fixed(facts: BedWhyFacts, range: string): Why {
  const { results, garden, shown } = facts;
  const { input } = results;
  const ledger = wholeSeason(facts);
  const rows = input.plantings.flatMap(({ crop }) => {
    const row = cropById(garden, crop.id);
    return row?.legume ? [{ name: row.name, legume: row.legume }] : [];
  });
  return {
    of: 'Gathered from the air by its roots.',
    formula:
      'Day by day: what the crop wants × its usual share from the air × how far it has got, less as nitrate in the soil rises; more, up to a limit, where the soil cannot give the rest.',
    inputs: [
      [
        'Likely course, this season',
        shown.estimate(
          ledger.cameIn.find(({ key }) => key === 'fixed from the air')?.gM2 ?? 0,
          shown.units.nitrogenPerArea,
        ),
      ],
    ],
    range,
    sources: [
      whyWords.model,
      ...rows.flatMap(({ name, legume }) => [
        rowSource(`${name}, usual share from the air`, legume.usualPercentFixed),
        rowSource(`${name}, nitrate that stops it, in leaf`, legume.leafyLimit),
      ]),
    ],
  };
}

function leached(facts: BedWhyFacts, range: string): Why {
  const { shown } = facts;
  const ledger = wholeSeason(facts);
  const out = (key: 'washed out' | 'lost from wet soil') =>
    shown.estimate(
      ledger.wentOut.find((line) => line.key === key)?.gM2 ?? 0,
      shown.units.nitrogenPerArea,
    );
  return {
    of: 'Washed out below the roots.',
    formula:
      'Day by day and layer by layer: the nitrate there × (1 − e to the power of − water that drains ÷ water the layer holds).',
    inputs: [
      ['Likely course, this season', out('washed out')],
      ['Besides, to the air from wet soil', out('lost from wet soil')],
    ],
    range,
    sources: [
      whyWords.model,
      'A well-mixed layer: so by definition; how far soil is one is our estimate.',
      rowSource('Nitrate at the season’s start', coefficientRows.startingMineralTop),
    ],
  };
}

/** What stands behind one of a bed's headline numbers; `range` is the number itself. */
export function headlineWhy(name: Headline, facts: BedWhyFacts, range: string): Why {
  switch (name) {
    case 'ratio':
      return ratioWhy(facts);
    case 'needMet':
      return met(facts, range);
    case 'fixed':
      return fixed(facts, range);
    case 'leached':
      return leached(facts, range);
  }
}
