import type { Habit } from '../data';
import type { PlantSize } from './draw';
import type { Pen } from './pen';

/*
 * How each kind of plant is built. All is drawn from the foot up; the highest stroke ends at the
 * height, and nothing is wider than the room there is.
 */
type Grower = (pen: Pen, size: PlantSize) => void;

const sideOf = (node: number): number => (node % 2 === 0 ? 1 : -1);
const flowerSize = (h: number): number => Math.max(2.6, Math.min(6, h * 0.07));

const climber: Grower = (pen, { height: h, width: w, grown, isFlowering, isBearing }) => {
  pen.bend('support', 0, 0, 0, -h);
  const nodes = 3 + Math.round(6 * grown);
  const step = h / (nodes + 0.6);
  for (let node = 0; node < nodes; node += 1) {
    const y = -step * (node + 0.7);
    const side = sideOf(node);
    pen.bend('stem', -side * 2, y + step * 0.7, side * 2, y - step * 0.3, 0.35 * side);
    const leaf = Math.min(w * 0.42, step * 1.15) * (1 - (0.4 * node) / nodes);
    pen.bend('stem', 0, y, side * leaf * 0.5, y - leaf * 0.12);
    pen.leaf(side * leaf * 0.4, y - leaf * 0.1, side * leaf * 0.75, leaf * 0.12, 0.32);
    pen.leaf(side * leaf * 0.4, y - leaf * 0.1, side * leaf * 0.3, -leaf * 0.55, 0.32);
    pen.leaf(side * leaf * 0.4, y - leaf * 0.1, side * leaf * 0.28, leaf * 0.6, 0.32);
    if (isFlowering && node > nodes * 0.45)
      pen.flower(-side * leaf * 0.42, y - step * 0.1, flowerSize(h) * 0.85, 4);
    if (isBearing && node > 0 && node < nodes * 0.8)
      for (const hang of [1, 0.75])
        pen.pod(-side * 3, y - 2, Math.min(step * 1.2, h * 0.15) * hang, -side * 9 * (hang - 0.6));
  }
  pen.bend('stem', 0, -h * 0.9, 1, -h, 0.3);
};

const bush: Grower = (pen, { height: h, width: w, isFlowering, isBearing }) => {
  const reach = w * 0.46;
  const arms = [
    [0, 1],
    [-0.42, 0.86],
    [0.42, 0.86],
    [-0.8, 0.58],
    [0.8, 0.58],
    [-0.62, 0.3],
    [0.62, 0.3],
  ] as const;
  arms.forEach(([across, up], arm) => {
    const x = across * reach;
    const leaf = Math.min(h * 0.34, reach * 0.8);
    const y = -h * up + leaf * 0.55;
    pen.bend('stem', 0, 0, x * 0.7, y, across * 0.3);
    pen.leaf(x * 0.7, y, x * 0.3, -leaf * 0.55, 0.36);
    pen.leaf(x * 0.7, y, leaf * 0.5, -leaf * 0.1, 0.34);
    pen.leaf(x * 0.7, y, -leaf * 0.5, -leaf * 0.1, 0.34);
    if (isFlowering && arm < 5) pen.flower(x * 0.85, y + leaf * 0.12, flowerSize(h));
    if (isBearing && arm > 0) pen.pod(x * 0.7, y + 1, h * 0.26, Math.sign(x) * 2);
  });
};

