// Whatever can be dragged can be typed as well: every place in the program that follows a pointer
// as it moves stands here with its other way. A new one is found by this test before anybody else.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const app = join(import.meta.dirname, '../../app');

/** What only something that follows a moving pointer has. */
const follows =
  /onPointerMove|onMouseMove|onTouchMove|setPointerCapture|onDrag\w*|draggable|type="range"|'pointermove'|'mousemove'|'touchmove'|'dragstart'/;

interface Other {
  /** where the other way is, and what there shows that it is */
  readonly file: string;
  readonly has: RegExp;
  readonly by: string;
}
interface Follower {
  readonly file: string;
  readonly moves: string;
  /** null: nothing is moved, only read or marked */
  readonly typed: Other | null;
  readonly keys: Other | null;
}

const inventory: readonly Follower[] = [
  {
    file: 'charts/strips/usePlantingMove.ts',
    moves: 'a planting’s days on its strip of Season',
    typed: {
      file: 'screens/season/PlantingFields.tsx',
      has: /<DateField/,
      by: 'the dates beneath the strip',
    },
    keys: {
      file: 'charts/strips/usePlantingMove.ts',
      has: /ArrowLeft: -1,\s+ArrowRight: 1/,
      by: 'Shift and the arrow keys on the planting',
    },
  },
  {
    file: 'screens/beds/whatIf/AmountSlider.tsx',
    moves: 'the amount of an alternative in What if',
    typed: {
      file: 'screens/week/LayerFields.tsx',
      has: /<QuantityField\s+label="How much\?"/,
      by: 'the field “How much?” beside it',
    },
    keys: {
      file: 'screens/beds/whatIf/AlternativeFields.tsx',
      has: /onStep=/,
      by: 'the arrow keys in that field',
    },
  },
  {
    file: 'charts/season/Chart.tsx',
    moves: 'the day a bed’s season chart reads; nothing of the garden',
    typed: null,
    keys: { file: 'charts/season/Chart.tsx', has: /role="slider"/, by: 'the chart’s slider' },
  },
  {
    file: 'charts/strips/StripsChart.tsx',
    moves: 'the day Season reads; nothing of the garden',
    typed: null,
    keys: { file: 'charts/strips/DayAxis.tsx', has: /role="slider"/, by: 'the axis of days' },
  },
  {
    file: 'charts/strips/DayAxis.tsx',
    moves: 'the day Season reads; nothing of the garden',
    typed: null,
    keys: { file: 'charts/strips/DayAxis.tsx', has: /onKeyDown/, by: 'its own keys' },
  },
  {
    file: 'charts/ledger/WayDrawing.tsx',
    moves: 'nothing: a stream of the ledger says what it is',
    typed: null,
    keys: { file: 'charts/ledger/Chart.tsx', has: /<LedgerTable/, by: 'the table beneath' },
  },
  {
    file: 'screens/find/FindDialog.tsx',
    moves: 'nothing: the line under the pointer is marked',
    typed: null,
    keys: { file: 'screens/find/FindDialog.tsx', has: /ArrowDown/, by: 'the arrow keys' },
  },
];

const read = (file: string): string => readFileSync(join(app, file), 'utf8');
const sources = readdirSync(app, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => /\.tsx?$/.test(file));

describe('every drag has a typed way beside it', () => {
  test('what follows a pointer is in the inventory, and nothing else is', () => {
    expect(sources.length).toBeGreaterThan(300);
    const found = sources.filter((file) => follows.test(read(file)));
    expect(found.toSorted()).toEqual(inventory.map(({ file }) => file).toSorted());
  });

  test.each(inventory)('$file: $moves', ({ typed, keys }) => {
    for (const other of [typed, keys]) if (other) expect(read(other.file)).toMatch(other.has);
    expect(keys).not.toBeNull();
  });

  test('only what reads or marks may do without a typed way', () => {
    for (const { moves, typed } of inventory) if (typed === null) expect(moves).toMatch(/nothing/);
  });
});
