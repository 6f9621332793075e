import { partsFromDay, type DayNumber } from '../../../app/core/days';
import type { BedSeason, LayerInput } from '../../../app/core/season/input';
import type { Pool } from '../../../app/core/season/flows';
import { decayed, heldNitrogen, kineticsOf, type Pools } from './decayEquations';
import { oneOf, type OneClass } from './simpleClass';
import { grow, leavesOf, pickToday, simplePlant, take } from './simplePlant';
import { drain, referenceDemand, warmth } from './simpleWater';
import { follow } from './solve';

interface Lying {
  key: string;
  readonly dryKg: number;
  left: number;
}

/** Share of a store that is left after a day in which a rate held: dN/dt = -rate N, integrated. */
const stillThere = (rate: number): number => follow([1], 1, ([n]) => [-rate * n!])[0]!;

const dayOfYear = (day: DayNumber): number =>
  Math.round(day - Date.UTC(partsFromDay(day).year, 0, 1) / 86_400_000) + 1;

/** What a bed of plant material, compost and at most one planting holds, by day. */
export type PoolDays = Record<Pool, number[]>;

/**
 * A bed's season by differential equations, day by day at constant rates in the order of the model:
 * what is exponential (decay, slow release, washing down) is integrated by the solver, what the
 * model says by the day (tie-up, ammonia, washing in, plants) is reckoned as it is said. Beds that are
 * kept moist are left out.
 */
