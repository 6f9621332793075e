// What a worker runs to get warm: nobody hears of it, and it ends when somebody asks.
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { runDraws } from '../../app/core/season/draws/runDraws';
import { drawsQuestions } from '../../app/document/drawsQuestion';
import { warmQuestion } from '../../app/document/warmQuestion';
import { limits } from '../../app/tables/thresholds';
import { workerEngine } from '../../app/worker/client';
import { desk } from '../../app/worker/desk';
import type { QuestionOf, Replied } from '../../app/worker/protocol';
import { exampleGarden } from '../document/exampleGarden';
import { turn, WorkingWorker } from './workingWorker';

const draws = (count: number): QuestionOf<'draws'> => ({
  kind: 'draws',
  beds: drawsQuestions(exampleGarden(), ['bed-2'], dayOf('2021-06-20'), count),
  limits,
});

/** A desk of which every look up is counted, one list for each long question. */
function countingDesk() {
  const said: Replied[] = [];
  const looks: number[] = [];
  const take = desk(
    (reply) => said.push(reply),
    () => {
      const own = looks.push(0) - 1;
      return () => {
        looks[own]! += 1;
        return turn();
      };
    },
  );
  return { take, said, looks };
}

describe('a worker that gets warm', () => {
  test('says nothing of it, to its end', async () => {
    const { take, said, looks } = countingDesk();
    take({ id: 0, warm: draws(5) });
    while (looks[0]! < 5) await turn();
    for (let more = 0; more < 5; more++) await turn();
    expect(looks).toEqual([5]);
    expect(said).toEqual([]);
  });

  test('leaves it lying when it is asked, and answers as ever', async () => {
    const { take, said, looks } = countingDesk();
    take({ id: 0, warm: draws(5000) });
    await turn();
    const question = draws(8);
    take({ id: 7, question });
    while (!said.some((reply) => 'ok' in reply)) await turn();
    const warmed = looks[0]!;
    for (let more = 0; more < 5; more++) await turn();
    expect(looks[0]).toBe(warmed);
    expect(warmed).toBeLessThan(10);
    expect(said.at(-1)).toEqual({ id: 7, ok: true, answer: [runDraws(question.beds[0]!, limits)] });
  });

  test('that was asked before needs none', async () => {
    const { take, looks } = countingDesk();
    take({ id: 1, question: draws(3) });
    take({ id: 0, warm: draws(3) });
    for (let more = 0; more < 10; more++) await turn();
    expect(looks).toEqual([3]);
  });

  test('is never brought down by it', async () => {
    const { take, said } = countingDesk();
    take({ id: 0, warm: { ...draws(3), beds: [null as never] } });
    await turn();
    take({ id: 2, question: draws(2) });
    while (!said.some((reply) => 'ok' in reply)) await turn();
    expect(said.at(-1)).toMatchObject({ id: 2, ok: true });
  });
});

test('both workers get warm where beds are dealt out over two, one where not', async () => {
  for (const cores of [1, 2]) {
    WorkingWorker.made = [];
    const engine = workerEngine(() => new WorkingWorker(), cores);
    engine.warm(draws(1));
    expect(WorkingWorker.made).toHaveLength(cores);
    for (const { heard } of WorkingWorker.made) expect(heard).toMatchObject([{ id: 0 }]);
    engine.stop();
  }
});

test('the program’s own: beds of the sample with crop, legume and layers, in made-up weather', () => {
  const beds = warmQuestion();
  expect(beds.length).toBeGreaterThan(1);
  expect(beds.some(({ input }) => input.plantings.some(({ crop }) => crop.legume))).toBe(true);
  expect(beds.some(({ input }) => input.layers.length > 1)).toBe(true);
  for (const bed of beds) {
    expect(bed.weather.kind).toBe('generated');
    expect(runDraws({ ...bed, count: 2 }, limits)).toMatchObject({ count: 2 });
  }
});