const staked: Grower = (pen, { height: h, width: w, grown, isFlowering, isBearing }) => {
  pen.bend('support', -2, 0, -2, -h);
  pen.bend('stem', 0, 0, 0, -h * 0.55, 0.05);
  pen.bend('stem', 0, -h * 0.55, 0, -h, -0.05);
  const nodes = 3 + Math.round(4 * grown);
  for (let node = 0; node < nodes; node += 1) {
    const y = -h * (0.16 + (0.74 * node) / nodes);
    const side = sideOf(node);
    const leaf = w * 0.46 * (1 - (0.45 * node) / nodes);
    const droop = leaf * 0.28;
    pen.bend('stem', 0, y, side * leaf * 0.75, y + droop * 0.6, 0.22 * side);
    pen.leaf(side * leaf * 0.6, y + droop * 0.2, side * leaf * 0.4, droop, 0.3);
    for (const at of [0.3, 0.55]) {
      const bow = -leaf * 0.12 * (1 - at);
      pen.leaf(side * leaf * at, y + bow, side * leaf * 0.16, -leaf * 0.26, 0.3);
      pen.leaf(side * leaf * at, y + bow + droop * 0.2, side * leaf * 0.16, leaf * 0.28, 0.3);
    }
    if (isBearing && node > 0 && node < nodes - 1)
      for (const [dx, dy] of [
        [0, 0],
        [-side * 0.8, 0.9],
        [side * 0.35, 1.2],
      ] as const) {
        const r = Math.max(2, Math.min(5, h * 0.035));
        pen.disc('fruit', -side * (r * 1.6 + 2) + dx * r, y + r + dy * r, r);
      }
    else if (isFlowering && node >= nodes - 3) pen.flower(-side * w * 0.14, y, flowerSize(h) * 0.9);
  }
  pen.leaf(0, -h * 0.86, w * 0.08, -h * 0.14, 0.25);
  pen.leaf(0, -h * 0.86, -w * 0.1, -h * 0.1, 0.25);
};

const fan =
  (belly: number, open: number): Grower =>
  (pen, { height: h, width: w, grown, isFlowering }) => {
    const leaves = 5 + 2 * Math.round(2 * grown);
    for (let leaf = 0; leaf < leaves; leaf += 1) {
      const way = (2 * leaf) / (leaves - 1) - 1;
      const x = way * w * 0.47;
      const y = -h * (1 - open * way * way);
      pen.leaf(way * 2, 0, x - way * 2, y, belly);
      pen.bend('stem', way * 2, 0, x * 0.75, y * 0.8, way * 0.12);
    }
    if (isFlowering) pen.flower(0, -h * 0.95, flowerSize(h));
  };

const head: Grower = (pen, { height: h, width: w, grown, isBearing }) => {
  for (const way of [-1, -0.6, 0.6, 1])
    pen.leaf(way * 3, 0, way * w * 0.46, -h * (way * way > 0.5 ? 0.5 : 0.85), 0.34);
  const r = Math.min(w * 0.26, h * 0.46) * (isBearing ? 1 : 0.45 + 0.45 * grown);
  const middle = -Math.max(r, h * 0.5);
  pen.disc('leaf', 0, middle, r, Math.min(r, h + middle));
  pen.bend('stem', 0, middle + r * 0.9, 0, middle - r * 0.8, 0.35);
  pen.bend('stem', 0, middle + r * 0.9, -r * 0.7, middle - r * 0.3, -0.3);
  pen.bend('stem', 0, middle + r * 0.9, r * 0.7, middle - r * 0.3, 0.3);
  if (middle - r > -h) pen.leaf(0, middle, 0, -h - middle, 0.22);
};

const stalk: Grower = (pen, { height: h, width: w, grown, isBearing }) => {
  pen.bend('stem', 0, 0, 0, -h * 0.72);
  const leaves = 5 + 2 * Math.round(2 * grown);
  for (let leaf = 0; leaf < leaves; leaf += 1) {
    const way = (2 * leaf) / (leaves - 1) - 1;
    const from = -h * (0.72 - 0.42 * Math.abs(way));
    pen.leaf(0, from, way * w * 0.46, -h * (1 - 0.62 * way * way) - from, 0.24);
  }
  if (isBearing)
    for (let bud = 0; bud < 4; bud += 1)
      pen.disc('fruit', sideOf(bud) * 3, -h * (0.08 + 0.07 * bud), Math.max(1.6, h * 0.03));
};

const tuft: Grower = (pen, { height: h, width: w, grown, isBearing }) => {
  for (const way of [-1, -0.5, 0, 0.5, 1]) {
    const x = way * w * 0.42;
    const y = -h * (1 - 0.32 * way * way);
    pen.bend('stem', 0, 0, x, y, way * 0.14);
    for (const at of [0.5, 0.72, 0.92]) {
      const size = h * 0.17 * (1.25 - at);
      pen.leaf(x * at, y * at, -size + way * 2, -size, 0.2);
      pen.leaf(x * at, y * at, size + way * 2, -size, 0.2);
    }
    pen.leaf(x * 0.92, y * 0.92, x * 0.08, y * 0.08, 0.3);
  }
  const girth = Math.max(1.6, Math.min(w * 0.16, h * 0.16) * (isBearing ? 1 : grown));
  pen.leaf(0, -1, 0, girth * 4.4, 0.24, 'store');
};

