import { readAmount } from '../../amounts/readAmount';
import { readContent } from '../../amounts/readContent';
import { useState } from 'react';
import { useHeardAtRest } from '../../controls/Announcer';
import { Disclosure } from '../../controls/Disclosure';
import { QuantityField } from '../../controls/QuantityField';
import { materialById } from '../../document/materialValues';
import { mixtureOf, type MixturePart } from '../../document/mixture';
import { lawnMaterials } from '../../tables/lawns';
import { aimSentence, carriedWords, mixtureHeard } from '../../words/mixWords';
import {
  blendFailureSentence,
  contentFailureSentence,
  unmetSentence,
} from '../../words/tableWords';
import { useDesk } from '../desk';
import { materialGroups } from '../lists';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { useReadingContext } from '../useReadingContext';
import { aimRows, startMix } from './mixDraft';
import { MixSentence } from './MixSentence';
import { MixtureAnswer } from './MixtureAnswer';

const contentTrouble = (reading: ReturnType<typeof readContent> | null, what: string) =>
  reading && !reading.ok
    ? {
        sentence: contentFailureSentence(reading.error, what),
        suggestion: reading.error.suggestion,
      }
    : null;

/** What to put on a heap together, so that it does what is wished: asked in one sentence. */
export function Mixing() {
  const garden = useGarden();
  const context = useReadingContext();
  const shown = useShown();
  const lawn = garden.lawns[0];
  const [draft, setDraft, clear] = useDesk('mixture', () =>
    startMix(lawnMaterials[lawn?.kind ?? 'ordinary'], shown.system),
  );
  const materials = materialGroups(garden);
  const known = draft.rows.filter(
    ({ materialId }) =>
      garden.materials.some(({ id }) => id === materialId) ||
      materials.some(({ options }) => options.some(({ value }) => value === materialId)),
  );
  const readings = known.map((row) => ({
    row,
    isSought: row.text.trim() === '',
    reading: readAmount(row.text, 'stock', context),
  }));
  const ratio = draft.ratio.trim() === '' ? null : readContent(draft.ratio, 'ratio', null);
  const water = draft.water.trim() === '' ? null : readContent(draft.water, 'water', null);
  const isReady =
    readings.every(({ isSought, reading }) => isSought || reading.ok) &&
    (ratio === null || ratio.ok) &&
    (water === null || water.ok);
  const parts = readings.map(({ row, isSought, reading }): MixturePart => ({
    materialId: row.materialId,
    wetness: row.wetness,
    amount: isSought || !reading.ok ? null : reading.value.amount,
  }));
  const wish = {
    ratio: ratio?.ok ? ratio.value.value : null,
    moisture: water?.ok ? water.value.value / 100 : null,
  };
  const mixture = isReady ? mixtureOf(garden, parts, wish) : null;
  // one's own names stay as they were typed
  const names = known.map(({ materialId }) => {
    const own = garden.materials.find(({ id }) => id === materialId);
    return own?.name ?? materialById(garden, materialId).name.toLowerCase();
  });
  const foundOf = (index: number): string | null => {
    const part = mixture?.ok ? mixture.value.parts[index] : undefined;
    if (!part || !readings[index]?.isSought || part.freshKilograms === 0) return null;
    return (
      carriedWords(part.litres, garden.containers) ??
      shown.estimate(part.litres, shown.units.volume)
    );
  };
  const heard =
    mixture === null
      ? ''
      : mixture.ok
        ? [
            mixtureHeard(
              known.flatMap((_row, index) => {
                const found = foundOf(index);
                return found === null ? [] : [`${found} of ${names[index] ?? ''}`];
              }),
              mixture.value.blend,
            ),
            ...mixture.value.blend.unmet.map((unmet) =>
              unmetSentence(unmet, names, (kilograms) =>
                shown.estimate(kilograms, shown.units.volume),
              ),
            ),
          ].join(' ')
        : blendFailureSentence(mixture.error, names);
  // what stands there when one comes is read, and not said
  const [first] = useState(draft);
  useHeardAtRest(draft === first ? '' : heard, 'mixture');
  return (
    <section className="section mixing" aria-labelledby="mix-heading">
      <div className="section-head">
        <h2 id="mix-heading">What to put with it</h2>
        <button type="button" className="button-small" onClick={clear}>
          Start afresh
        </button>
      </div>
      <MixSentence
        draft={draft}
        rows={readings.map(({ row, reading }, index) => ({
          row,
          reading,
          name: names[index] ?? '',
          found: foundOf(index),
        }))}
        materials={materials}
        onDraft={setDraft}
      />
      <div className="mix-result">
        {mixture === null ? (
          <p className="soft">An amount or an aim is not understood yet: see above.</p>
        ) : mixture.ok ? (
          <MixtureAnswer mixture={mixture.value} parts={parts} wish={wish} names={names} />
        ) : (
          <p className="field-trouble">
            <span aria-hidden="true" className="field-trouble-mark" />
            {blendFailureSentence(mixture.error, names)}
          </p>
        )}
      </div>
      {(draft.aim === 'heats' || draft.aim === 'rots') && (
        <p className="small soft">{aimSentence(draft.aim, aimRows[draft.aim])}</p>
      )}
      <Disclosure summary="An exact aim" quiet open={draft.aim === 'exact'}>
        <div className="fields">
          <QuantityField
            label="Carbon to nitrogen (to 1)"
            hint="A heap that heats wants 25 to 30 (common practice). Empty: any."
            text={draft.ratio}
            onText={(text) => setDraft((now) => ({ ...now, ratio: text, aim: 'exact' }))}
            trouble={contentTrouble(ratio, 'Carbon to nitrogen')}
          />
          <QuantityField
            label="Water (% of weight)"
            hint="As a wrung-out sponge: 50 to 60 (common practice). Empty: any."
            text={draft.water}
            onText={(text) => setDraft((now) => ({ ...now, water: text }))}
            trouble={contentTrouble(water, 'Water')}
          />
        </div>
      </Disclosure>
    </section>
  );
}
