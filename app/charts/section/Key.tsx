import { nitrogenKinds, type NitrogenKind } from './facts';
import { dotPath } from './dots';
import type { PanelDrawing } from './Panel';

const kindWords: Readonly<Record<NitrogenKind, string>> = {
  ready: 'ready for roots',
  held: 'held by soil life',
  unrotted: 'in old roots and what was dug in',
};

/** What dots and lengths mean. */
export function SectionKey({
  panels,
  dot,
}: {
  readonly panels: readonly PanelDrawing[];
  /** "0.5 g/m²" */
  readonly dot: string;
}) {
  const kinds = nitrogenKinds.filter(
    (kind) => kind === 'ready' || panels.some(({ facts }) => facts.top.nitrogen[kind] > 0.005),
  );
  const scale = panels[0]?.scale;
  const times = scale ? Math.round(scale.coverPerMillimetre / scale.perMillimetre) : 1;
  const isCovered = panels.some(({ facts }) => facts.cover.length > 0);
  return (
    <div className="section-key small">
      <p>Each dot is {dot} of nitrogen:</p>
      <ul className="plain-list">
        {kinds.map((kind) => (
          <li key={kind}>
            <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true" focusable="false">
              <path className="section-soil-key" d="M1 1H19V19H1Z" />
              <path
                className={`section-dot section-dot-${kind}`}
                d={dotPath([{ kind, x: 10, y: 10 }], kind, 26)}
              />
            </svg>
            {kindWords[kind]}
          </li>
        ))}
        <li>
          <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true" focusable="false">
            <path className="section-gauge" d="M6 1H14V19H6Z" />
            <path className="section-water" d="M6 8H14V19H6Z" />
          </svg>
          water that plants can draw on, to the top when the soil holds all it can
        </li>
      </ul>
      <p className="soft">
        Plants, roots and soil are to one scale
        {isCovered && times > 1
          ? `, the cover ${times} times as thick, with its own scale beside it`
          : ''}
        . How tall plants are goes by the crop’s clock and is rough; how many are drawn is no count.
      </p>
    </div>
  );
}
