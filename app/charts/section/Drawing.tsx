import { memo } from 'react';
import { weightShapes } from '../../words/markShapes';
import { stuffWeaveId } from '../cover/StuffWeaves';
import { type MarkPlace, markPlaces } from './data';
import { dotPath } from './dots';
import { nitrogenKinds, type SectionFacts } from './facts';
import type { PlantDrawing, SectionGeometry, SoilDrawing } from './geometry';
import { markSpot, marksAt } from './parts';
import { type PartName, partNames } from './plants/pen';

export interface DrawingProps {
  readonly facts: SectionFacts;
  readonly drawing: SectionGeometry;
  /** of the weaves, which stand once in the page */
  readonly weaves: string;
  readonly cell: number;
  readonly gauge: number;
  /** what there is to mind stands elsewhere */
  readonly withoutMarks?: boolean;
}

const waveLength = 8;
/** px of a layer whose larger half, full or empty, holds the word. */
const leastNamed = 90;
/** The water's level as a ripple. */
const ripple = (left: number, right: number, y: number): string =>
  `M${left} ${y}${'q2 -2.4 4 0t4 0'.repeat(Math.floor((right - left) / waveLength))}`;

/** Where soil goes on that is not drawn: a ragged edge. */
const torn = (left: number, right: number, y: number): string =>
  `M${left} ${y + 1}${'l7 -5l6 5'.repeat(Math.floor((right - left) / 13))}H${right}V${y + 2}H${left}Z`;

/** A bed on one evening, without words: what things are stands beside it. */
export const Drawing = memo(function Drawing(props: DrawingProps) {
  const { facts, drawing, weaves, cell, gauge, withoutMarks = false } = props;
  const { left, right, surface, bottom } = drawing;
  return (
    <g className="section-drawing">
      {drawing.soil.map((layer, at) => (
        <Soil key={layer.top} layer={layer} isLower={at === 1} weaves={weaves} />
      ))}
      {drawing.plants.map(({ plant, roots }) => (
        <path key={plant.id} className="section-roots" d={roots} />
      ))}
      {drawing.soil.map((layer) => (
        <Gauge key={layer.top} layer={layer} gauge={gauge} isNamed={!withoutMarks} />
      ))}
      {drawing.goesOn && <path className="section-torn" d={torn(left, right, bottom)} />}
      {drawing.soil.map((layer) => (
        <Dots key={layer.top} layer={layer} cell={cell} />
      ))}
      {drawing.plants.map((one) => (
        <PlantFigure key={one.plant.id} one={one} surface={surface} />
      ))}
      {drawing.cover.map(({ lying, path }) => (
        <g key={lying.layer.id} className={`stuff-${lying.layer.stuff}`}>
          <path d={path} fill={`url(#${stuffWeaveId(weaves, lying.layer.stuff)})`} />
          <path className="stuff-rotted" d={path} fillOpacity={0.5 * (1 - lying.left)} />
          <path className="section-layer-edge" d={path} />
        </g>
      ))}
      <path className="section-surface" d={`M${left} ${surface}H${right}`} />
      {(withoutMarks ? [] : markPlaces).map((place) => (
        <PlaceMark key={place} place={place} facts={facts} drawing={drawing} />
      ))}
    </g>
  );
});

function Soil({
  layer: { left, right, top, bottom },
  isLower,
  weaves,
}: {
  readonly layer: SoilDrawing;
  readonly isLower: boolean;
  readonly weaves: string;
}) {
  return (
    <g>
      <path
        d={`M${left} ${top}H${right}V${bottom}H${left}Z`}
        fill={`url(#${weaves}-${isLower ? 'subsoil' : 'crumb'})`}
      />
      {isLower && <path className="section-between" d={`M${left} ${top}H${right}`} />}
    </g>
  );
}

/** How full of water a layer is: a glass at the bed's end, with the water's level in it. */
function Gauge({
  layer: { right, top, bottom, level },
  gauge,
  isNamed,
}: {
  readonly layer: SoilDrawing;
  readonly gauge: number;
  readonly isNamed: boolean;
}) {
  const left = right - gauge;
  return (
    <g>
      <path className="section-gauge" d={`M${left} ${top}H${right}V${bottom}H${left}Z`} />
      <path className="section-water" d={`M${left} ${level}H${right}V${bottom}H${left}Z`} />
      {isNamed && bottom - top >= leastNamed && (
        <text
          className={level - top > bottom - level ? 'section-water-empty' : 'section-water-full'}
          transform={`translate(${(left + right) / 2} ${level - top > bottom - level ? (top + level) / 2 : (level + bottom) / 2}) rotate(-90)`}
          dy="0.32em"
        >
          water
        </text>
      )}
      {level - top > 3 && <path className="section-ripple" d={ripple(left, right, level)} />}
    </g>
  );
}

function Dots({ layer, cell }: { readonly layer: SoilDrawing; readonly cell: number }) {
  return (
    <>
      {nitrogenKinds.map((kind) => {
        const path = dotPath(layer.dots, kind, cell);
        return path === '' ? null : (
          <path key={kind} className={`section-dot section-dot-${kind}`} d={path} />
        );
      })}
    </>
  );
}

const pathsOf = ({ paths }: PlantDrawing, part: PartName): string =>
  paths.map((one) => one[part] ?? '').join('');

function PlantFigure({ one, surface }: { readonly one: PlantDrawing; readonly surface: number }) {
  const { plant, feet, base } = one;
  const stands = plant.height > 0 && base < surface - 0.5;
  return (
    <g className={`section-plant section-plant-${plant.stage} section-habit-${plant.habit}`}>
      {stands && (
        <path
          className="section-part-stem"
          d={feet.map((x) => `M${x.toFixed(1)} ${surface}V${base}`).join('')}
        />
      )}
      {partNames.map((part) => {
        const path = pathsOf(one, part);
        return path === '' ? null : <path key={part} className={`section-part-${part}`} d={path} />;
      })}
      {one.seeds.length > 0 && (
        <path
          className="section-seed"
          d={one.seeds
            .map(
              ({ x, y }) =>
                `M${(x - 2.4).toFixed(1)} ${y.toFixed(1)}a2.4 1.7 0 1 0 4.8 0a2.4 1.7 0 1 0 -4.8 0Z`,
            )
            .join('')}
        />
      )}
    </g>
  );
}

function PlaceMark({
  place,
  facts,
  drawing,
}: {
  readonly place: MarkPlace;
  readonly facts: SectionFacts;
  readonly drawing: SectionGeometry;
}) {
  const [mark] = marksAt(facts.marks, place);
  if (!mark) return null;
  const { x, y } = markSpot(place, drawing);
  const shape = weightShapes[mark.weight];
  return (
    <g
      className={`section-mark mark-weight-${mark.weight}`}
      transform={`translate(${(x - 9).toFixed(1)} ${(y - 9).toFixed(1)}) scale(0.9)`}
    >
      <circle className="section-mark-ground" cx="10" cy="10" r="13" />
      {shape.solid !== '' && <path className="mark-solid" fillRule="evenodd" d={shape.solid} />}
      {shape.open !== '' && <path className="mark-open" d={shape.open} />}
    </g>
  );
}