const bulb: Grower = (pen, { height: h, width: w, grown, isBearing }) => {
  for (const way of [-1, -0.45, 0.1, 0.6, 1])
    pen.leaf(0, 0, way * w * 0.42, -h * (1 - 0.3 * Math.abs(way - 0.1)), 0.05);
  const r = Math.max(1.8, Math.min(w * 0.24, h * 0.15) * (isBearing ? 1 : 0.3 + 0.6 * grown));
  pen.disc('store', 0, r * 0.55, r, r * 1.1);
};

const tuber: Grower = (pen, size) => {
  bush(pen, { ...size, isBearing: false });
  const { height: h, width: w, grown, isFlowering, isBearing } = size;
  if (!isFlowering && !isBearing && grown < 0.5) return;
  const r = Math.max(2, Math.min(w * 0.09, h * 0.1)) * (isBearing ? 1 : 0.65);
  for (const [x, y] of [
    [-0.3, 2.2],
    [0.26, 2.6],
    [-0.05, 4.2],
    [0.42, 5],
  ] as const) {
    pen.bend('store', 0, 0, x * w * 0.7, y * r, 0.1);
    pen.disc('store', x * w * 0.7, y * r, r * 1.35, r);
  }
};

const grass: Grower = (pen, { height: h, width: w, grown, isFlowering, isBearing }) => {
  pen.bend('stem', 0, 0, 0, -h * 0.92);
  const nodes = 3 + Math.round(4 * grown);
  for (let node = 0; node < nodes; node += 1) {
    const side = sideOf(node);
    const y = -h * (0.08 + (0.66 * node) / nodes);
    const tip = side * w * 0.46 * (1 - 0.3 * (node / nodes));
    pen.leaf(0, y, tip * 0.6, -h * 0.17, 0.13);
    pen.bend('stem', tip * 0.55, y - h * 0.165, tip, y - h * 0.07, -0.35 * side);
  }
  if (isFlowering || isBearing)
    for (const x of [-0.16, -0.07, 0, 0.07, 0.16])
      pen.bend('bloom', 0, -h * 0.86, x * w, -h * (1 - Math.abs(x) * 0.4));
  else pen.leaf(0, -h * 0.7, w * 0.05, -h * 0.3, 0.09);
  if (isBearing)
    for (const side of [1, -1])
      pen.leaf(0, -h * (0.4 + 0.06 * side), side * h * 0.06, -h * 0.17, 0.24, 'fruit');
};

const cereal: Grower = (pen, { height: h, width: w, isFlowering, isBearing }) => {
  for (const way of [-1, -0.4, 0.25, 0.9]) {
    const tall = h * (1 - 0.12 * Math.abs(way - 0.25));
    const x = way * w * 0.4;
    pen.bend('stem', way * 3, 0, x, -tall, way * 0.05);
    pen.leaf(way * 3, -tall * 0.25, way * 4 + 4, -tall * 0.3, 0.06);
    if (isFlowering || isBearing)
      for (const up of [0.72, 0.8, 0.88]) {
        pen.leaf(x * up, -tall * up, -2.5, -tall * 0.08, 0.25, 'bloom');
        pen.leaf(x * up, -tall * up, 2.5, -tall * 0.08, 0.25, 'bloom');
      }
  }
};

const clover: Grower = (pen, { height: h, width: w, isFlowering }) => {
  for (const [way, up] of [
    [-0.9, 0.6],
    [-0.5, 0.85],
    [0, 1],
    [0.45, 0.8],
    [0.9, 0.62],
  ] as const) {
    const x = way * w * 0.44;
    const r = Math.max(2, Math.min(h * 0.13, w * 0.12));
    const y = -h * up + r;
    pen.bend('stem', way * 3, 0, x, y, way * 0.1);
    for (const degrees of [-105, 0, 105]) pen.leafAt(x, y, degrees, r * 1.15, 0.45);
    if (isFlowering && up > 0.7) pen.flower(x + r * 1.7, y - r * 0.3, r * 0.85, 7);
  }
};

