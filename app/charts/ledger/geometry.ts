import type { BedLedger, CameIn, Holding, WentOut } from '../../core/season/ledger';
import { textWidth } from '../textWidth';
import {
  cameInWords,
  holdingWords,
  soilGaveWords,
  soilKeptWords,
  wentOutWords,
} from '../../words/ledgerWords';

/** What a ribbon is coloured and woven as: a source, or a kind of end. */
export type RibbonKind =
  | 'start'
  | 'soil'
  | 'last year'
  | 'compost'
  | 'dug in'
  | 'cover'
  | 'rain'
  | 'air'
  | 'crop'
  | 'gas'
  | 'water'
  | 'hand';

export interface FlowEnd {
  readonly key: string;
  readonly words: string;
  readonly kind: RibbonKind;
  readonly gM2: number;
  /** px of the block at its outer side, and of its part of the trunk */
  readonly top: number;
  readonly height: number;
  readonly trunkTop: number;
  readonly ribbon: string;
}

export interface FlowDrawing {
  readonly width: number;
  readonly height: number;
  readonly leftBlock: number;
  readonly rightBlock: number;
  readonly trunk: {
    readonly x: number;
    readonly width: number;
    readonly top: number;
    readonly height: number;
  };
  readonly pxPerGram: number;
  readonly into: readonly FlowEnd[];
  readonly outOf: readonly FlowEnd[];
}

interface Side {
  readonly key: string;
  readonly words: string;
  readonly kind: RibbonKind;
  readonly gM2: number;
}

const openingKind: Readonly<Record<Holding, RibbonKind>> = {
  'ready in the soil': 'start',
  'in the cover': 'cover',
  'rotting in the soil': 'dug in',
  'in compost': 'compost',
  'in young humus': 'last year',
  'in the crop': 'crop',
  'in the soil itself': 'soil',
};

const cameInKind: Readonly<Record<CameIn, RibbonKind>> = {
  'laid on': 'cover',
  'dug in': 'dug in',
  'compost and manure': 'compost',
  rain: 'rain',
  'fixed from the air': 'air',
  'reached by deeper roots': 'soil',
};

const wentOutKind: Readonly<Record<WentOut, RibbonKind>> = {
  picked: 'crop',
  'cleared away': 'crop',
  'raked off': 'hand',
  'lost to the air': 'gas',
  'washed out': 'water',
  'lost from wet soil': 'gas',
  'left below shallower roots': 'water',
};

/** The two sides of a ledger as things that are more than nothing; the soil stands where its change belongs. */
export function flowSides(ledger: BedLedger): {
  readonly into: readonly Side[];
  readonly outOf: readonly Side[];
} {
  const soil = ledger.onHand.find((line) => line.key === 'in the soil itself')?.gM2 ?? 0;
  const into: Side[] = [
    ...ledger.opening.map((line) => ({
      key: `opening ${line.key}`,
      words: `at the start: ${holdingWords[line.key]}`,
      kind: openingKind[line.key],
      gM2: line.gM2,
    })),
    ...ledger.cameIn.map((line) => ({
      key: line.key,
      words: cameInWords[line.key],
      kind: cameInKind[line.key],
      gM2: line.gM2,
    })),
    { key: 'soil gave', words: soilGaveWords, kind: 'soil', gM2: Math.max(0, -soil) },
  ];
  const outOf: Side[] = [
    ...ledger.wentOut.map((line) => ({
      key: line.key,
      words: wentOutWords[line.key],
      kind: wentOutKind[line.key],
      gM2: line.gM2,
    })),
    ...ledger.onHand
      .filter((line) => line.key !== 'in the soil itself')
      .map((line) => ({
        key: `on hand ${line.key}`,
        words: `on hand: ${holdingWords[line.key]}`,
        kind: openingKind[line.key],
        gM2: line.gM2,
      })),
    { key: 'soil kept', words: soilKeptWords, kind: 'soil', gM2: Math.max(0, soil) },
  ];
  return {
    into: into.filter((side) => side.gM2 > 0),
    outOf: outOf.filter((side) => side.gM2 > 0),
  };
}

export const leastFlowWidth = 760;
const leastRibbons = 260;
/** a number and the air around it */
const numberWidth = 52;
const blockWidth = 12;
const trunkHeight = 240;
const slotLeast = 19;
const slotGap = 3;
const margin = 8;

/**
 * A ledger as a drawing: blocks at the left for what was there and came in, at the right for what
 * went out and is on hand, joined by ribbons through one trunk. Heights are to scale.
 */
export function flowDrawing(ledger: BedLedger, containerWidth: number): FlowDrawing {
  const { into, outOf } = flowSides(ledger);
  const wordsWidth = (sides: readonly Side[]) =>
    sides.reduce((most, side) => Math.max(most, textWidth(side.words)), 0) + numberWidth;
  const leftBlock = wordsWidth(into);
  const width = Math.max(
    leastFlowWidth,
    leftBlock + leastRibbons + wordsWidth(outOf),
    Math.round(containerWidth),
  );
  const all = into.reduce((sum, side) => sum + side.gM2, 0);
  const pxPerGram = all > 0 ? trunkHeight / all : 0;
  const slot = (side: Side) => Math.max(slotLeast, side.gM2 * pxPerGram) + slotGap;
  const columnHeight = (sides: readonly Side[]) => sides.reduce((sum, side) => sum + slot(side), 0);
  const height = Math.max(trunkHeight, columnHeight(into), columnHeight(outOf)) + 2 * margin;

  const rightBlock = width - wordsWidth(outOf) - blockWidth;
  const trunk = {
    x: (leftBlock + rightBlock + blockWidth) / 2 - 17,
    width: 34,
    top: (height - trunkHeight) / 2,
    height: trunkHeight,
  };

  const ends = (sides: readonly Side[], fromX: number, toX: number): FlowEnd[] => {
    let slotTop = (height - columnHeight(sides)) / 2;
    let trunkTop = trunk.top;
    const middle = (fromX + toX) / 2;
    return sides.map((side) => {
      const tall = side.gM2 * pxPerGram;
      const top = slotTop + (slot(side) - tall) / 2;
      const ribbon =
        `M${fromX} ${top} C${middle} ${top} ${middle} ${trunkTop} ${toX} ${trunkTop} ` +
        `V${trunkTop + tall} C${middle} ${trunkTop + tall} ${middle} ${top + tall} ${fromX} ${top + tall} Z`;
      const end = { ...side, top, height: tall, trunkTop, ribbon };
      slotTop += slot(side);
      trunkTop += tall;
      return end;
    });
  };
  return {
    width,
    height,
    leftBlock,
    rightBlock,
    trunk,
    pxPerGram,
    into: ends(into, leftBlock + blockWidth, trunk.x),
    outOf: ends(outOf, rightBlock, trunk.x + trunk.width),
  };
}
