import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { bedQuestion } from '../../app/document/bedQuestion';
import { parseGarden } from '../../app/document/parse';
import type { Bed, Garden } from '../../app/document/schema';
import { bedSeasonAccounts } from '../../app/document/seasonsAccount';
import {
  coverDepthWhy,
  forecastWhy,
  needWhy,
  nitrateWhy,
  overFedWhy,
  ratioWhy,
  readyWhy,
  roomWhy,
} from '../../app/screens/why/bedWhys';
import { dryingWhy } from '../../app/screens/why/coverWhys';
import { headlineWhy } from '../../app/screens/why/headlineWhys';
import { seasonLineWhy } from '../../app/screens/why/seasonWhys';
import { soilFigures } from '../../app/screens/why/soilWhys';
import type { Shown } from '../../app/screens/shown';
import { unitsOf } from '../../app/amounts/unitSystem';
import { metricChartUnits } from '../../app/words/chartUnits';
import { estimateWithUnit } from '../../app/words/figures';
import { limits } from '../../app/tables/thresholds';
import { seasonLineNames } from '../../app/words/seasonAccountWords';
import type { Why } from '../../app/words/why';
import measured from '../validation/measured.json';

const parsed = parseGarden(
  readFileSync(join(import.meta.dirname, '../../assets/gardens/sample.mowings'), 'utf8'),
);
if (!parsed.ok) throw new Error('The sample is no garden');
const garden: Garden = parsed.value;
const shown = {
  system: 'metric',
  units: unitsOf('metric'),
  chart: metricChartUnits,
  dayWord: String,
  day: String,
  estimate: estimateWithUnit,
} as unknown as Shown;
const beds = garden.beds.map((bed) => {
  const results = answerBed(bedQuestion(garden, bed.id, dayOf('2013-06-15')), limits);
  return { bed, results, facts: { garden, results, draws: undefined, shown } };
});
const numberIn = (text: string): number => Number.parseFloat(text.replace('−', '-'));
const valueOf = (why: Why, words: RegExp): number =>
  numberIn(why.inputs.find(([name]) => words.test(name))?.[1] ?? 'none');

describe('what a sum leaves out is said where its figure is', () => {
  const bedOf = (texture: string) => beds.find(({ bed }) => bed.texture === texture)!;
  const sourcesOf = (texture: string) => nitrateWhy(bedOf(texture).facts).sources;

  test('clay and sand, with what they would do to this soil; lime', () => {
    const clayLoam = sourcesOf('clay loam').find((line) => line.includes('clay'));
    expect(clayLoam).toMatch(/^Not in this sum: .* this clay loam may give 73 % of that/);
    expect(sourcesOf('sandy loam').join(' ')).toContain('this sandy loam may give 133 % of that');
    expect(sourcesOf('loam').join(' ')).not.toContain('may give');
    for (const line of [clayLoam!, ...sourcesOf('loam')].filter((one) => /clay/i.test(one)))
      expect(line).toMatch(/recalled/i);
    for (const { facts } of beds) expect(ratioWhy(facts).sources.join(' ')).toContain('lime');
  });

  test('what the air takes of lean grass, by the measurement that ours fall short of', () => {
    const { garden: of, results } = beds[0]!.facts;
    const [season] = bedSeasonAccounts(of, results.input, results.season);
    const says = (name: 'wentOut' | 'soilGave') =>
      seasonLineWhy(name, season!, metricChartUnits).sources.join(' ');
    const { low, source } = measured.find(({ id }) => id === 'CO07')!;
    expect(says('wentOut')).toContain(
      `lost ${String(low)} % of its nitrogen in one trial (${source})`,
    );
    expect(says('soilGave')).toContain('lime');
  });

  test('how much humus a bed has, with the range it is drawn by, of a test the test’s own', () => {
    const { facts, results } = beds[0]!;
    const bed: Bed = { ...beds[0]!.bed, organicMatterPercent: null, mulchYears: 'a few' };
    const humus = (events: Garden['events']) =>
      ratioWhy({ ...facts, garden: { ...garden, beds: [bed], events } }).sources.find((line) =>
        line.startsWith('Organic matter'),
      );
    expect(humus([])).toMatch(/Our own judgement/);
    const soilTest = {
      id: 'test',
      kind: 'soil test',
      bedId: bed.id,
      date: '2013-04-01',
      depthCentimetres: 30,
      nitrateMgPerKg: null,
      organicMatterPercent: 5,
    } as unknown as Garden['events'][number];
    expect(humus([soilTest])).toMatch(
      /^Organic matter, 5 \(4\.5 to 5\.5\) % of dry soil: .*your own/i,
    );
    const [matter] = soilFigures([soilTest], bed, results.input.soil, '5 %', '1.3 kg a litre');
    expect(matter!.why.inputs).toEqual([['Tested', '5 %']]);
  });

  test('drought', () => {
    for (const { facts } of beds) {
      expect(forecastWhy(facts).sources.join(' ')).toContain('dry soil slows growth');
      expect(headlineWhy('needMet', facts, '').sources.join(' ')).toContain(
        'dry soil slows growth',
      );
    }
  });
});

