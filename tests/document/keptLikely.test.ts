import { expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { drawnSeason, makeDraws } from '../../app/core/season/draws/drawnSeason';
import { drawsQuestion } from '../../app/document/drawsQuestion';
import { curveNumbers, fallOfSlope } from '../../app/tables/runoffRows';
import { bulkDensityRow, soils, usualBulkDensity, type TextureName } from '../../app/tables/soils';
import { radiationPerRootDegree, usualWind } from '../../app/tables/weatherGaps';
import { exampleGarden } from './exampleGarden';

/*
 * “How sure that is” says which rows imagined seasons leave at their likely value; the tables must
 * call the same rows not drawn, and no draw may touch them.
 */

test('rows of the soil’s water and weight, of run-off, sun and wind are marked as not drawn', () => {
  const rows = [
    ...Object.values(soils).flatMap(({ fieldCapacity, wiltingPoint }) => [
      fieldCapacity,
      wiltingPoint,
    ]),
    usualBulkDensity,
    ...(Object.keys(soils) as TextureName[]).map((texture) => bulkDensityRow(texture, 7)),
    ...Object.values(curveNumbers),
    ...Object.values(fallOfSlope),
    ...Object.values(radiationPerRootDegree),
    usualWind,
  ];
  for (const row of rows) {
    expect(row.high).toBeGreaterThan(row.low);
    expect(row.drawnPer).toBe('nothing');
  }
});

test('every draw has the bed’s own soil, save its organic matter, and its own run-off', () => {
  const garden = exampleGarden();
  const beds = garden.beds.map((bed) => ({ ...bed, slope: 'gentle' as const }));
  const { input, spread } = drawsQuestion({ ...garden, beds }, 'bed-1', dayOf('2021-06-20'), 8);
  const draws = makeDraws(3, 8);
  expect(input.runoffCurveNumber).toBeGreaterThan(0);
  const matter = new Set<number>();
  for (let draw = 0; draw < 8; draw++) {
    const drawn = drawnSeason(input, spread, input.weather, draws, draw);
    matter.add(drawn.soil.organicMatterPercent);
    expect({ ...drawn.soil, organicMatterPercent: 0 }).toEqual({
      ...input.soil,
      organicMatterPercent: 0,
    });
    expect(drawn.runoffCurveNumber).toBe(input.runoffCurveNumber);
    expect(drawn.weather.referenceEvapotranspiration).toEqual(
      input.weather.referenceEvapotranspiration,
    );
  }
  expect(matter.size).toBe(8);
});
