import { answerBed, type BedAnswer } from '../season/bedAnswer';
import { layerCautions } from '../season/cautions/cautions';
import type { Distance, PlanEffects } from './answer';
import { factsWith } from './checked';
import type { MadePlan } from './makePlan';
import { standing } from './planLines';
import { layerIdOf, type Ready } from './ready';
import { layerOf } from './response';
import { withLayers } from './standing';

function totalOf(ready: Ready, answers: readonly BedAnswer[]): Distance {
  let nitrogen = 0;
  let ground = 0;
  ready.beds.forEach((bed, at) => {
    const { distance } = standing(ready, bed, answers[at]!);
    nitrogen += distance.nitrogen;
    ground += distance.ground;
  });
  return { nitrogen, ground };
}

/**
 * All greens that are there today on the nearest bed, whatever the bed says: what many do. What is
 * held back by what was put on its lawn is left out here as in the plan; no bed where nothing is left.
 */
function allOnNearest(ready: Ready): PlanEffects['allOnNearest'] {
  const [nearest] = ready.beds;
  const base = ready.beds.map((bed) => bed.base);
  if (!nearest) return { nitrogen: 0, ground: 0, bedId: null, cautions: [] };
  const { question } = ready;
  const area = nearest.base.input.areaM2;
  const layers = ready.sources
    .filter(
      ({ role, day, litres, heldBack }) =>
        role === 'greens' && day === question.today && litres > 0 && heldBack?.weight !== 'stop',
    )
    .map((source) =>
      layerOf(source, source.litres / area, question.today, layerIdOf(source.id, question.today)),
    );
  if (layers.length === 0) return { ...totalOf(ready, base), bedId: null, cautions: [] };
  const { bed } = nearest;
  const facts = factsWith(ready, 0);
  const answer = answerBed(
    { ...bed.question, input: withLayers(nearest.base.input, layers), facts },
    question.limits,
  );
  const cautions = layerCautions(
    { input: nearest.base.input, result: nearest.base.season, verdict: nearest.base.verdict },
    { input: answer.input, result: answer.season, verdict: answer.verdict },
    layers.map(({ id }) => id),
    facts,
    question.limits,
  );
  // a lawn nobody was asked about holds its grass back by the layer, not by the source
  if (cautions.some(({ kind, weight }) => kind === 'treated lawn' && weight === 'stop'))
    return { ...totalOf(ready, base), bedId: null, cautions };
  return { ...totalOf(ready, [answer, ...base.slice(1)]), bedId: bed.bedId, cautions };
}

/** The garden's distance by the full model with the plan and without. */
export const planEffects = (
  { ready, checked }: MadePlan,
  toEnd: readonly BedAnswer[],
): PlanEffects => ({
  doNothing: totalOf(
    ready,
    ready.beds.map(({ base }) => base),
  ),
  plan: totalOf(
    ready,
    checked.map(({ answer }) => answer),
  ),
  planToEnd: totalOf(ready, toEnd),
  allOnNearest: allOnNearest(ready),
});
