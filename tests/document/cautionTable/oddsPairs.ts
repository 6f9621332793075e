import { dayOf } from '../../../app/core/days';
import { withOddsOfBed, withOddsOfLayers } from '../../../app/core/season/cautions/cautions';
import { runDraws, type DrawsAnswer } from '../../../app/core/season/draws/runDraws';
import type { Limits } from '../../../app/core/season/limits';
import { bedQuestion } from '../../../app/document/bedQuestion';
import { drawsQuestion } from '../../../app/document/drawsQuestion';
import type { Application } from '../../../app/document/schema';
import {
  asked,
  bedId,
  clippings,
  crop,
  later,
  soilTest,
  tell,
  usualToday as today,
  watered,
  type Asked,
  type Told,
} from './asked';
import { pair, says, type Pairs } from './pair';

/* Rows that need imagined seasons: too much before flowers open or roots fill. */

const count = 60;

/** As `tell`, with the cautions of sixty imagined seasons among them. */
export function tellWithOdds(one: Asked, limits: Limits): Told {
  const { garden, thoughtOf } = one;
  const day = dayOf(garden.garden.today ?? '');
  const told = tell(one, limits);
  const imagine = (extraApplications: readonly Application[]): DrawsAnswer => {
    const answer = runDraws(
      drawsQuestion(garden, bedId, day, count, { extraApplications }),
      limits,
    );
    if (!answer) throw new Error('The draws were stopped');
    return answer;
  };
  const { facts } = bedQuestion(garden, bedId, day, thoughtOf);
  const run = { input: told.bed.input, result: told.bed.season, verdict: told.bed.verdict };
  const after = imagine(thoughtOf);
  const cautions =
    thoughtOf.length === 0
      ? withOddsOfBed(told.cautions, run, after, facts, limits)
      : withOddsOfLayers(
          told.cautions,
          run,
          thoughtOf.map(({ id }) => id),
          { before: imagine([]), after },
          facts,
          limits,
        );
  return { ...told, cautions };
}

/** Zinnias before they flower, of which so much is wanted. */
const zinnias = (kilogramsPerM2: number) =>
  asked({ plantings: [crop('zinnia', '2013-05-15', 'sown', { wanted: { kilogramsPerM2 } })] });

/** The same with a layer on a bed that is near its line. */
const layerOnZinnias = (kilogramsPerM2: number) => (millimetres: number) =>
  asked({
    plantings: [crop('zinnia', '2013-05-15', 'sown', { wanted: { kilogramsPerM2 } })],
    thoughtOf: [clippings(today, millimetres)],
  });

const heavier = ({ cautions }: Told): boolean =>
  cautions.some(({ kind, weight }) => kind === 'over-feeding' && weight === 'caution');

/** Beet, sown on 20 May and pulled on 28 August: it fills from the fortieth of its hundred days on. */
const washedBeet = (date: string) =>
  asked({
    bed: { knownSince: '2013-05-15' },
    plantings: [
      crop('beet', '2013-05-20', 'sown', {
        cleared: '2013-08-28',
        wanted: { kilogramsPerM2: 0.2 },
      }),
    ],
    events: [soilTest('2013-05-15', 90), watered(date, 900)],
  });
const fills = later('2013-05-20', 40);

export const oddsPairs: Pairs = {
  'over-feeding odds': [
    pair('pick in kg per m2', zinnias, 0.7377, 0.7477, { weight: 'note' }),
    pair('pick in kg per m2', zinnias, 0.566, 0.572, { weight: 'caution' }),
  ],
  'over-feeding all but sure': [
    pair('pick in kg per m2', zinnias, 0.3808, 0.3878, { weight: 'caution' }),
  ],
  'over-feeding least rise': [
    pair('depth in mm', layerOnZinnias(0.5), 1.92, 1.77, { sees: says('over-feeding odds') }),
  ],
  'over-feeding rise': [pair('depth in mm', layerOnZinnias(0.45), 4.95, 4.8, { sees: heavier })],
  'bulking from': [
    pair('day of a great watering', washedBeet, later(fills, 1), fills, {
      sees: says('over-feeding all but sure'),
    }),
  ],
};
