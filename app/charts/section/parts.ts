import type { ChartUnits } from '../../words/chartUnits';
import {
  coverNitrogenSentence,
  groundSentence,
  layerSentence,
  lengthWords,
  plantSentence,
  rootSentence,
  soilSentence,
  waterSentence,
} from '../../words/sectionWords';
import { dayWord } from '../../words/chartFormat';
import { type MarkPlace, markPlaces, type SectionMark } from './data';
import { type NitrogenKind, nitrogenKinds, type SoilLayerFacts, type SectionFacts } from './facts';
import type { SectionGeometry } from './geometry';
import { dotsIn, type SectionScale } from './scale';

export interface PartBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What sort of thing a part is: its figures are made alike. */
export type SectionPartKind = 'plant' | 'ground' | 'layer' | 'soil' | 'water' | 'roots' | 'mark';

/** A thing in the drawing that says what it is. */
export interface SectionPart {
  readonly kind: SectionPartKind;
  /** the same thing has the same key on every evening */
  readonly key: string;
  readonly name: string;
  readonly says: string;
  readonly box: PartBox;
}

const strongest = { note: 0, caution: 1, stop: 2 } as const;

/** What there is to mind at a place, the gravest first. */
export const marksAt = (marks: readonly SectionMark[], place: MarkPlace): readonly SectionMark[] =>
  marks
    .filter((mark) => mark.place === place)
    .toSorted((one, other) => strongest[other.weight] - strongest[one.weight]);

export const soilDots = (
  layer: SoilLayerFacts,
  { gramsPerDot }: SectionScale,
): Readonly<Record<NitrogenKind, number>> =>
  Object.fromEntries(
    nitrogenKinds.map((kind) => [kind, dotsIn(layer.nitrogen[kind], gramsPerDot)]),
  ) as Record<NitrogenKind, number>;

const markNames: Readonly<Record<MarkPlace, string>> = {
  plants: 'To mind with the plants',
  cover: 'To mind with the cover',
  soil: 'To mind with the soil',
};

/** Where the marks of a place stand, middle of a mark. */
export function markSpot(
  place: MarkPlace,
  { left, right, surface, coverTop, soil, plants }: SectionGeometry,
): { readonly x: number; readonly y: number } {
  if (place === 'soil') return { x: left + 14, y: soil[0].top + 16 };
  if (place === 'cover') return { x: right - 14, y: (coverTop + surface) / 2 - 14 };
  const tip = Math.min(coverTop - 40, ...plants.map(({ top }) => top));
  return { x: left + 14, y: tip + 12 };
}

/** All things of a drawing from the sky down, each with its sentence. */
export function sectionParts(
  facts: SectionFacts,
  drawing: SectionGeometry,
  scale: SectionScale,
  units: ChartUnits,
): readonly SectionPart[] {
  const { left, right, surface, coverTop, soil } = drawing;
  const wide = (top: number, bottom: number): PartBox => ({
    x: left,
    y: top,
    width: right - left,
    height: Math.max(0, bottom - top),
  });
  const markPart = (place: MarkPlace): readonly SectionPart[] => {
    const marks = marksAt(facts.marks, place);
    if (marks.length === 0) return [];
    const { x, y } = markSpot(place, drawing);
    return [
      {
        kind: 'mark',
        key: `mark ${place}`,
        name: markNames[place],
        says: marks.map(({ says }) => says).join(' '),
        box: { x: x - 12, y: y - 12, width: 24, height: 24 },
      },
    ];
  };
  const [top, lower] = soil;
  const soilPart = (key: string, name: string, layer: typeof top): readonly SectionPart[] => {
    const dots = soilDots(layer.facts, scale);
    return [
      {
        kind: 'soil',
        key,
        name,
        says: soilSentence({ ...layer.facts.nitrogen, dots }, units),
        box: wide(layer.top, layer.bottom),
      },
      {
        kind: 'water',
        key: `water ${key}`,
        name: `Water, ${name.charAt(0).toLowerCase()}${name.slice(1)}`,
        says: waterSentence(layer.facts.water),
        box: { x: right - 24, y: layer.top, width: 24, height: layer.bottom - layer.top },
      },
    ];
  };
  // later ones lie over earlier ones where a pointer finds them
  return [
    ...drawing.plants.map(({ plant, ...place }) => ({
      kind: 'plant' as const,
      key: `plant ${plant.id}`,
      name: plant.name,
      says: plantSentence(plant, units),
      box: {
        x: place.left,
        y: Math.min(place.top, place.base - 24),
        width: place.right - place.left,
        height: Math.max(24, place.base - place.top),
      },
    })),
    {
      kind: 'ground',
      key: 'ground',
      name: drawing.cover.length > 0 ? 'The cover in all' : 'The ground',
      says:
        drawing.cover.length > 0
          ? `${groundSentence(facts.hidden)} ${coverNitrogenSentence(facts.coverNitrogen, units)}`
          : groundSentence(0),
      box: wide(Math.min(coverTop, surface - 6), surface),
    },
    ...drawing.cover.toReversed().map(({ lying, ...place }) => ({
      kind: 'layer' as const,
      key: `layer ${lying.layer.id}`,
      name: `${lying.layer.name}, ${dayWord(lying.layer.day, units)}`,
      says: layerSentence({ ...lying, ...lying.layer }, units),
      box: wide(place.top, place.bottom),
    })),
    ...soilPart('top', `Top ${units.topSoil} of soil`, top),
    ...soilPart('lower', `Soil below, to ${lengthWords(lower.facts.to, units)}`, lower),
    ...drawing.plants.map(({ plant, ...place }) => ({
      kind: 'roots' as const,
      key: `roots ${plant.id}`,
      name: `Roots of ${plant.name.toLowerCase()}`,
      says: rootSentence(plant, units),
      box: {
        x: place.left,
        y: surface,
        width: place.right - place.left,
        height: Math.max(12, place.rootEnd - surface),
      },
    })),
    ...markPlaces.flatMap(markPart),
  ];
}
