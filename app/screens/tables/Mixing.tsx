import { readContent } from '../../amounts/readContent';
import { readAmount } from '../../amounts/readAmount';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { Tick } from '../../controls/Tick';
import { mixtureOf, type MixturePart } from '../../document/mixture';
import { materialById } from '../../document/materialValues';
import type { Wetness } from '../../document/schema';
import { lawnMaterials } from '../../tables/lawns';
import { amountFailureSentence } from '../../words/messages';
import { blendFailureSentence, contentFailureSentence } from '../../words/tableWords';
import { wetnessChoices } from '../choices';
import { useDesk } from '../desk';
import { materialGroups } from '../lists';
import { useGarden } from '../store';
import { useReadingContext } from '../useReadingContext';
import { MixtureAnswer } from './MixtureAnswer';

interface MixRow {
  readonly key: number;
  readonly materialId: string;
  readonly wetness: Wetness;
  readonly text: string;
  readonly isSought: boolean;
}
interface MixDraft {
  readonly rows: readonly MixRow[];
  readonly ratio: string;
  readonly water: string;
  readonly nextKey: number;
}

const start = (grass: string): MixDraft => ({
  rows: [
    { key: 1, materialId: grass, wetness: 'dry', text: '10 kg', isSought: false },
    { key: 2, materialId: 'leaves-maple', wetness: 'dry', text: '', isSought: true },
  ],
  ratio: '30',
  water: '',
  nextKey: 3,
});

/** What to put together for a heap or a layer, so that carbon to nitrogen and water come out as wished. */
export function Mixing() {
  const garden = useGarden();
  const context = useReadingContext();
  const lawn = garden.lawns[0];
  const [draft, setDraft, clear] = useDesk('mixture', () =>
    start(lawnMaterials[lawn?.kind ?? 'ordinary']),
  );
  const change = (key: number, changes: Partial<MixRow>) =>
    setDraft((now) => ({
      ...now,
      rows: now.rows.map((row) => (row.key === key ? { ...row, ...changes } : row)),
    }));

  const isOwn = new Set(garden.materials.map(({ id }) => id));
  const known = draft.rows.filter(
    ({ materialId }) =>
      isOwn.has(materialId) ||
      materialGroups(garden).some(({ options }) =>
        options.some(({ value }) => value === materialId),
      ),
  );
  const readings = known.map((row) => ({ row, reading: readAmount(row.text, 'stock', context) }));
  const ratio = draft.ratio.trim() === '' ? null : readContent(draft.ratio, 'ratio', null);
  const water = draft.water.trim() === '' ? null : readContent(draft.water, 'water', null);
  const isReady =
    readings.every(({ row, reading }) => row.isSought || reading.ok) &&
    (ratio === null || ratio.ok) &&
    (water === null || water.ok);
  const parts = readings.map(({ row, reading }): MixturePart => ({
    materialId: row.materialId,
    wetness: row.wetness,
    amount: row.isSought || !reading.ok ? null : reading.value.amount,
  }));
  const wish = {
    ratio: ratio?.ok ? ratio.value.value : null,
    moisture: water?.ok ? water.value.value / 100 : null,
  };
  const mixture = isReady ? mixtureOf(garden, parts, wish) : null;
  const names = known.map(({ materialId }) => materialById(garden, materialId).name.toLowerCase());
  return (
    <div className="mixing">
      <section className="section" aria-labelledby="mix-parts">
        <div className="section-head">
          <h2 id="mix-parts">What goes in</h2>
        </div>
        <ol className="plain-list mix-rows">
          {readings.map(({ row, reading }, index) => (
            <li key={row.key} className="mix-row">
              <div className="fields">
                <PickOne
                  label={`Part ${index + 1}`}
                  value={row.materialId}
                  groups={materialGroups(garden)}
                  onPick={(materialId) => change(row.key, { materialId })}
                />
                {!row.isSought && (
                  <QuantityField
                    label="How much?"
                    hint="2 bags, 60 L, 10 kg."
                    text={row.text}
                    onText={(text) => change(row.key, { text })}
                    trouble={
                      row.text.trim() !== '' && !reading.ok
                        ? {
                            sentence: amountFailureSentence(reading.error),
                            suggestion: reading.error.suggestion,
                          }
                        : null
                    }
                  />
                )}
              </div>
              <Tick
                label="Find how much"
                checked={row.isSought}
                onChange={(isSought) => change(row.key, { isSought })}
              />
              <ChoiceRow
                legend="It is"
                choices={wetnessChoices}
                value={row.wetness}
                onChoose={(wetness) => change(row.key, { wetness })}
              />
              {readings.length > 1 && (
                <button
                  type="button"
                  className="button-small"
                  onClick={() =>
                    setDraft((now) => ({
                      ...now,
                      rows: now.rows.filter(({ key }) => key !== row.key),
                    }))
                  }
                >
                  Take part {index + 1} out
                </button>
              )}
            </li>
          ))}
        </ol>
        <div className="button-row">
          <button
            type="button"
            className="button"
            disabled={draft.rows.length >= 8}
            onClick={() =>
              setDraft((now) => ({
                ...now,
                nextKey: now.nextKey + 1,
                rows: [
                  ...now.rows,
                  {
                    key: now.nextKey,
                    materialId: 'straw-wheat',
                    wetness: 'dry',
                    text: '',
                    isSought: false,
                  },
                ],
              }))
            }
          >
            Add a part
          </button>
          <button type="button" className="button-plain" onClick={clear}>
            Start afresh
          </button>
        </div>
      </section>
      <section className="section" aria-labelledby="mix-wish">
        <div className="section-head">
          <h2 id="mix-wish">What it should be</h2>
        </div>
        <div className="fields">
          <QuantityField
            label="Carbon to nitrogen (to 1)"
            hint="A heap that heats wants 25 to 30 (common practice). Empty: any."
            text={draft.ratio}
            onText={(text) => setDraft((now) => ({ ...now, ratio: text }))}
            trouble={
              ratio && !ratio.ok
                ? {
                    sentence: contentFailureSentence(ratio.error, 'Carbon to nitrogen'),
                    suggestion: ratio.error.suggestion,
                  }
                : null
            }
          />
          <QuantityField
            label="Water (% of weight)"
            hint="As a wrung-out sponge: 50 to 60 (common practice). Empty: any."
            text={draft.water}
            onText={(text) => setDraft((now) => ({ ...now, water: text }))}
            trouble={
              water && !water.ok
                ? {
                    sentence: contentFailureSentence(water.error, 'Water'),
                    suggestion: water.error.suggestion,
                  }
                : null
            }
          />
        </div>
        <div aria-live="polite">
          {mixture === null ? (
            <p className="soft">Say how much there is of each part that is not to be found.</p>
          ) : mixture.ok ? (
            <MixtureAnswer mixture={mixture.value} parts={parts} wish={wish} names={names} />
          ) : (
            <p className="field-trouble">
              <span aria-hidden="true" className="field-trouble-mark" />
              {blendFailureSentence(mixture.error, names)}
            </p>
          )}
        </div>
      </section>
    </div>
  );
}
