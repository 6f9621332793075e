import type { KeyName } from '../../charts/season/keyRows';
import type { SeasonDay } from '../../charts/season/reading';
import { supplyBySource, supplySources, type SupplySource } from '../../core/season/ledger';
import { mainPlanting } from '../../core/season/plantingAccount';
import { cropById } from '../../document/cropValues';
import { coefficientRows } from '../../tables/coefficients';
import { amount, amountWithUnit, dayFull, dayWord, degrees } from '../../words/chartFormat';
import { dayKindWords, seasonLineWords } from '../../words/seasonChart';
import { rangeOdds } from '../../words/ranges';
import type { Why } from '../../words/why';
import { whyWords } from '../../words/why';
import { cropNeedSources, type BedWhyFacts } from './bedWhys';
import { supplyWhy } from './ledgerWhys';
import { bedGives, rootsTake } from './notInSum';
import { rowSource } from './sourcesOf';
import { readyTopWhy } from './stripWhys';

/** less than this is told as nothing [g/m2] */
const leastShown = 0.005;

type Input = Why['inputs'][number];

const isSource = (name: KeyName): name is SupplySource =>
  (supplySources as readonly string[]).includes(name);

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** What is added up from the first day shown to an evening, of daily values of the run. */
const upTo = (
  { results }: BedWhyFacts,
  { reading, from }: SeasonDay,
  daily: Float64Array,
): number => {
  const { firstDay } = results.season;
  return daily
    .subarray(from - firstDay, reading.day - firstDay + 1)
    .reduce((sum, value) => sum + value, 0);
};

/**
 * What stands behind a value in the key of a bed's season, on the evening that is read. Nitrogen is
 * in g/m2 of bed, added up from the first day shown.
 *
 * @returns null where a line of the key has no value: marks of stages and of what was laid
 */
