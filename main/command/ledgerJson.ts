import { textFromDay } from '../../app/core/days';
import { flowTotals, type LedgerLine } from '../../app/core/season/ledger';
import {
  flowKinds,
  pools,
  sinks,
  sources,
  type Sink,
  type Source,
} from '../../app/core/season/flows';
import { dayKinds } from '../../app/core/season/input';
import type { SeasonResult } from '../../app/core/season/result';
import { unitsOf } from '../../app/amounts/unitSystem';
import type { BedAnswer } from '../../app/core/season/bedAnswer';
import type { DrawsAnswer } from '../../app/core/season/draws/runDraws';
import { drawsSeed } from '../../app/document/drawsQuestion';
import type { Bed, Garden } from '../../app/document/schema';
import { bedSeasonAccounts } from '../../app/document/seasonsAccount';
import { cautionWords } from '../../app/words/cautions';
import { basisOf } from '../../app/tables/thresholds';
import { cropName } from '../../app/document/cropValues';

/** Nitrogen over the bed's edge each day, summed by where it came from or went to. */
function acrossEdge(result: SeasonResult, place: Source | Sink): number[] {
  const days = new Array<number>(result.days).fill(0);
  flowKinds.forEach((kind, index) => {
    if (kind.from !== place && kind.to !== place) return;
    result.flows[index]!.forEach((grams, day) => (days[day]! += grams));
  });
  return days;
}

const byKind = (lines: readonly LedgerLine<string>[]): Record<string, number> =>
  Object.fromEntries(lines.map(({ key, gM2 }) => [key, gM2]));

function dayColumns(result: SeasonResult): Record<string, unknown> {
  const columns: Record<string, unknown> = {
    date: Array.from({ length: result.days }, (_, day) => textFromDay(result.firstDay + day)),
    kind: Array.from(result.kind, (kind) => dayKinds[kind]),
  };
  for (const pool of pools) columns[pool] = Array.from(result.pools[pool]);
  for (const place of [...sources, ...sinks]) columns[place] = acrossEdge(result, place);
  return columns;
}

/** What imagined seasons make of a bed; a pure function of garden, day, seed and their number. */
function drawsAsJson(draws: DrawsAnswer): object {
  const { overFeeding, nitrateDays, nitrate } = draws;
  return {
    seed: drawsSeed,
    count: draws.count,
    effectiveCount: draws.effectiveCount,
    states: draws.states,
    ratio: draws.ratio,
    needMet: draws.needMet,
    fixed: draws.fixed,
    leached: draws.leached,
    overFeeding: overFeeding && {
      odds: overFeeding.odds,
      planting: overFeeding.plantingId,
      begins: textFromDay(overFeeding.begins),
      first: textFromDay(overFeeding.first),
      last: textFromDay(overFeeding.last),
    },
    mattersMost: draws.mattersMost,
    nitrate: {
      date: nitrateDays.map(textFromDay),
      low: nitrate.map(({ low }) => low),
      middle: nitrate.map(({ middle }) => middle),
      high: nitrate.map(({ high }) => high),
    },
  };
}

/** The whole answer about one bed; keys are documented in DEVELOPERS.md and checked by a test. */
export function bedAsJson(
  garden: Garden,
  bed: Bed,
  answer: BedAnswer,
  draws: DrawsAnswer | null,
): object {
  const { input, season: result, verdict } = answer;
  const units = unitsOf(garden.garden.shownUnits);
  const today = result.today - result.firstDay;
  return {
    id: bed.id,
    name: bed.name,
    areaM2: bed.areaM2,
    state: verdict.state,
    coverState: verdict.coverState,
    ratio: verdict.ratio,
    residual: result.residual,
    start: result.start,
    days: dayColumns(result),
    insideFlows: flowKinds.flatMap((kind, index) =>
      (sources as readonly string[]).includes(kind.from) ||
      (sinks as readonly string[]).includes(kind.to)
        ? []
        : [{ from: kind.from, to: kind.to, why: kind.why, gM2: Array.from(result.flows[index]!) }],
    ),
    flows: flowTotals(result),
    seasons: bedSeasonAccounts(garden, input, result).map((season) => ({
      year: season.year,
      from: textFromDay(season.firstDay),
      to: textFromDay(season.lastDay),
      isOver: season.isOver,
      start: season.start,
      in: byKind(season.ledger.cameIn),
      out: byKind(season.ledger.wentOut),
      end: season.end,
      carriedOver: { ...season.carriedOver, expectedNextSeason: season.expectedNextSeason },
    })),
    plantings: result.plantings.map((planting) => {
      const typed = garden.plantings.find(({ id }) => id === planting.id);
      return {
        id: planting.id,
        crop: typed === undefined ? null : cropName(garden, typed.cropId),
        started: textFromDay(planting.startDay),
        cleared: planting.clearingDay === null ? null : textFromDay(planting.clearingDay),
        demand: planting.demand,
        uptake: planting.uptake,
        luxury: planting.luxury,
        fixed: planting.fixed,
        demandMet: planting.demandMet,
        harvested: planting.harvested,
        removed: planting.removed,
        left: planting.left,
        earlierSeasons: (planting.earlierSeasons ?? []).map(({ firstDay, lastDay, ...sums }) => ({
          from: textFromDay(firstDay),
          to: textFromDay(lastDay),
          ...sums,
        })),
      };
    }),
    layers: input.layers.map((layer) => {
      const lying = result.layers.find(({ id }) => id === layer.id);
      return {
        id: layer.id,
        date: textFromDay(layer.day),
        material: layer.materialId,
        placement: layer.placement,
        condition: layer.condition,
        gM2: layer.nitrogen,
        dryKgM2: layer.dryKgPerM2,
        laidMm: layer.laidDepth,
        leftShare: lying?.left[today] ?? 0,
        depthMm: lying?.depth[today] ?? 0,
      };
    }),
    verdict: {
      need: verdict.need,
      inCrop: verdict.inCrop,
      inReach: verdict.inReach,
      expectedRelease: verdict.expectedRelease,
      expectedTieUp: verdict.expectedTieUp,
      nitrateMgPerKg: verdict.nitrateMgPerKg,
      forecastMet: verdict.forecastMet,
      turnsOn: verdict.turnsOn === null ? null : textFromDay(verdict.turnsOn),
      room: verdict.room,
    },
    cautions: answer.cautions.map((caution) => {
      const words = cautionWords(caution, basisOf(caution), units);
      return {
        kind: caution.kind,
        weight: caution.weight,
        number: caution.number,
        threshold: caution.threshold,
        unit: caution.unit,
        date: caution.date === null ? null : textFromDay(caution.date),
        layer: caution.layerId,
        says: words.says,
        source: words.source,
        instead: words.instead,
        rule: caution.row,
      };
    }),
    ...(draws === null ? {} : { draws: drawsAsJson(draws) }),
  };
}
