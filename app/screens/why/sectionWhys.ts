import { standingPlantings } from '../../core/season/plantingAccount';
import { cropById } from '../../document/cropValues';
import { coefficientRows } from '../../tables/coefficients';
import { cropHeights } from '../../tables/cropHeights';
import { soils } from '../../tables/soils';
import { anyBed } from '../../document/bedPast';
import type { SectionPartKind } from '../../charts/section/parts';
import { whyWords, type Why } from '../../words/why';
import type { BedWhyFacts } from './bedWhys';
import { hiddenWhy, layerColumnWhy } from './coverWhys';
import { bedGives } from './notInSum';
import { rowSource } from './sourcesOf';

/** How tall the plants stand. */
export function heightWhy({ garden, results }: BedWhyFacts): Why {
  const { input } = results;
  return {
    of: 'How tall it stands.',
    formula: 'Its full height × how far it has come, by the warmth it had.',
    inputs: [],
    range: null,
    sources: standingPlantings(input, input.today).flatMap(({ crop }) => {
      const row = cropById(garden, crop.id);
      const height =
        row &&
        (cropHeights as Record<string, (typeof cropHeights)[keyof typeof cropHeights]>)[
          row.tableId
        ];
      return row && height ? [rowSource(`${row.name}, full height`, height)] : [];
    }),
  };
}

/** How deep the roots are. */
function rootsWhy({ garden, results: { input } }: BedWhyFacts): Why {
  return {
    of: 'How deep its roots are.',
    formula:
      'Its full depth, reached in a straight line when three fifths of its season have passed.',
    inputs: [],
    range: null,
    sources: standingPlantings(input, input.today).flatMap(({ crop }) => {
      const row = cropById(garden, crop.id);
      return row ? [rowSource(`${row.name}, roots as deep as`, row.rootDepthCentimetres)] : [];
    }),
  };
}

/** Nitrogen in a layer of the soil, by how it is bound. */
const soilNitrogenWhy = ({ garden, results }: BedWhyFacts): Why => ({
  of: 'Nitrogen in that soil.',
  formula:
    'Ready: what came free or was washed in − what was taken, held back or lost. Held: what rots things has built into itself. The rest: what has not rotted yet of roots and of what was dug in.',
  inputs: [],
  range: null,
  sources: [whyWords.model, ...bedGives(garden, results.input.bedId)],
});

/** Water that plants can draw on. */
function waterWhy({ garden, results }: BedWhyFacts): Why {
  const texture = anyBed(garden, results.bedId)?.texture;
  const soil = texture && soils[texture];
  return {
    of: 'Water that plants can draw on.',
    formula:
      '(Water in it − what it holds when plants wilt) ÷ (what it holds when it has drained − what it holds when they wilt); rain and watering come in, drying, plants and draining take out, day by day.',
    inputs: [],
    range: null,
    sources: [
      whyWords.model,
      ...(soil
        ? [
            rowSource(`Drained ${texture} holds`, soil.fieldCapacity),
            rowSource('When plants wilt it holds', soil.wiltingPoint),
          ]
        : []),
      rowSource('Drying under a cover', coefficientRows.coverEvaporationSaving),
    ],
  };
}

/** What lies on the ground: how much of it that hides, and its nitrogen. */
const groundWhy = (): Why => ({
  ...hiddenWhy,
  of: 'Ground hidden, and nitrogen in the cover.',
  formula: `Hidden: ${hiddenWhy.formula} Nitrogen: all in what lies there, rotten or not, and what is free in it.`,
  sources: [whyWords.model, ...hiddenWhy.sources],
});

/**
 * What stands behind the figures of a part of a bed's section, on any evening.
 *
 * @returns null for what there is to mind: cautions have whys of their own
 */
export function sectionPartWhy(facts: BedWhyFacts, kind: SectionPartKind): Why | null {
  switch (kind) {
    case 'plant':
      return heightWhy(facts);
    case 'roots':
      return rootsWhy(facts);
    case 'ground':
      return groundWhy();
    case 'layer':
      return layerColumnWhy(facts, 'depth');
    case 'soil':
      return soilNitrogenWhy(facts);
    case 'water':
      return waterWhy(facts);
    case 'mark':
      return null;
  }
}
