import type { Limits } from '../season/limits';
import { heldMostOf, heldStartOf, inHandShare, supplyOffs } from './bedDistance';
import { bedLimits } from './bedLimits';
import { groundPieces } from './ground';
import type { LinearProgramme } from './linearProgramme';
import type { PlanSource, PlanWeights } from './question';
import type { BedResponse, LayerResponse } from './response';
import { ProgrammeWriter } from './rowWriter';
import { fewLooks, sharesOf } from './spells';

/** One amount to be found: millimetres of a source on a bed on a day. */
export interface AmountColumn {
  readonly column: number;
  /** places in the beds, and in that bed's `layers` */
  readonly bed: number;
  readonly layer: number;
}

export interface PlanProgramme {
  readonly programme: LinearProgramme;
  readonly amounts: readonly AmountColumn[];
}

export interface ProgrammeAsked {
  readonly beds: readonly BedResponse[];
  readonly sources: readonly PlanSource[];
  /** litres left of each source once pinned amounts are taken out */
  readonly litres: readonly number[];
  readonly days: number;
  /** dry matter to ground hidden: k of the engine's curve, by bed */
  readonly perKilogram: readonly number[];
  /** beds and layers that may get nothing on the first day, because they are pinned */
  readonly isPinned: (bed: number, source: number) => boolean;
  /** beds that were pinned something: they are walked to anyhow */
  readonly visited: readonly boolean[];
  readonly bedsADay: number | null;
  /** of today's walks, those to beds with something pinned or laid already */
  readonly walksTaken: number;
  /** amounts of the first day that are settled [mm], by bed and layer; null: still to be found */
  readonly settled: ((bed: number, layer: number) => number) | null;
  readonly limits: Limits;
  readonly weights: PlanWeights;
}

/** g N per litre carried to the farthest bed: nearer ones come first only where all else is equal. */
const carryingCost = 1e-4;
/** g N per litre that is worked in with a hoe: the labour wants a reason (ours). */
const hoeingCost = 0.02;

interface Term {
  readonly column: number;
  readonly value: number;
}

/** A layer that may be laid, with its column. */
interface Offer extends AmountColumn {
  readonly response: LayerResponse;
  readonly source: PlanSource;
}

const terms = (offers: readonly Offer[], of: (offer: Offer) => number): Term[] =>
  offers.map((offer) => ({ column: offer.column, value: of(offer) }));

/**
 * The plan as a linear programme (model 11): amounts by bed, day and source, so that the least is
 *
 *     sum over beds of area x [sum over spells of share of the weeks
 *                                x (max(0, 0.9 need - supply) + w max(0, supply - 1.1 need)),
 *                                  meaned over a supply a tenth of the need lower and higher
 *                              + 2 g x mean over the weeks of the bare share]
 *
 * over the weeks to the season's end, with supply = supply without the plan + sum of response x amount. Held: what there is of each
 * source; each layer under its caution line, and all cover; room for greens, the class's ratio, the
 * season's total; what legumes lose; nitrogen on empty beds; no greens on greens that are still wet
 * and hardly rotted; so many beds on the first day (whole choices) and, loosely, on later days.
 *
 * @returns the programme in g N and mm; every row but those of what is short is `<=`
 */
export function planProgramme(asked: ProgrammeAsked): PlanProgramme {
  const writer = new ProgrammeWriter();
  const { beds, sources, weights } = asked;
  const farthest = Math.max(1, ...beds.map(({ steps }) => steps));
  let constant = 0;
  const offers: Offer[] = [];
  beds.forEach((bed, bedAt) => {
    const own = offersOf(writer, asked, bed, bedAt, farthest);
    offers.push(...own);
    addNitrogen(writer, bed, own, weights);
    constant += addGround(writer, bed, own, asked, bedAt);
    addLimits(writer, bed, own, asked);
    addIntervals(writer, bed, own, asked);
  });
  sources.forEach((_source, at) => {
    const own = offers.filter(({ response }) => response.source === at);
    writer.row(
      terms(own, ({ bed }) => beds[bed]!.areaM2),
      -Infinity,
      asked.litres[at]!,
    );
  });
  addBedsADay(writer, offers, asked);
  return {
    programme: writer.programme(constant),
    amounts: offers.map(({ column, bed, layer }) => ({ column, bed, layer })),
  };
}

