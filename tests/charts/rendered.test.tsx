import { renderToStaticMarkup } from 'react-dom/server';
import { beforeAll, describe, expect, test } from 'vitest';
import { CoverChart } from '../../app/charts/cover/Chart';
import { LedgerChart } from '../../app/charts/ledger/Chart';
import { SectionChart } from '../../app/charts/section/Chart';
import { SeasonChart } from '../../app/charts/season/Chart';
import type { SectionData } from '../../app/charts/section/data';
import { CoverMark, StateMark, WeightMark } from '../../app/controls/marks/Mark';
import { flowIndex, pools } from '../../app/core/season/flows';
import { ledgerWay } from '../../app/core/season/ledgerStreams';
import type { SeasonResult } from '../../app/core/season/result';
import { metricChartUnits } from '../../app/words/chartUnits';
import { seasonFromFlows } from './seasonFromFlows';

const laid = flowIndex('applied', 'coverResidue', 'laid on');
const released = flowIndex('soilOrganic', 'mineralTop', 'released by the soil');
const leached = flowIndex('mineralLower', 'leached', 'washed out');
const result: SeasonResult = seasonFromFlows(
  {
    ...(Object.fromEntries(pools.map((pool) => [pool, 0])) as SeasonResult['start']),
    soilOrganic: 400,
    mineralTop: 3,
    mineralLower: 1.5,
  },
  40,
  (flow, day) =>
    flow === laid && day === 10 ? 13 : flow === released ? 0.05 : flow === leached ? 0.01 : 0,
);
const units = metricChartUnits;

const evening = (day: number): SectionData => ({
  result,
  day,
  layers: [],
  plants: [
    {
      id: 'beans',
      name: 'Climbing beans',
      habit: 'climber',
      stage: 'bearing',
      share: 0.5,
      height: 900,
      grown: 2000,
      rootDepth: 400,
    },
  ],
  marks: [{ place: 'soil', weight: 'caution', says: 'The soil is dry.' }],
});

function page(): string {
  const season = (name: string) => (
    <SeasonChart
      bedName={name}
      result={result}
      verdict={{ state: 'nothing planted', turnsOn: null }}
      cropBand={null}
      bulkDensityKgPerL={1.3}
      plantings={[]}
      layers={[{ id: 'a', name: 'Clippings', day: result.firstDay + 10, laidDepth: 8 }]}
      units={units}
    />
  );
  return renderToStaticMarkup(
    <>
      {season('Gate bed')}
      {season('Far bed')}
      <CoverChart bedName="Gate bed" result={result} layers={[]} coverState="bare" units={units} />
      <SectionChart
        bedName="Gate bed"
        now={evening(result.today - 5)}
        ahead={{ data: evening(result.today), title: 'In five days' }}
        units={units}
      />
      <LedgerChart
        bedName="Gate bed"
        areaM2={6}
        shown="so far"
        onShow={() => undefined}
        periods={[
          {
            key: 'so far',
            words: 'So far',
            way: ledgerWay(result, result.firstDay, result.firstDay + 39),
            imaginedFrom: null,
          },
        ]}
        units={units}
      />
      <StateMark state="over-fed" />
      <CoverMark state="too deep" />
      <WeightMark weight="stop" />
    </>,
  );
}

describe('the drawings as they stand in the page', () => {
  let markup = '';
  beforeAll(() => {
    markup = page();
  });

  test('carry no style attribute, which the content policy would refuse', () => {
    expect(markup).not.toMatch(/\sstyle=/);
  });

  test('have unique ids, and every weave they use is there', () => {
    const ids = [...markup.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
    const used = [...markup.matchAll(/url\(#([^)]+)\)/g)].map((match) => match[1]);
    expect(used.length).toBeGreaterThan(10);
    for (const id of used) expect(ids).toContain(id);
    const named = [...markup.matchAll(/aria-(?:labelledby|describedby)="([^"]+)"/g)];
    for (const [, id] of named) expect(ids).toContain(id);
  });

  test('hold no place that could not be reckoned', () => {
    expect(markup).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('hide every picture from screen readers, beside a name and a sentence', () => {
    const pictures = markup.match(/<svg[^>]*>/g) ?? [];
    // the parts of a section are a list with a sentence each, the picture under it is hidden
    const lists = pictures.filter((one) => one.includes('role="listbox"'));
    expect(lists).toHaveLength(2);
    expect(pictures.filter((one) => one.includes('aria-hidden="true"'))).toHaveLength(
      pictures.length - lists.length,
    );
    expect(markup.match(/<g aria-hidden="true">/g)).toHaveLength(2);
    const options = markup.match(/<g[^>]*role="option"[^>]*>/g) ?? [];
    for (const option of options) expect(option).toMatch(/aria-label="[^":]+: [^"]+\."/);
    // one stop of the Tab key in all of the section
    expect(options.filter((one) => one.includes('tabindex="0"'))).toHaveLength(1);
    expect(markup).toContain('Season of Gate bed');
    expect(markup).toContain('Nothing is planted.');
    expect(markup).toContain('Nothing lies on this bed: the ground is bare.');
    expect(markup).toMatch(/role="slider"[^>]*aria-valuetext=/);
  });

  // 3 + 1.5 there, 13 laid, 40 x 0.05 given by the soil as its change, 40 x 0.01 washed out
  test('the ledger says 4.50 + 13.00 = 0.40 + 17.10 and that it balances', () => {
    const rows = [...markup.matchAll(/<tr class="ledger-side">(.*?)<\/tr>/g)].map((match) =>
      [...(match[1] ?? '').matchAll(/<td>([^<]*)<\/td>/g)].map((cell) => cell[1]),
    );
    expect(rows).toEqual([
      ['17.50', '105.0'],
      ['17.50', '105.0'],
    ]);
    expect(markup).toContain('washed out below the roots');
    expect(markup).toContain('no gram is missing');
  });
});
