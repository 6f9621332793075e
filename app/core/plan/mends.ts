import type { DayNumber } from '../days';
import { answerBed, type BedAnswer } from '../season/bedAnswer';
import { layerCautions } from '../season/cautions/cautions';
import { flowKinds } from '../season/flows';
import type { LayerInput } from '../season/input';
import { weightRank } from '../season/limits';
import type { MendMove } from './answer';
import type { MadePlan } from './makePlan';
import { checkedBed } from './checked';
import { depthLine } from './fixedRules';
import { litresLeft, standing } from './planLines';
import type { Ready, ReadyBed } from './ready';
import { amountOf } from './sourceAccounts';
import { withLayers } from './standing';

const rakedOff = flowKinds.flatMap(({ to, why }, index) =>
  to === 'removed' && why === 'raked off' ? [index] : [],
);

interface Top {
  readonly laidOn: DayNumber;
  /** of all that lies */
  readonly share: number;
  /** kg dry matter per m2 of it, and the layer that holds most */
  readonly dryKgPerM2: number;
  readonly of: LayerInput;
}

/** What was laid last and still lies on the morning of today; a day's layers count as one. */
function topOf({ input, season }: BedAnswer): Top | null {
  const morning = input.today - 1 - season.firstDay;
  const lying = season.layers.flatMap(({ id, left }) => {
    const layer = input.layers.find((one) => one.id === id);
    const dry = (layer?.dryKgPerM2 ?? 0) * (left[morning] ?? 0);
    return layer && dry > 0 ? [{ layer, dry }] : [];
  });
  const all = lying.reduce((sum, { dry }) => sum + dry, 0);
  const laidOn = lying.reduce((latest, { layer }) => Math.max(latest, layer.day), -Infinity);
  const top = lying
    .filter(({ layer }) => layer.day === laidOn)
    .sort((one, other) => other.dry - one.dry);
  const [most] = top;
  if (!most || all <= 0) return null;
  const dryKgPerM2 = top.reduce((sum, { dry }) => sum + dry, 0);
  return { laidOn, share: Math.min(1, dryKgPerM2 / all), dryKgPerM2, of: most.layer };
}

/** What was raked off one bed, as a layer on another. */
const carried = (
  top: Top,
  dryKilograms: number,
  nitrogenGrams: number,
  areaM2: number,
  today: DayNumber,
): LayerInput => {
  const dryKgPerM2 = dryKilograms / areaM2;
  const perDry = 1 / top.of.dryKgPerM2;
  return {
    ...top.of,
    id: `carried ${top.of.id}`,
    day: today,
    placement: 'laid',
    condition: 'crisp',
    dryKgPerM2,
    freshKgPerM2: dryKgPerM2,
    nitrogen: nitrogenGrams / areaM2,
    carbon: top.of.carbon * perDry * dryKgPerM2,
    laidDepth: top.of.laidDepth * perDry * dryKgPerM2,
  };
};

/** Hungry beds that are tried for what was raked off. */
const bedsTried = 3;

interface Landing {
  readonly bed: ReadyBed;
  readonly answer: BedAnswer;
  readonly worth: number;
}

const totalOf = (ready: Ready, bed: ReadyBed, answer: BedAnswer): number => {
  const { distance } = standing(ready, bed, answer);
  return distance.nitrogen + distance.ground;
};

function bestLanding(
  ready: Ready,
  from: ReadyBed,
  layerFor: (bed: ReadyBed) => LayerInput,
): Landing | null {
  const { question } = ready;
  const hungry = ready.beds
    .filter((bed) => bed !== from)
    .map((bed) => ({
      bed,
      lacks: question.weights.lowShare * bed.aim.need - (bed.response.supplies[0] ?? 0),
    }))
    .filter(({ lacks }) => lacks > 0)
    .sort((one, other) => other.lacks - one.lacks || one.bed.steps - other.bed.steps)
    .slice(0, bedsTried);
  let best: Landing | null = null;
  for (const { bed } of hungry) {
    const layer = layerFor(bed);
    const origin = Object.entries(from.bed.question.facts.layers).find(
      ([id]) => `carried ${id}` === layer.id,
    )?.[1];
    const { facts } = bed.bed.question;
    const withOrigin = origin
      ? { ...facts, layers: { ...facts.layers, [layer.id]: origin } }
      : facts;
    const answer = answerBed(
      { ...bed.bed.question, input: withLayers(bed.base.input, [layer]), facts: withOrigin },
      question.limits,
    );
    const cautions = layerCautions(
      { input: bed.base.input, result: bed.base.season, verdict: bed.base.verdict },
      { input: answer.input, result: answer.season, verdict: answer.verdict },
      [layer.id],
      withOrigin,
      question.limits,
    );
    if (cautions.some(({ weight }) => weightRank[weight] >= weightRank.caution)) continue;
    const worth = totalOf(ready, bed, bed.base) - totalOf(ready, bed, answer);
    if (worth > 0 && (best === null || worth > best.worth)) best = { bed, answer, worth };
  }
  return best;
}

