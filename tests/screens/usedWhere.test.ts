import { expect, test } from 'vitest';
import { placesOfCrop, placesOfMaterial } from '../../app/screens/tables/usedWhere';
import { sampleGarden } from '../documents/gardens/sampleGarden';

const garden = sampleGarden();

test('every layer, store and mowing of a material is found once', () => {
  const ids = new Set([
    ...garden.stock.map(({ materialId }) => materialId),
    ...garden.applications.flatMap(({ from }) =>
      from.source === 'elsewhere' ? [from.materialId] : [],
    ),
  ]);
  const places = [...ids].flatMap((id) => placesOfMaterial(garden, id));
  const entries = places.flatMap((place) => (place.at === 'bed' ? place.entries : []));
  const layers = garden.applications.filter(({ from }) => from.source !== 'mowing');
  expect([...entries].sort()).toEqual(layers.map(({ id }) => id).sort());
  expect(places.filter(({ at }) => at === 'store')).toHaveLength(garden.stock.length);
});

test('plantings by bed, the latest first', () => {
  const places = [...new Set(garden.plantings.map(({ cropId }) => cropId))].flatMap((id) =>
    placesOfCrop(garden, id),
  );
  expect(places.flatMap((place) => (place.at === 'bed' ? place.entries : [])).sort()).toEqual(
    garden.plantings.map(({ id }) => id).sort(),
  );
  const started = new Map(garden.plantings.map(({ id, started: day }) => [id, day]));
  for (const place of places)
    if (place.at === 'bed') {
      const days = place.entries.map((id) => started.get(id) ?? '');
      expect(days).toEqual([...days].sort().reverse());
    }
});

test('what nobody uses is nowhere', () => {
  expect(placesOfMaterial(garden, 'straw-barley-none')).toEqual([]);
  expect(placesOfCrop(garden, 'nothing')).toEqual([]);
});