export function integrateBed(input: BedSeason): PoolDays {
  const c = input.coefficients;
  const { soil, weather } = input;
  /** the second layer in the season that holds a day: to the deepest root that stands in it [mm] */
  const depthOn = (today: DayNumber): number => {
    const turns = [input.firstDay, ...input.seasonStarts, input.lastDay + 1];
    const from = turns.findLast((turn) => turn <= today)!;
    const to = turns.find((turn) => turn > today)! - 1;
    const standing = input.plantings.filter(
      ({ startDay, clearingDay }) =>
        startDay <= to && (clearingDay ?? Number.POSITIVE_INFINITY) >= from,
    );
    return Math.max(300, ...standing.map(({ crop }) => crop.fullRootDepth - 300));
  };
  let lowerDepth = depthOn(input.firstDay);
  const plant = input.plantings[0] ? simplePlant(input.plantings[0]) : null;
  const rainOfYear = input.normals.rainMillimetres.reduce((sum, month) => sum + month, 0);
  const classes: OneClass[] = [];
  const lying: Lying[] = [];
  let joins = 0;
  const nothing: Pools = { R: 0, B: 0, H: 0 };
  const isJoined = (one: OneClass): boolean => one.key.startsWith('joined');
  const water = {
    top: 300 * soil.fieldCapacity,
    lower: lowerDepth * soil.fieldCapacity,
    cover: 0,
  };
  // OM / 1.724 / CN x bulk density x 0.30 m
  let soilOrganic =
    ((soil.organicMatterPercent / 100) * soil.bulkDensityKgPerL * 1e6 * 0.3) /
    c.organicMatterPerCarbon /
    c.soilCarbonToNitrogen;
  let young = 0;
  let top = soil.startingMineralTop ?? c.startingMineralTop;
  let lower = (c.startingMineralPer30 * lowerDepth) / 300;
  let free = 0;
  const slow = { lying: 0, spent: 0, dug: 0 };
  const meal = { lying: 0, dug: 0 };
  const promise = { unripe: 0, ripe: 0, manure: 0 };
  let ts = 0;
  for (let day = 0; day < 11; day++)
    ts += (weather.minimumCelsius[day]! + weather.maximumCelsius[day]!) / 22;

  const open = (laid: boolean, pace: number, kind: 'green' | 'mature', cn: number): OneClass => {
    const key = `${laid} ${pace} ${kind} ${cn.toPrecision(8)}`;
    let found = classes.find((one) => one.key === key);
    if (!found) {
      const p = kineticsOf(kind, cn, c);
      found = { key, laid, kind, pace, p, pools: { R: 0, B: 0, H: 0 }, isOld: false };
      classes.push(found);
    }
    return found;
  };
  const add = (to: OneClass, carbon: number): void => {
    to.pools = { ...to.pools, R: to.pools.R + carbon };
  };

  function lay(layer: LayerInput): void {
    const { nitrogen: n, placement } = layer;
    let key = 'slow';
    if (layer.materialClass === 'slow') {
      const [ready, releasing] = [n * layer.mineralShare, n * layer.slowShare];
      const coming = layer.slowKind === 'meal' ? meal : slow;
      if (placement === 'laid') {
        free += ready;
        coming.lying += releasing;
        slow.spent += n - ready - releasing;
        if (layer.slowKind === 'manure') promise.manure += c.manureAmmoniaShare * ready;
      } else {
        top += ready;
        coming.dug += releasing;
        soilOrganic += n - ready - releasing;
      }
    } else {
      const kind = layer.materialClass === 'green' ? 'green' : 'mature';
      const laidPace = c.surfaceRateGreen * (kind === 'green' ? 1 : c.surfaceRateMatureShare);
      const pace = placement === 'laid' ? laidPace : placement === 'hoed' ? c.hoedRate : 1;
      const to = open(placement === 'laid', pace, kind, layer.carbon / n);
      add(to, layer.carbon);
      key = to.key;
    }
    if (placement !== 'laid') return;
    lying.push({ key, dryKg: layer.dryKgPerM2, left: 1 });
    if (layer.materialClass !== 'slow') promise.unripe += n * potential(layer);
    if (layer.condition === 'just cut') {
      const room = holds() - water.cover;
      water.cover += Math.max(0, Math.min(room, layer.freshKgPerM2 - layer.dryKgPerM2));
    }
  }
  const dry = (): number => lying.reduce((sum, one) => sum + one.left * one.dryKg, 0);
  const holds = (): number => Math.min(c.coverWaterLimit, c.coverWaterPerDryMatter * dry());

  function potential(layer: LayerInput): number {
    const percent = c.ammoniaSlope * (layer.nitrogen / layer.dryKgPerM2) - c.ammoniaIntercept;
    const d = layer.laidDepth;
    let m = d >= 25 ? 3 : 1 + ((d - 10) / 15) * 2;
    if (d < 10) m = d <= 6 ? 0.5 : 0.5 + ((d - 6) / 4) * 0.5;
    if (layer.condition === 'limp') m = c.ammoniaLimp;
    if (layer.condition === 'crisp') m = c.ammoniaCrisp;
    return Math.min(c.ammoniaLimit / 100, (Math.max(0, percent) * m * c.ammoniaFactor) / 100);
  }

  /** At a season's turn: what is left of a placement and a kind goes on as one. */
  function join(): void {
    const nameOf = ({ laid, pace, kind }: OneClass): string => `${laid} ${pace} ${kind}`;
    for (const name of new Set(classes.map(nameOf))) {
      const parts = classes.filter((one) => nameOf(one) === name);
      for (const one of parts) one.isOld = true;
      if (parts.length === 1) continue;
      const key = `joined ${joins++} ${name}`;
      const whole = oneOf(parts, c.assimilation, key);
      for (const one of parts) classes.splice(classes.indexOf(one), 1);
      for (const one of lying) if (parts.some((part) => part.key === one.key)) one.key = key;
      classes.push(whole);
    }
  }

  /** Decomposition of all classes: those that set free first, the others from what there is then. */
  function rot(u: number, v: number): Map<string, number> {
    const small = c.lyingShareOfMicrobesAndHumus;
    const seen = ({ R, B, H }: Pools): number => R + small * (B + H);
    const before = new Map(classes.map((one) => [one.key, seen(one.pools)]));
    const step = (one: OneClass, slowed: number, y: number): Pools => {
      const clock = (one.laid ? u : v) * one.pace * slowed;
      const { R, B, H } = one.pools;
      if (!(one.isOld && R <= 0.5 && clock > 0)) return decayed(one.pools, one.p, clock, v, y, 1);
      const rest = decayed({ R: 0, B, H }, one.p, 0, v, y, 1);
      return { ...rest, H: rest.H + one.p.h * y * R };
    };
    const gives = (one: OneClass, to: Pools): number =>
      heldNitrogen(one.pools, one.p) - heldNitrogen(to, one.p);
    const wanting: { one: OneClass; to: Pools; wants: number }[] = [];
    for (const one of classes) {
      const to = step(one, 1, c.assimilation);
      const given = gives(one, to);
      if (given < 0) wanting.push({ one, to, wants: -given });
      else {
        one.pools = to;
        if (one.laid) free += given;
        else top += given;
      }
    }
    for (const laid of [true, false]) {
      const group = wanting.filter(({ one }) => one.laid === laid);
      const wanted = group.reduce((sum, { wants }) => sum + wants, 0);
      const fromFree = laid ? c.coverFreeShareForTieUp * free : 0;
      const fromSoil = laid ? c.soilShareForCoverTieUp * top : top;
      const supply = fromFree + fromSoil;
      let used = 0;
      for (const { one, to, wants } of group) {
        let end = to;
        const share = supply / wanted;
        if (share < 1) {
          const slowed = Math.max(share, c.leastDecayWhenStarved);
          end = step(one, slowed, c.assimilation);
          const n1 = gives(one, end);
          if (-n1 > share * wants) {
            const n0 = gives(one, step(one, slowed, 0));
            const y = Math.max(0, (c.assimilation * (n0 + share * wants)) / (n0 - n1));
            end = step(one, slowed, y);
          }
        }
        used += Math.max(0, -gives(one, end));
        // A class that no yield lets tie up may set a little free after all.
        if (gives(one, end) > 0) {
          if (laid) free += gives(one, end);
          else top += gives(one, end);
        }
        one.pools = end;
      }
      const ofSoil = Math.max(0, used - fromFree);
      top -= ofSoil;
      free -= used - ofSoil;
    }
    return new Map(
      classes.map((one) => {
        const was = before.get(one.key)!;
        return [one.key, was > 0 ? Math.min(1, seen(one.pools) / was) : 0];
      }),
    );
  }

  /** What lies on top and all that goes with it falls to a share of itself. */
  function shrink(stays: number): void {
    free *= stays;
    promise.unripe *= stays;
    promise.ripe *= stays;
    promise.manure *= stays;
    water.cover *= stays;
    for (const one of lying) one.left *= stays;
  }
  function rake(share: number): void {
    const small = share * c.lyingShareOfMicrobesAndHumus;
    for (const one of classes.filter(({ laid }) => laid)) {
      const { R, B, H } = one.pools;
      one.pools = { R: R * (1 - share), B: B * (1 - small), H: H * (1 - small) };
    }
    slow.lying *= 1 - share;
    meal.lying *= 1 - share;
    slow.spent *= 1 - share;
    shrink(1 - share);
  }
  function dig(share: number): void {
    for (const one of classes.filter(({ laid }) => laid)) {
      const below = isJoined(one)
        ? { ...one, laid: false, pace: 1, key: `${one.key} dug ${joins++}`, pools: nothing }
        : open(false, 1, one.kind, one.p.cn);
      if (!classes.includes(below)) classes.push(below);
      const part = (from: Pools, by: number): Pools => ({
        R: from.R * by,
        B: from.B * by,
        H: from.H * by,
      });
      const moved = part(one.pools, share);
      const { R, B, H } = below.pools;
      below.pools = { R: R + moved.R, B: B + moved.B, H: H + moved.H };
      one.pools = part(one.pools, 1 - share);
    }
    top += share * free;
    soilOrganic += share * slow.spent;
    slow.dug += share * slow.lying;
    meal.dug += share * meal.lying;
    slow.spent *= 1 - share;
    slow.lying *= 1 - share;
    meal.lying *= 1 - share;
    shrink(1 - share);
  }

  const out: Record<string, number[]> = {};
  const write = (pool: Pool, grams: number): void => void (out[pool] ??= []).push(grams);

  for (let index = 0; index <= input.lastDay - input.firstDay; index++) {
    const day = input.firstDay + index;
    const [low, high] = [weather.minimumCelsius[index]!, weather.maximumCelsius[index]!];
    const mean = (low + high) / 2;
    const rain = weather.rainMillimetres[index]!;

    if (input.seasonStarts.includes(day)) {
      for (const one of classes) {
        young += one.pools.H / one.p.cnH;
        one.pools = { ...one.pools, H: 0 };
      }
      join();
      soilOrganic += slow.spent;
      slow.spent = 0;
      // as much in a litre of the deeper layer as in one of the old
      lower *= depthOn(day) / lowerDepth;
      water.lower *= depthOn(day) / lowerDepth;
      lowerDepth = depthOn(day);
    }
    const events = input.events.filter((one) => one.day === day);
    let watered = 0;
    for (const event of events) if (event.kind === 'rake off') rake(event.share);
    for (const event of events) if (event.kind === 'dig cover in') dig(event.share);
    for (const event of events) if (event.kind === 'water') watered += event.depth;
    for (const layer of input.layers.filter((one) => one.day === day)) lay(layer);
    if (plant && !plant.done && day >= plant.input.startDay) {
      plant.standing = true;
      grow(plant, mean);
    }

    const hidden = 1 - Math.exp(-c.coverFractionPerKilogram * dry());
    const leaves = plant?.standing ? leavesOf(plant, lowerDepth, c) : null;
    const et0 = referenceDemand(low, high, input.latitudeDegrees, dayOfYear(day));
    const d = drain(water, soil, lowerDepth, rain + watered, et0, holds(), hidden, leaves, c);
    const fill = holds() > 0 ? Math.min(1, d.damp / holds()) : 0;
    const cooler = c.coverCooling * hidden * Math.min(1, Math.max(0, (mean - 8) / 8));
    ts += c.soilWarmingRate * (1 - c.coverDamping * hidden) * (mean - cooler - ts);
    const available =
      (water.top - 300 * soil.wiltingPoint) / (300 * (soil.fieldCapacity - soil.wiltingPoint));
    const v = warmth(ts) * (0.2 + 0.8 * Math.min(1, Math.max(0, available)));
    const u = warmth(mean) * (c.coverDryWetness + (1 - c.coverDryWetness) * fill);

    // Lower layer first; then what wet soil takes; then what the top layer sends down.
    lower *= stillThere(d.lower / (lowerDepth * soil.fieldCapacity));
    if (d.top > c.denitrificationDrainage) top *= 1 - c.denitrifiedShare * warmth(ts);
    const stays = stillThere(d.top / (300 * soil.fieldCapacity));
    lower += top * (1 - stays);
    top *= stays;

    top += (c.rainNitrogenPerYear * rain) / rainOfYear;
    const fromSoil = soilOrganic * c.soilReleaseRate * v;
    const fromYoung = young * c.youngHumusRate * v;
    soilOrganic -= fromSoil;
    young -= fromYoung;
    top += fromSoil + fromYoung;

    const factors = rot(u, v);
    const wasSlow = slow.lying + slow.spent + meal.lying;
    for (const [store, rate] of [
      [slow, c.slowRate],
      [meal, c.mealRate],
    ] as const) {
      const [lyingStays, dugStays] = [stillThere(rate * u), stillThere(rate * v)];
      free += store.lying * (1 - lyingStays);
      top += store.dug * (1 - dugStays);
      store.lying *= lyingStays;
      store.dug *= dugStays;
    }
    factors.set('slow', wasSlow > 0 ? (slow.lying + slow.spent + meal.lying) / wasSlow : 0);
    const dryMorning = dry();
    for (const one of lying) one.left *= factors.get(one.key) ?? 0;

    const asks = c.ammoniaLeaving * promise.ripe;
    promise.ripe += c.ammoniaRipening * promise.unripe - asks;
    promise.unripe *= 1 - c.ammoniaRipening;
    const wet = c.ammoniaDryShare + c.ammoniaWetSlope * fill;
    const warm = Math.min(1.5, warmth(mean) / warmth(20));
    const ofManure = promise.manure * c.manureAmmoniaRate * warm;
    promise.manure -= ofManure;
    free -= Math.min(asks * Math.min(1, wet * warm) + ofManure, c.ammoniaFreeShare * free);
    const reach = d.through + c.washDepth * Math.max(c.washLeastMass, dryMorning);
    const washes = Math.min(1, c.washBase + d.through / reach) * free;
    free -= washes;
    top += washes;

    if (plant?.standing) {
      const taken = take(plant, day, top, lower, lowerDepth, c);
      top -= taken.top;
      lower -= taken.lower;
      pickToday(plant, day, c);
      if (plant.input.clearingDay !== null && day >= plant.input.clearingDay) {
        const roots = plant.input.crop.rootShare * (plant.nitrogen + plant.picked);
        add(open(false, 1, 'mature', c.rootCarbonToNitrogen), roots * c.rootCarbonToNitrogen);
        if (plant.input.topsFate === 'dug in') {
          const { residueIsGreen, residueCarbonToNitrogen: cn } = plant.input.crop;
          add(
            open(false, 1, residueIsGreen ? 'green' : 'mature', cn),
            (plant.nitrogen - roots) * cn,
          );
        }
        plant.nitrogen = 0;
        plant.standing = false;
        plant.done = true;
      }
    }

    const sum = (laid: boolean, of: (one: OneClass) => number): number =>
      classes.filter((one) => one.laid === laid).reduce((grams, one) => grams + of(one), 0);
    for (const [laid, name] of [
      [true, 'cover'],
      [false, 'dug'],
    ] as const) {
      write(
        `${name}Residue`,
        sum(laid, ({ pools, p }) => pools.R / p.cn),
      );
      write(
        `${name}Microbes`,
        sum(laid, ({ pools, p }) => pools.B / p.cnB),
      );
      write(
        `${name}Humus`,
        sum(laid, ({ pools, p }) => pools.H / p.cnH),
      );
    }
    write('coverFree', free);
    write('slow', slow.lying + slow.spent + slow.dug + meal.lying + meal.dug);
    write('soilOrganic', soilOrganic);
    write('youngHumus', young);
    write('mineralTop', top);
    write('mineralLower', lower);
    write('crop', plant?.nitrogen ?? 0);
  }
  return out as PoolDays;
}