function offersOf(
  writer: ProgrammeWriter,
  asked: ProgrammeAsked,
  bed: BedResponse,
  bedAt: number,
  farthest: number,
): Offer[] {
  return bed.layers.flatMap((response, layer): Offer[] => {
    if (response.blocked !== null || !(response.mostMillimetres > 0)) return [];
    const isToday = response.day === 0;
    if (isToday && asked.isPinned(bedAt, response.source)) return [];
    const settled = isToday && asked.settled ? asked.settled(bedAt, layer) : null;
    const labour = response.placement === 'hoed' ? hoeingCost : 0;
    const cost = bed.areaM2 * (carryingCost * (bed.steps / farthest) + labour);
    const column = writer.column(cost, settled ?? response.mostMillimetres, false, settled ?? 0);
    const source = asked.sources[response.source]!;
    return [{ column, bed: bedAt, layer, response, source }];
  });
}

/**
 * Too little and too much nitrogen. Too little counts by what lies and all that may come, and for a
 * part by what lies when today's layers are laid: what is in hand is sure. What browns hold back counts in full against a hungry bed. For an
 * over-fed one all of them together count no more than one layer just under the line of a note: they
 * share what there is to hold back, and how much that is, is assumed.
 */
function addNitrogen(
  writer: ProgrammeWriter,
  bed: BedResponse,
  offers: readonly Offer[],
  weights: PlanWeights,
): void {
  bed.aims.forEach(({ need, excess, share }, spell) => {
    if (!(share > 0)) return;
    const without = bed.supplies[spell]!;
    // as the likely supply turns out lower or higher, one as likely as the other
    const turnsOut = supplyOffs(need, weights);
    const shortWith = (some: readonly Offer[], weight: number): void => {
      const supply = terms(some, ({ response }) => response.supplies[spell]!);
      for (const off of turnsOut) {
        const short = writer.column((bed.areaM2 * share * weight) / turnsOut.length, Infinity);
        const least = weights.lowShare * need - without - off;
        writer.row([{ column: short, value: 1 }, ...supply], least, Infinity);
      }
    };
    const sure = inHandShare(bed, spell, weights);
    shortWith(offers, 1 - sure);
    if (sure > 0)
      shortWith(
        offers.filter(({ response }) => response.day === 0),
        sure,
      );
    const held = writer.column(0, heldMostOf(bed, spell));
    const added = terms(offers, ({ response }) => Math.max(0, response.supplies[spell]!));
    for (const off of turnsOut) {
      const over = writer.column((bed.areaM2 * share * excess) / turnsOut.length, Infinity);
      writer.row(
        [{ column: over, value: -1 }, { column: held, value: -1 }, ...added],
        -Infinity,
        weights.highShare * need - without - off,
      );
    }
    const heldBy = (piece: 'thin' | 'further', start: number): void => {
      const holding = terms(offers, ({ response }) => -response.held[spell]![piece]);
      writer.row([{ column: held, value: 1 }, ...holding], -Infinity, start);
    };
    heldBy('thin', 0);
    heldBy('further', heldStartOf(bed, spell));
  });
}

