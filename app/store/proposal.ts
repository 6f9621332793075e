import { produce } from 'immer';
import { dayOf, seasonStart } from '../core/days';
import type { ProposalAnswer } from '../core/season/bedAnswer';
import type { Caution } from '../core/season/verdict';
import { bedQuestion } from '../document/bedQuestion';
import { faultOfChange } from '../document/change';
import type { Application, Garden } from '../document/schema';
import { limits } from '../tables/thresholds';
import type { QuestionOf } from '../worker/protocol';
import type { LayingDraft, StopCaution } from './contract';
import { freshIds } from './freshIds';

/** The applications that drafts would become, in the order of their parts. */
export function applicationsOf(garden: Garden, drafts: readonly LayingDraft[]): Application[] {
  const nextId = freshIds('application', garden.applications);
  const nextMixture = freshIds(
    'mixture',
    garden.applications.flatMap(({ mixtureId }) => (mixtureId === null ? [] : [{ id: mixtureId }])),
  );
  return drafts.flatMap((draft) => {
    const mixtureId = draft.parts.length > 1 ? nextMixture() : null;
    return draft.parts.map((part): Application => ({
      id: nextId(),
      date: draft.date,
      bedId: draft.bedId,
      from: part.from,
      amount: part.amount,
      condition: part.condition,
      wetness: part.wetness,
      placement: draft.placement,
      mixtureId,
      passedStops: [...draft.passedStops],
      ...(part.nitrogenPercent === undefined ? {} : { nitrogenPercent: part.nitrogenPercent }),
      ...(part.carbonToNitrogen === undefined ? {} : { carbonToNitrogen: part.carbonToNitrogen }),
    }));
  });
}

export interface Proposal {
  readonly applications: readonly Application[];
  readonly question: QuestionOf<'proposal'>;
}

/** What the engine is asked about drafts; a text when the garden could not hold them. */
export function proposalOf(
  garden: Garden,
  drafts: readonly LayingDraft[],
  today: number,
): Proposal | string {
  const applications = applicationsOf(garden, drafts);
  const hypothetical = produce(garden, (draft) => {
    draft.applications.push(...applications);
  });
  const fault = faultOfChange(garden, hypothetical);
  if (fault) return `${fault.where}: ${fault.what}`;
  const bedIds = [...new Set(drafts.map(({ bedId }) => bedId))];
  const beds = bedIds.map((bedId) => {
    const own = applications.filter((application) => application.bedId === bedId);
    return {
      before: bedQuestion(garden, bedId, today),
      after: bedQuestion(garden, bedId, today, own),
      layerIds: own.map(({ id }) => id),
    };
  });
  return { applications, question: { kind: 'proposal', beds, limits } };
}

/** What a stop hangs on: the lawn it was mown from, the stock, or the material. */
function sourceOf(garden: Garden, from: Application['from']): string {
  if (from.source === 'stock') return `stock ${from.stockId}`;
  if (from.source === 'elsewhere') return `material ${from.materialId}`;
  const mowing = garden.mowings.find(({ id }) => id === from.mowingId);
  return `lawn ${mowing?.lawnId ?? ''}`;
}

/**
 * One yes to a stop holds for its source till the season ends: from then on the stop is shown as
 * a caution. A caution of the bed as a whole counts for every proposed source.
 */
export function withPassedStops(
  garden: Garden,
  applications: readonly Application[],
  cautions: readonly Caution[],
): Caution[] {
  const month = garden.garden.seasonStartMonth;
  const passed = (application: Application, kind: string): boolean => {
    const source = sourceOf(garden, application.from);
    const season = seasonStart(dayOf(application.date), month);
    return garden.applications.some(
      (earlier) =>
        earlier.passedStops.includes(kind) &&
        sourceOf(garden, earlier.from) === source &&
        seasonStart(dayOf(earlier.date), month) === season,
    );
  };
  return cautions.map((caution) => {
    if (caution.weight !== 'stop') return caution;
    const concerned = applications.filter(
      ({ id }) => caution.layerId === null || caution.layerId === id,
    );
    return concerned.length > 0 && concerned.every((one) => passed(one, caution.kind))
      ? { ...caution, weight: 'caution' }
      : caution;
  });
}

/** The stops that the drafts have not deliberately passed. */
export function stopsOf(
  drafts: readonly LayingDraft[],
  beds: readonly ProposalAnswer[],
): StopCaution[] {
  return beds.flatMap(({ bedId, cautions }) => {
    const passed = new Set(
      drafts.filter((draft) => draft.bedId === bedId).flatMap(({ passedStops }) => passedStops),
    );
    return cautions
      .filter(({ weight, kind }) => weight === 'stop' && !passed.has(kind))
      .map((caution) => ({ bedId, caution }));
  });
}