describe('what stands behind the figures of the sample’s beds', () => {
  test('says how, from what, and how well it is known, of every figure', () => {
    for (const { bed, results, facts } of beds) {
      const whys = [
        ratioWhy(facts),
        needWhy(facts),
        forecastWhy(facts),
        nitrateWhy(facts),
        readyWhy(facts),
        roomWhy(facts, bed.areaM2, null),
        coverDepthWhy(facts),
        dryingWhy(facts),
        ...(['ratio', 'needMet', 'fixed', 'leached'] as const).map((name) =>
          headlineWhy(name, facts, '1 to 2'),
        ),
        ...soilFigures(garden.events, bed, results.input.soil, '3 %', '1.3 kg a litre').map(
          ({ why }) => why,
        ),
        ...[overFedWhy(facts)].flatMap((why) => why ?? []),
      ];
      for (const why of whys) {
        expect(why.of).toMatch(/^[A-Z].*\.$/);
        expect(why.formula).toMatch(/^[(A-Z\d].*\.$/);
        for (const source of why.sources) expect(source).toMatch(/\.$/);
        for (const [words, value] of why.inputs)
          expect(`${words} ${value}`).not.toMatch(/NaN|undefined|Infinity/);
      }
    }
  });

  // cautions.md, "State": (in the crop + within reach + release - tie-up) / total need
  test('the parts of the ratio make the ratio, to the two figures shown', () => {
    let checked = 0;
    for (const { facts, results } of beds) {
      if (results.verdict.ratio === null) continue;
      const why = ratioWhy(facts);
      const made =
        (valueOf(why, /^Taken up/) +
          valueOf(why, /^Ready where/) +
          valueOf(why, /come free/) -
          valueOf(why, /held back/)) /
        valueOf(why, /^(All it can use|What it asks)/);
      // four parts and a need, each rounded to two figures
      expect(made / results.verdict.ratio).toBeGreaterThan(0.88);
      expect(made / results.verdict.ratio).toBeLessThan(1.12);
      checked += 1;
    }
    expect(checked).toBeGreaterThan(4);
  });

  test('a need names its crop’s source with its standing; a model’s number says it is reckoned', () => {
    const tomatoes = beds.find(({ bed }) => bed.name === 'South wall')!;
    const sources = ratioWhy(tomatoes.facts).sources.join(' ');
    expect(sources).toContain('Tomatoes, in tops and crop at a good yield');
    expect(sources).toMatch(/Read there|Worked out|recalled|estimate/);
    expect(sources).toContain('days to come are imagined');
  });
});

describe('what stands behind the sums of a season', () => {
  test('the lines add up to the figure they stand behind, to the last digit shown', () => {
    for (const { results } of beds)
      for (const season of bedSeasonAccounts(garden, results.input, results.season))
        for (const name of seasonLineNames) {
          const why = seasonLineWhy(name, season, metricChartUnits);
          if (name === 'soilGave') continue;
          const lines = why.inputs.reduce((sum, [, value]) => sum + numberIn(value), 0);
          // each line is rounded to a hundredth; lines under half of one are left out
          expect(Math.abs(lines - season.ledger.totals[name])).toBeLessThan(0.05);
        }
  });
});
