import { dayOf } from '../../core/days';
import { at } from '../../core/season/seasonAccount';
import { mgPerKgFromGramsPerM2 } from '../../core/units';
import type { GardenEvent } from '../../document/schema';
import { soilWeightWords } from '../../words/chartUnits';
import { percent } from '../../words/chartFormat';
import type { FigureInText } from '../../words/why';
import { whyWords } from '../../words/why';
import type { BedWhyFacts } from './bedWhys';
import { soilGives } from './notInSum';

/** What was raked off, as the log tells it. */
export interface Taken {
  readonly dryKilograms: number;
  readonly nitrogenGrams: number;
}

/** What the sums make of something done on a bed; what the person gave is left as it was given. */
export function eventFigures(
  { results, shown }: BedWhyFacts,
  event: GardenEvent,
  taken: Taken | null,
): readonly FigureInText[] {
  const { season, input } = results;
  if (event.kind === 'rake off' && taken) {
    const nitrogen = shown.estimate(taken.nitrogenGrams, shown.units.nitrogen);
    const weight = shown.estimate(taken.dryKilograms, shown.units.mass);
    const share = percent(event.share);
    const why = {
      formula: 'What lay on the bed that evening, layer by layer, × the share that was raked off.',
      inputs: [['Raked off', share]] as const,
      range: null,
      sources: [whyWords.model, whyWords.balance],
    };
    return [
      { text: weight, why: { of: 'What came off, dry.', ...why } },
      { text: nitrogen, why: { of: 'Nitrogen in what came off.', ...why } },
    ];
  }
  if (event.kind !== 'soil test' || event.nitrateMgPerKg === null) return [];
  const day = dayOf(event.date);
  const ready = season.pools.mineralTop[day - season.firstDay];
  if (ready === undefined || day <= season.firstDay) return [];
  const { bulkDensityKgPerL } = input.soil;
  return [
    {
      text: `The sums had ${Math.round(mgPerKgFromGramsPerM2(ready, bulkDensityKgPerL, 30))} mg/kg`,
      why: {
        of: `Nitrate in the top ${shown.chart.topSoil}, as reckoned for that evening.`,
        formula: `Nitrogen ready in the top ${shown.chart.topSoil} ÷ the weight of that soil.`,
        inputs: [
          [
            'Ready there',
            shown.estimate(at(season.pools.mineralTop, season, day), shown.units.nitrogenPerArea),
          ],
          ['The soil weighs', soilWeightWords(bulkDensityKgPerL, shown.chart)],
        ],
        range: null,
        sources: [whyWords.model, ...soilGives(null)],
      },
    },
  ];
}
