// The imagined seasons gone on with through the season to come.
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../../app/core/days';
import { nextSeason } from '../../../app/core/season/nextSeason';
import {
  startNextSeason,
  type NextSeasonRange,
} from '../../../app/core/season/draws/nextSeasonDraws';
import { runDraws, type DrawsQuestion } from '../../../app/core/season/draws/runDraws';
import { mgPerKgFromGramsPerM2 } from '../../../app/core/units';
import { drawsQuestion } from '../../../app/document/drawsQuestion';
import { nextSeasonQuestions } from '../../../app/document/nextSeasonQuestion';
import { parseGarden } from '../../../app/document/parse';
import { sampleText } from '../../../app/document/sampleGarden';
import { bedSeason } from '../../../app/document/seasonInput';
import { limits } from '../../../app/tables/thresholds';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('The sample is no garden');
const garden = parsed.value;
const today = dayOf('2013-06-15');
const count = 100;
const toEnd = (question: DrawsQuestion): NextSeasonRange => {
  const run = startNextSeason(question);
  while (!run.isDone) run.next();
  return run.answer();
};
for (const { id, name } of garden.beds)
  test(name, () => {
    const t0 = performance.now();
    const q = nextSeasonQuestions(garden, today)(id, count);
    const r = toEnd(q);
    const t1 = performance.now();
    const now = runDraws(drawsQuestion(garden, id, today, count), limits)!;
    const per = mgPerKgFromGramsPerM2(1, q.input.soil.bulkDensityKgPerL, 30);
    console.log(
      name,
      (t1 - t0).toFixed(0),
      now.nitrate.at(-1)!.low / per,
      r.low[0],
      now.nitrate.at(-1)!.high / per,
      r.high[0],
      r.effectiveCount,
    );
    const typ = nextSeason(q.input);
    let out = 0;
    for (let d = 0; d < typ.days; d++) {
      const t = typ.pools.mineralTop[d]!;
      if (t < r.low[d + 1]! || t > r.high[d + 1]!) out++;
    }
    console.log(
      out,
      [30, 100, 150, 200, 300]
        .map(
          (d) =>
            `${r.low[d + 1]!.toFixed(1)} ${typ.pools.mineralTop[d]!.toFixed(1)} (${r.middle[d + 1]!.toFixed(1)}) ${r.high[d + 1]!.toFixed(1)}`,
        )
        .join(' | '),
    );
  });
