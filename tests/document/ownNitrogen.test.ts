import { describe, expect, test } from 'vitest';
import { mixtureOf } from '../../app/document/mixture';
import { seasonSpread } from '../../app/document/seasonSpread';
import type { Application, Garden } from '../../app/document/schema';
import { materials } from '../../app/tables/materials';
import { exampleGarden } from './exampleGarden';

/* Model 10: measured values replace their range. */

const tableRow = materials['straw-barley'].nitrogenPercent;

function strawOf(nitrogenPercent: number | undefined, materialId = 'own-1'): Garden {
  const garden = exampleGarden();
  const { nitrogenPercent: _nitrogen, carbonToNitrogen: _ratio, ...own } = garden.materials[0]!;
  const straw: Application = {
    ...garden.applications[0]!,
    id: 'straw',
    from: { source: 'elsewhere', materialId },
    amount: { text: '2 kg', quantity: { kind: 'mass', kilograms: 2 }, certainty: 'plain' },
  };
  return {
    ...garden,
    materials: [nitrogenPercent === undefined ? own : { ...own, nitrogenPercent }],
    applications: [{ ...straw, bedId: 'bed-1' }],
  };
}
const nitrogenOf = (garden: Garden) => seasonSpread(garden, 'bed-1').layers['straw']!.nitrogen;

describe('nitrogen of a material that somebody measured', () => {
  test('has the narrow range of a sample in the imagined seasons, and the table’s has its row', () => {
    const own = nitrogenOf(strawOf(1));
    expect(own.low).toBeCloseTo(0.009, 12);
    expect(own.typical).toBeCloseTo(0.01, 12);
    expect(own.high).toBeCloseTo(0.011, 12);
    for (const table of [strawOf(undefined), strawOf(undefined, 'straw-barley')]) {
      expect(nitrogenOf(table).low).toBeCloseTo(tableRow.low / 100, 12);
      expect(nitrogenOf(table).high).toBeCloseTo(tableRow.high / 100, 12);
    }
  });

  test('and so in the range of a mixture’s ratio', () => {
    const width = (nitrogenPercent: number): number => {
      const garden = strawOf(nitrogenPercent);
      const amount = {
        text: '5 kg',
        quantity: { kind: 'mass', kilograms: 5 },
        certainty: 'plain',
      } as const;
      const made = mixtureOf(garden, [{ materialId: 'own-1', wetness: 'dry', amount }], {
        ratio: null,
        moisture: null,
      });
      if (!made.ok) throw new Error(made.error.kind);
      return made.value.ratioRange.high / made.value.ratioRange.low;
    };
    // a tenth either way is the 5 and 95 per cent point: shown are 10 and 90
    expect(width(1)).toBeGreaterThan(1.1);
    expect(width(1)).toBeLessThan(1.21);
    // as the table says it: 0.6 to 0.9
    expect(width(tableRow.typical)).toBeGreaterThan(1.25);
  });
});
