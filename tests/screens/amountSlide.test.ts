import { describe, expect, test } from 'vitest';
import { readAmount } from '../../app/amounts/readAmount';
import type { Bed, Quantity } from '../../app/document/schema';
import { amountSlide } from '../../app/screens/beds/whatIf/amountSlide';
import { exampleGarden } from '../document/exampleGarden';

const { containers, beds } = exampleGarden();
const bed: Bed = { ...beds[0]!, areaM2: 4 };
const bag = containers[0]!;

const quantities: readonly (readonly [string, Quantity | null])[] = [
  ['a container', { kind: 'containers', count: 2.5, containerId: bag.id }],
  ['litres', { kind: 'volume', litres: 40 }],
  ['a weight', { kind: 'mass', kilograms: 6 }],
  ['a depth', { kind: 'depth', millimetres: 6 }],
  ['nothing yet', null],
];

describe.each(['metric', 'us'] as const)('the slider beside an amount, %s', (system) => {
  test.each(quantities)('of %s: every step can be read back, and each is more', (_, quantity) => {
    const slide = amountSlide(quantity, containers, bed, system);
    expect(slide.at).toBeGreaterThanOrEqual(1);
    expect(slide.at).toBeLessThanOrEqual(slide.most);
    const read = (steps: number): number => {
      const reading = readAmount(slide.textOf(steps), 'layer', {
        units: system,
        containers,
        lawns: [],
        places: [],
      });
      if (!reading.ok) throw new Error(`${slide.textOf(steps)}: ${reading.error.kind}`);
      const of = reading.value.amount.quantity;
      if (quantity) expect(of.kind).toBe(quantity.kind);
      return Number(Object.values(of).find((value) => typeof value === 'number'));
    };
    let before = 0;
    for (let steps = 1; steps <= Math.min(slide.most, 40); steps++) {
      expect(read(steps)).toBeGreaterThan(before);
      before = read(steps);
    }
  });

  test('where it stands is what was typed, to half a step', () => {
    const slide = amountSlide(
      { kind: 'containers', count: 2.5, containerId: bag.id },
      containers,
      bed,
      system,
    );
    expect(slide.at).toBe(5);
    expect(slide.textOf(slide.at)).toBe(`2 1/2 ${bag.plural}`);
  });

  test('an amount past its end moves the end', () => {
    const slide = amountSlide({ kind: 'volume', litres: 2000 }, containers, bed, system);
    expect(slide.at).toBe(slide.most);
  });
});
