import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from '@playwright/test';
import { dayOf } from '../../app/core/days';
import { parseGarden } from '../../app/document/parse';
import { planQuestion } from '../../app/document/planQuestion';
import { test } from './fixtures';

/** Numbers that JSON has no word for, and arrays that it knows only one kind of. */
const written = (_key: string, value: unknown): unknown => {
  if (value instanceof Float64Array) return { floats: [...value] };
  if (value instanceof Uint8Array) return { bytes: [...value] };
  if (typeof value !== 'number' || Number.isFinite(value)) return value;
  return { number: String(value) };
};

test('the solver starts under the worker’s own policy, and plans the sample’s week', async ({
  garden,
  pageFolder,
}) => {
  const worker = readdirSync(join(pageFolder, 'assets')).find((name) =>
    /^plan\.worker-.*\.js$/.test(name),
  );
  expect(worker).toBeDefined();
  const sample = parseGarden(readFileSync('assets/gardens/sample.mowings', 'utf8'));
  if (!sample.ok || sample.value.garden.today === null) throw new Error('no sample');
  const question = planQuestion(sample.value, dayOf(sample.value.garden.today));

  const reply = await garden.evaluate(
    ([file, text]) => {
      const read = (_key: string, value: unknown): unknown => {
        if (typeof value !== 'object' || value === null) return value;
        if ('number' in value && Object.keys(value).length === 1) return Number(value.number);
        if ('floats' in value)
          return Float64Array.from(value.floats as number[], (one) => Number(one));
        if ('bytes' in value) return Uint8Array.from(value.bytes as number[]);
        return value;
      };
      const planner = new Worker(new URL(`assets/${file}`, document.baseURI), { type: 'module' });
      return new Promise<unknown>((resolve, reject) => {
        planner.onerror = (event) => reject(new Error(event.message || 'the worker stopped'));
        planner.onmessage = ({ data }: MessageEvent<{ kind: string }>) => {
          if (data.kind === 'progress') return;
          planner.terminate();
          resolve(data);
        };
        planner.postMessage({ kind: 'plan', id: 1, question: JSON.parse(text, read) as unknown });
      });
    },
    [worker!, JSON.stringify(question, written)] as const,
  );
  expect(reply).toMatchObject({
    kind: 'answered',
    answer: { ok: true, value: { how: { kind: 'solved' } } },
  });
});