/** Ground hidden on each look, by pieces, and for a part by today's layers alone; returns what lies bare without the plan. */
function addGround(
  writer: ProgrammeWriter,
  bed: BedResponse,
  offers: readonly Offer[],
  asked: ProgrammeAsked,
  bedAt: number,
): number {
  const { groundGrams, inHand } = asked.weights;
  const perKilogram = asked.perKilogram[bedAt]!;
  const today = offers.filter(({ response }) => response.day === 0);
  let constant = 0;
  const addLook = (look: number, share: number, some: readonly Offer[]): void => {
    const each = bed.areaM2 * groundGrams * share;
    const { bare, pieces } = groundPieces(bed.dry[look]!, perKilogram);
    constant += each * bare;
    const lying = terms(some, ({ response }) => -Math.max(0, response.dry[look]!));
    if (lying.every(({ value }) => value === 0)) return;
    const gained = pieces.map(({ width, slope }) => ({
      column: writer.column(-each * slope, width),
      value: 1,
    }));
    writer.row([...gained, ...lying], -Infinity, 0);
  };
  sharesOf(bed.looks).forEach((share, look) => addLook(look, (1 - inHand) * share, offers));
  for (const { look, share } of fewLooks(bed.looks)) addLook(look, inHand * share, today);
  return constant;
}

/** Depths and every limit on nitrogen. */
function addLimits(
  writer: ProgrammeWriter,
  bed: BedResponse,
  offers: readonly Offer[],
  { sources, limits }: ProgrammeAsked,
): void {
  const columns = new Map(offers.map(({ layer, column }) => [layer, column]));
  for (const { layers, of, most } of bedLimits(bed, sources, limits))
    writer.row(
      layers.flatMap((at) => {
        const column = columns.get(at);
        return column === undefined ? [] : [{ column, value: of(bed.layers[at]!) }];
      }),
      -Infinity,
      most,
    );
}

/** A wet layer of greens that is hardly rotted and the next one share the room of one. */
function addIntervals(
  writer: ProgrammeWriter,
  bed: BedResponse,
  offers: readonly Offer[],
  { limits }: ProgrammeAsked,
): void {
  const greens = offers.filter(
    ({ source, response }) => source.oneMillimetre.isGreens && response.placement === 'laid',
  );
  const days = bed.coverDepth.length;
  const full = ({ response }: Offer): number => 1 / response.mostMillimetres;
  for (let earlier = 0; earlier < days; earlier++) {
    const first = greens.filter(({ response }) => response.day === earlier);
    const [one] = first;
    if (!one) continue;
    for (let later = earlier + 1; later < days; later++) {
      const isTooSoon =
        one.response.fill[later]! > limits.numbers['too soon wetness'] &&
        one.response.left[later]! > limits.numbers['too soon left'];
      if (!isTooSoon) continue;
      const second = greens.filter(({ response }) => response.day === later);
      if (second.length > 0) writer.row(terms([...first, ...second], full), -Infinity, 1);
    }
  }
}

/** So many beds to walk to: chosen whole on the first day, taken loosely on later ones. */
function addBedsADay(
  writer: ProgrammeWriter,
  offers: readonly Offer[],
  { bedsADay, beds, days, visited, walksTaken, settled }: ProgrammeAsked,
): void {
  if (bedsADay === null) return;
  if (settled === null) {
    const chosen: Term[] = [];
    beds.forEach((_bed, at) => {
      const own = offers.filter(({ bed, response }) => bed === at && response.day === 0);
      if (own.length === 0 || visited[at]) return;
      const isChosen = writer.column(0, 1, true);
      chosen.push({ column: isChosen, value: 1 });
      for (const { column, response } of own)
        writer.row(
          [
            { column, value: 1 },
            { column: isChosen, value: -response.mostMillimetres },
          ],
          -Infinity,
          0,
        );
    });
    const left = Math.max(0, bedsADay - walksTaken);
    writer.row(chosen, -Infinity, left);
  }
  for (let day = 1; day < days; day++)
    writer.row(
      terms(
        offers.filter(({ response }) => response.day === day),
        ({ response }) => 1 / response.mostMillimetres,
      ),
      -Infinity,
      bedsADay,
    );
}