const flower: Grower = (pen, { height: h, width: w, grown, isFlowering, isBearing }) => {
  const inBloom = isFlowering || isBearing;
  const r = Math.max(4, Math.min(w * 0.34, h * 0.17));
  pen.bend('stem', 0, 0, 0, inBloom ? -h + r : -h * 0.9);
  const nodes = 3 + Math.round(3 * grown);
  for (let node = 0; node < nodes; node += 1) {
    const y = -h * (0.14 + (0.58 * node) / nodes);
    const leaf = w * 0.4 * (1 - (0.5 * node) / nodes);
    for (const side of [-1, 1])
      pen.leaf(0, y - (side * h * 0.05) / nodes, side * leaf, -leaf * 0.7, 0.2);
  }
  if (!inBloom) {
    const bud = Math.min(11, h * 0.13);
    pen.bend('stem', 0, -h * 0.88, 0, -h + bud);
    pen.leaf(0, -h + bud, 0, -bud, 0.38);
    return;
  }
  pen.flower(0, -h + r, r, 9);
  pen.disc('fruit', 0, -h + r, r * 0.34);
};

const vine: Grower = (pen, { height: h, width: w, grown, isFlowering, isBearing }) => {
  for (const side of [-1, 1])
    pen.bend('stem', 0, -h * 0.08, side * w * 0.47, -h * 0.12, side * -0.12);
  const leaves = 4 + Math.round(3 * grown);
  for (let at = 0; at < leaves; at += 1) {
    const way = leaves === 1 ? 0 : (2 * at) / (leaves - 1) - 1;
    const x = way * w * 0.4;
    const r = Math.min((w / leaves) * 0.62, h * 0.4);
    const top = -h * (1 - 0.25 * Math.abs(way)) + r;
    pen.bend('stem', x * 0.8, -h * 0.1, x, top, way * 0.1);
    pen.lobed(x, top, r);
    if (isFlowering && at % 2 === 1) pen.flower(x * 0.8 + r * 0.8, top + r * 0.5, r * 0.55);
  }
  if (isBearing)
    for (const way of [-0.55, 0.35]) {
      const r = Math.min(h * 0.26, w * 0.08);
      pen.disc('fruit', way * w * 0.7, -r * 0.85, r * 1.35, r * 0.85);
    }
};

const fern: Grower = (pen, { height: h, width: w }) => {
  for (const [foot, lean, tall] of [
    [-3, -0.16, 0.8],
    [0, 0.04, 1],
    [3, 0.2, 0.72],
  ] as const) {
    const top = h * tall;
    pen.bend('stem', foot, 0, foot + lean * w, -top, 0.04);
    for (let at = 0.35; at < 0.98; at += 0.13) {
      const x = foot + lean * w * at;
      const arm = w * 0.2 * (1.05 - at) + 2;
      for (const side of [-1, 1]) {
        pen.bend('stem', x, -top * at, x + side * arm, -top * at - arm * 0.7);
        pen.bend('stem', x + side * arm * 0.5, -top * at - arm * 0.35, x + side * arm, -top * at);
      }
    }
  }
};

const berry: Grower = (pen, { height: h, width: w, isFlowering, isBearing }) => {
  for (const way of [-1, -0.5, 0, 0.5, 1]) {
    const r = Math.min(h * 0.36, w * 0.13);
    const x = way * w * 0.36;
    const y = -h * (1 - 0.4 * way * way) + r;
    pen.bend('stem', 0, 0, x, y, way * 0.16);
    for (const degrees of [-75, 0, 75]) pen.leafAt(x, y, degrees, r, 0.38);
  }
  for (const side of [-1, 1]) {
    const x = side * w * 0.24;
    if (isFlowering) pen.flower(x, -h * 0.5, flowerSize(h));
    if (isBearing) {
      pen.bend('stem', 0, -h * 0.3, x, -h * 0.42, side * 0.3);
      pen.leaf(x, -h * 0.44, 0, Math.max(5, h * 0.3), 0.36, 'fruit');
    }
  }
};

export const growers: Readonly<Record<Habit, Grower>> = {
  climber,
  bush,
  // picked for its leaves
  herb: (pen, size) => bush(pen, { ...size, isBearing: false }),
  staked,
  rosette: fan(0.2, 0.5),
  head,
  stalk,
  root: tuft,
  bulb,
  tuber,
  grass,
  cereal,
  clover,
  flower,
  vine,
  fern,
  berry,
};