function rakeMove(ready: Ready, from: ReadyBed): MendMove | null {
  const top = topOf(from.base);
  if (!top) return null;
  const { input } = from.base;
  const { today, areaM2 } = input;
  const after = answerBed(
    {
      ...from.bed.question,
      input: {
        ...input,
        events: [...input.events, { kind: 'rake off', day: today, share: top.share }],
      },
    },
    ready.question.limits,
  );
  const index = today - after.season.firstDay;
  const nitrogenGrams =
    areaM2 * rakedOff.reduce((sum, flow) => sum + (after.season.flows[flow]?.[index] ?? 0), 0);
  const dryKilograms = areaM2 * top.dryKgPerM2;
  const landing = bestLanding(ready, from, (bed) =>
    carried(top, dryKilograms, nitrogenGrams, bed.base.input.areaM2, today),
  );
  return {
    kind: 'rake and carry',
    fromBedId: from.bed.bedId,
    toBedId: landing?.bed.bed.bedId ?? null,
    share: top.share,
    laidOn: top.laidOn,
    dryKilograms,
    nitrogenGrams,
    from: {
      before: standing(ready, from, from.base),
      after: standing(ready, from, after),
    },
    to: landing
      ? {
          before: standing(ready, landing.bed, landing.bed.base),
          after: standing(ready, landing.bed, landing.answer),
        }
      : null,
    worth: totalOf(ready, from, from.base) - totalOf(ready, from, after) + (landing?.worth ?? 0),
  };
}

type Browns = Extract<MendMove, { kind: 'browns from now on' }>;

/** The most that goes on of the browns left over, up to the line of a note, where it does good. */
function brownsBuy(plan: MadePlan, at: number): Browns['buys'] {
  const { ready } = plan;
  const { question, sources, beds } = ready;
  const bed = beds[at]!;
  const { response } = bed;
  const left = litresLeft(plan);
  const isBrowns = (place: number): boolean =>
    sources[response.layers[place]!.source]!.role === 'browns';
  if ([...plan.today[at]!.keys()].some(isBrowns)) return null;
  const before = standing(ready, bed, bed.withPins);
  let best: Browns['buys'] = null;
  response.layers.forEach(({ day, source, blocked }, place) => {
    const from = sources[source]!;
    if (day !== 0 || blocked !== null || !isBrowns(place)) return;
    const line = question.limits.lines[depthLine(from.oneMillimetre)].note;
    const most = Math.min(left[source]!, (line / from.oneMillimetre.laidDepth) * response.areaM2);
    const litres = Math.floor(most / from.stepLitres + 1e-6) * from.stepLitres;
    if (!(litres > 0)) return;
    const checked = checkedBed(ready, at, new Map([[place, litres / response.areaM2]]));
    const millimetres = checked.amounts.get(place) ?? 0;
    const after = standing(ready, bed, checked.answer);
    const worth = totalOf(ready, bed, bed.withPins) - totalOf(ready, bed, checked.answer);
    if (!(worth > 0) || (best !== null && worth <= best.worth)) return;
    best = {
      sourceId: from.id,
      ref: from.ref,
      amount: amountOf(from, millimetres * response.areaM2),
      depthMillimetres: millimetres * from.oneMillimetre.laidDepth,
      before,
      after,
      worth,
    };
  });
  return best;
}

/**
 * What would mend each over-fed bed, each by runs of the full model: its last layer raked off and
 * carried to the hungry bed that gains most without a caution; a hungry crop in the gaps; browns.
 */
export function mendMoves(plan: MadePlan): readonly MendMove[] {
  const { ready } = plan;
  const { weights } = ready.question;
  return ready.beds.flatMap((bed, at): MendMove[] => {
    const { verdict } = bed.base;
    if (verdict.state !== 'over-fed') return [];
    const rake = rakeMove(ready, bed);
    const surplus = standing(ready, bed, bed.base).supply - weights.highShare * bed.aim.need;
    const { bedId } = bed.bed;
    return [
      ...(rake ? [rake] : []),
      ...(surplus > 0 ? [{ kind: 'hungry neighbour', bedId, surplus } as const] : []),
      {
        kind: 'browns from now on',
        bedId,
        coverState: verdict.coverState,
        buys: brownsBuy(plan, at),
      },
    ];
  });
}
