import { Disclosure } from '../../controls/Disclosure';
import type { Garden, Lawn } from '../../document/schema';
import { limits, thresholdRow } from '../../tables/thresholds';
import { shortSource, type SourceKey } from '../../tables/sources';
import { footLines } from '../../words/safetyLines';
import { ownSafetyWords, safetyGroups, type SafetyLine } from '../../words/safetyPage';
import { sourceHazardWords } from '../../words/sourceHazards';
import { sourceLine } from '../../words/sourceLine';
import { useShown, type Shown } from '../shown';
import { WeightWord } from '../StateWords';
import { useGarden, useMowings } from '../store';
import { labelInItsWords, treatedWords } from '../treatedWords';

/** What may hurt people, animals or water: what was said of this garden first, then all of it. */
export function SafetyPart() {
  const garden = useGarden();
  const shown = useShown();
  const showDialog = useMowings((state) => state.showDialog);
  const compost = shown.estimate(limits.lines['compost depth'].note, shown.units.depth);
  const own = saidOf(garden, shown);
  return (
    <div className="sheet">
      <h3>Of this garden</h3>
      <ul className="plain-list">
        {own.length > 0 ? (
          own.map(({ says, lawn }) => (
            <li key={says}>
              {says}{' '}
              {lawn && (
                <button
                  type="button"
                  className="button-small"
                  aria-label={`${lawn.treatment.answer === 'not asked' ? ownSafetyWords.answer : ownSafetyWords.change}: ${lawn.name}`}
                  onClick={() => showDialog({ kind: 'treatment', lawnId: lawn.id })}
                >
                  {lawn.treatment.answer === 'not asked'
                    ? ownSafetyWords.answer
                    : ownSafetyWords.change}
                </button>
              )}
            </li>
          ))
        ) : (
          <li>{ownSafetyWords.nothing}</li>
        )}
      </ul>
      <div className="safety-groups">
        {safetyGroups(limits, compost).map(({ title, lines }) => (
          <section key={title} className="safety">
            <h3>{title}</h3>
            <ul className="plain-list cautions">
              {lines.map((line) => (
                <li key={line.says} className={`caution caution-${line.weight}`}>
                  <p className="caution-says">
                    <WeightWord weight={line.weight} /> {line.says}
                  </p>
                </li>
              ))}
            </ul>
          </section>
        ))}
      </div>
      <section className="form">
        <h3>Who is asked first</h3>
        {footLines.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </section>
      <Disclosure summary="Where these lines come from" quiet>
        <ul className="plain-list">
          {safetyGroups(limits, compost).map(({ title, lines }) => (
            <li key={title}>
              <strong>{title}</strong>: {[...new Set(lines.flatMap(basisOfLine))].join(' ')}
            </li>
          ))}
        </ul>
      </Disclosure>
    </div>
  );
}

/** Where a line comes from and how it stands, for each row that it rests on. */
function basisOfLine({ rows = [] }: SafetyLine): readonly string[] {
  if (rows.length === 0)
    return [
      sourceLine({
        source: shortSource('CommonPractice'),
        place: 'what growers do',
        standing: 'common practice',
        judged: false,
      }),
    ];
  return rows.flatMap((id) => {
    const row = thresholdRow(id);
    const cell = row.fact ?? row.number ?? row.caution ?? row.note;
    return cell ? [sourceLine({ ...cell, source: shortSource(cell.source as SourceKey) })] : [];
  });
}

/** A line of what was said; with a lawn where it answers a question about it. */
interface Said {
  readonly says: string;
  readonly lawn?: Lawn;
}

/** What the gardener ticked or answered, and what nobody answered yet. */
function saidOf(garden: Garden, shown: Shown): Said[] {
  const { dogs, ownWell } = garden.garden;
  const plain = [
    ...(dogs ? [ownSafetyWords.dogs] : []),
    ...(ownWell ? [ownSafetyWords.ownWell] : []),
    ...garden.lawns.flatMap(({ name, fouledByPets }) =>
      fouledByPets ? [ownSafetyWords.fouled(name)] : [],
    ),
    ...[...garden.lawns, ...garden.stock].flatMap(({ name, hazards = [] }) =>
      hazards.map((hazard) => `${name}: ${sourceHazardWords[hazard]}.`),
    ),
  ];
  return [
    ...plain.map((says) => ({ says })),
    ...garden.lawns.flatMap((lawn) =>
      lawn.treatment.answer === 'nothing'
        ? []
        : [
            {
              says: [
                `${lawn.name}: ${treatedWords(lawn.treatment, shown)}`,
                labelInItsWords(lawn.treatment),
              ]
                .filter(Boolean)
                .join(' '),
              lawn,
            },
          ],
    ),
  ];
}