export function seasonDayWhy(facts: BedWhyFacts, name: KeyName, seasonDay: SeasonDay): Why | null {
  const { garden, results, shown } = facts;
  const { reading, from, plantings } = seasonDay;
  const { chart } = shown;
  const grams = (gramsPerM2: number) => amountWithUnit(gramsPerM2, chart.nitrogen);
  const evening: Input = ['On the evening of', dayFull(reading.day, chart)];
  const since: Input = ['Added up since the morning of', dayFull(from, chart)];
  const bedSources = () => bedGives(garden, results.input.bedId);
  const weather = (warmthOf: 'air' | 'rain'): readonly string[] => [
    `${capital(dayKindWords[reading.kind])}.`,
    ...(reading.kind === 'imagined'
      ? [`One likely course of ${warmthOf}; imagined seasons have others.`]
      : []),
  ];
  /** by planting, and only those that have any; cover crops or all others */
  const byPlanting = (
    of: 'cover crops' | 'crops',
    daily: (run: (typeof results.season.plantings)[number]) => readonly Float64Array[],
  ): readonly Input[] =>
    plantings
      .filter(({ isCoverCrop = false }) => isCoverCrop === (of === 'cover crops'))
      .flatMap(({ id, name: planting }) => {
        const run = results.season.plantings.find((one) => one.id === id);
        const sum = run
          ? daily(run).reduce((all, days) => all + upTo(facts, seasonDay, days), 0)
          : 0;
        return sum < leastShown ? [] : [[planting, grams(sum)] as const];
      });
  const taken = (of: 'cover crops' | 'crops') =>
    byPlanting(of, ({ dailyUptake, dailyFixed }) => [dailyUptake, dailyFixed]);

  if (isSource(name)) {
    const band = reading.bands.find((one) => one.name === name)?.grams ?? 0;
    const why = supplyWhy(name);
    return {
      ...why,
      of: `From ${name === 'air' ? 'the air' : seasonLineWords[name]}, by that evening.`,
      inputs: [evening, since, ['Came within reach of roots', grams(band)]],
      sources: [...why.sources, ...(name === 'soil' ? bedSources() : [])],
    };
  }
  switch (name) {
    case 'demand':
      return {
        of: 'What the crops could use by that evening.',
        formula:
          'All a crop can use × the part of its curve that the warmth of those days brings; what is grown only to feed the soil is left out.',
        inputs: [evening, since, ...byPlanting('crops', ({ dailyNeed }) => [dailyNeed])],
        range: null,
        sources: [
          whyWords.model,
          ...cropNeedSources(
            results.input.plantings
              .filter(
                ({ startDay, clearingDay }) =>
                  startDay <= reading.day && (clearingDay === null || clearingDay >= from),
              )
              .flatMap(({ crop }) => cropById(garden, crop.id) ?? []),
          ),
        ],
      };
    case 'got':
      return {
        of: 'What they have got by that evening.',
        formula: 'Taken up from the soil + gathered from the air, day by day.',
        inputs: [evening, since, ...taken('crops')],
        range: null,
        sources: [whyWords.model, ...rootsTake()],
      };
    case 'usable':
      return {
        of: 'There for the crop.',
        formula:
          'All that came within reach of roots − what was lost or is held back: the crops took it, or it is still ready.',
        inputs: [
          evening,
          ['Came within reach', grams(reading.supply)],
          ['Lost or held back', grams(reading.gone)],
        ],
        range: null,
        sources: [whyWords.model, whyWords.balance],
      };
    case 'start':
      return {
        of: 'There at the start.',
        formula: 'What was ready in the soil on the first morning shown, as deep as roots get.',
        inputs: [
          ['On the morning of', dayFull(from, chart)],
          ['Ready then', grams(reading.bands.find((one) => one.name === 'start')?.grams ?? 0)],
        ],
        range: null,
        sources: [
          whyWords.model,
          ...(from === results.season.firstDay
            ? [
                rowSource(
                  'Nitrate there at a first season’s start',
                  coefficientRows.startingMineralTop,
                ),
              ]
            : []),
          ...bedSources(),
        ],
      };
    case 'gone': {
      const { lost, heldBack } = supplyBySource(results.season);
      return {
        of: 'Lost or held back by that evening.',
        formula:
          'Washed out and lost from wet soil + taken from the soil by browns that rot + in what is grown only to feed the soil. What browns give back counts among what the bed gets.',
        inputs: [
          evening,
          since,
          ['Washed out or lost', grams(upTo(facts, seasonDay, lost))],
          ['Taken by browns', grams(upTo(facts, seasonDay, heldBack))],
          ...taken('cover crops'),
        ],
        range: null,
        sources: [
          whyWords.model,
          rowSource('Lost from wet soil, of its nitrate', coefficientRows.denitrifiedShare),
          rowSource('Carbon that microbes build in', coefficientRows.assimilation),
        ],
      };
    }
    case 'ready':
      return readyTopWhy(facts, {
        bedId: results.bedId,
        day: reading.day,
        grams: reading.readyTop,
        bulkDensityKgPerL: results.input.soil.bulkDensityKgPerL,
        range: reading.likely
          ? `${amount(reading.likely.low, chart.nitrogen)} to ${grams(reading.likely.high)}, ${rangeOdds}`
          : null,
      });
    case 'likely':
      return {
        of: 'Where it lies in 8 imagined seasons of 10.',
        formula:
          'Every imagined season, with other weather and other numbers, run to that evening: 1 of 10 has less than the lower, 1 of 10 more than the higher. Reckoned once a week, straight lines between.',
        inputs: [
          evening,
          ...(facts.draws ? [['Imagined seasons', String(facts.draws.answer.count)] as const] : []),
          ...(reading.likely
            ? [
                ['1 of 10 below', grams(reading.likely.low)] as const,
                ['1 of 10 above', grams(reading.likely.high)] as const,
              ]
            : []),
        ],
        range: null,
        sources: [whyWords.model, ...bedSources()],
      };
    case 'from':
    case 'past': {
      const main = mainPlanting(results.input);
      const row = main && cropById(garden, main.crop.id);
      return {
        of: name === 'from' ? 'Enough from here on.' : 'Ample from here on.',
        formula: `Nitrate in the top ${chart.topSoil} from which on trials with this crop, or with crops like it, found that more nitrogen brought no more: the ${name === 'from' ? 'lower' : 'upper'} end of what was published.`,
        inputs: row ? [['For', row.name]] : [],
        range: null,
        sources: row
          ? [rowSource(`Enough for ${row.name.toLowerCase()} from`, row.enoughNitrate)]
          : [],
      };
    }
    case 'rain of the day':
      return {
        of: `Rain of ${dayWord(reading.day, chart)}.`,
        formula: 'What fell on that day.',
        inputs: [['Rain', amountWithUnit(reading.rain, chart.rain)]],
        range: null,
        sources: weather('rain'),
      };
    case 'watered':
      return {
        of: `Watered on ${dayWord(reading.day, chart)}.`,
        formula: 'What was poured ÷ the area of the bed.',
        inputs: [['Watered', amountWithUnit(reading.watered, chart.rain)]],
        range: null,
        sources: ['As you wrote it down; none is imagined.'],
      };
    case 'air warmth':
      return {
        of: `Coldest and warmest air of ${dayWord(reading.day, chart)}.`,
        formula: 'The two ends of that day.',
        inputs: [
          ['Coldest', `${degrees(reading.airMinimum, chart)} ${chart.warmth.short}`],
          ['Warmest', `${degrees(reading.airMaximum, chart)} ${chart.warmth.short}`],
        ],
        range: null,
        sources: weather('air'),
      };
    case 'soil warmth':
      return {
        of: `Warmth of the soil on ${dayWord(reading.day, chart)}.`,
        formula:
          'The day before’s + a share of what the mean of that day’s air is above or below it: slower under a cover, and cooler where the air is warm.',
        inputs: [['Soil', `${degrees(reading.soil, chart)} ${chart.warmth.short}`]],
        range: null,
        sources: [
          whyWords.model,
          rowSource('The share', coefficientRows.soilWarmingRate),
          rowSource('Slower under a full cover by', coefficientRows.coverDamping),
          rowSource('Cooler under a full cover by', coefficientRows.coverCooling),
        ],
      };
    default:
      return null;
  }
}

/** What stands behind a column of the weeks' table: how it is made, whatever the week. */
export function seasonColumnWhy(
  facts: BedWhyFacts,
  name: KeyName | 'all it gets',
  seasonDay: SeasonDay,
): Why | null {
  if (name === 'all it gets')
    return {
      of: 'All it gets.',
      formula: 'What was there at the start + all that came since, source by source.',
      inputs: [],
      range: null,
      sources: [whyWords.model, whyWords.balance],
    };
  const why = seasonDayWhy(facts, name, seasonDay);
  return why && { ...why, inputs: [], range: null };
}
