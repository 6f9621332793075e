import type { ComponentType } from 'react';
import { Icon } from '../../controls/marks/Icon';
import { BedsPart } from './BedsPart';
import { ContainersPart } from './ContainersPart';
import { FilePart } from './FilePart';
import { gardenParts, type GardenPartId } from './gardenParts';
import { PlacePart } from './PlacePart';
import { SafetyPart } from './SafetyPart';
import { StockPart } from './StockPart';
import { showPart, weatherHeading } from './wantedPart';

const partOf: Readonly<Record<GardenPartId, ComponentType>> = {
  'garden-place': PlacePart,
  'garden-containers': ContainersPart,
  'garden-beds': BedsPart,
  'garden-stock': StockPart,
  'garden-safety': SafetyPart,
  'garden-file': FilePart,
};
const parts = gardenParts.map((part) => ({ ...part, Part: partOf[part.id] }));
const jumps = parts.flatMap(({ id, words }) =>
  id === 'garden-place'
    ? [
        { id, words },
        { id: weatherHeading, words: 'Weather' },
      ]
    : [{ id, words }],
);

/** What the garden is made of; each part on the one page, with its name to jump to. */
export function GardenPage() {
  return (
    <div className="page">
      <div className="page-head">
        <h1 tabIndex={-1}>Garden</h1>
      </div>
      <nav aria-label="Parts of the garden" className="jumps not-printed">
        {jumps.map(({ id, words }) => (
          <button key={id} type="button" className="button-small" onClick={() => showPart(id)}>
            {words}
          </button>
        ))}
      </nav>
      {parts.map(({ id, words, icon, Part }) => (
        <section key={id} className="section" aria-labelledby={id}>
          <div className="section-head">
            <h2 id={id} tabIndex={-1}>
              <Icon name={icon} /> {words}
            </h2>
          </div>
          <Part />
        </section>
      ))}
    </div>
  );
}
