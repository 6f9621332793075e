import { useId, useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { MeasureField } from '../../controls/MeasureField';
import { Tick } from '../../controls/Tick';
import { TextField } from '../../controls/TextField';
import { withMeasured } from '../../document/materialValues';
import type { Lawn, OwnMaterial } from '../../document/schema';
import { isClippings } from '../../tables/lawns';
import { materialMinerals } from '../../tables/materialMinerals';
import type { MaterialRow } from '../../tables/shapes';
import { editFailureSentence } from '../../words/messages';
import { ratioWords } from '../../words/mixWords';
import { inTableWords } from '../../words/tableWords';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { DeleteOwnRow } from './DeleteOwnRow';
import { ContentField } from './ContentField';
import { materialUses, materialUsesWords } from './usedBy';
import { GoToUses } from './GoToUses';
import { placesOfMaterial } from './usedWhere';

/** Weighed in a bucket of so many litres: what a gardener has at hand. */
const bucketLitres = 10;

type OwnNumber = Exclude<keyof OwnMaterial, 'id' | 'name' | 'basedOn' | 'note'>;

/** A row of one's own: what a laboratory or a scale said; whatever is left empty is the table's. */
export function OwnMaterialFields(props: {
  readonly own: OwnMaterial;
  readonly row: MaterialRow;
  readonly onGone: () => void;
}) {
  const { own, row } = props;
  const garden = useGarden();
  const shown = useShown();
  const announce = useAnnounce();
  const countedId = useId();
  const [refused, setRefused] = useState<string | null>(null);
  const editLawn = useMowings((state) => state.editLawn);
  const editMaterial = useMowings((state) => state.editMaterial);
  const deleteMaterial = useMowings((state) => state.deleteMaterial);
  const swapMaterial = useMowings((state) => state.swapMaterial);
  const change = (changes: Partial<Record<keyof OwnMaterial, unknown>>) => {
    const result = editMaterial(own.id, changes as Partial<OwnMaterial>);
    setRefused(result.ok ? null : editFailureSentence(result.error));
  };
  const number = (key: OwnNumber) => (value: number | null) =>
    change({ [key]: value ?? undefined });
  /** one row for each kind of clippings: another that rests on the same is no longer counted by */
  const countBy = (lawn: Lawn, isCounted: boolean) => {
    const others = (lawn.ownClippings ?? []).filter((id) =>
      garden.materials.some((one) => one.id === id && one.basedOn !== row.id),
    );
    const rows = isCounted ? [...others, own.id] : others;
    const result = editLawn(lawn.id, { ownClippings: rows.length > 0 ? rows : undefined });
    setRefused(result.ok ? null : editFailureSentence(result.error));
    if (result.ok)
      announce(
        isCounted
          ? `Clippings of ${lawn.name} are counted by ${own.name}.`
          : `Clippings of ${lawn.name} are counted by the table again.`,
      );
  };
  const values = withMeasured(row, own, own);
  const ratio = values.carbon / values.nitrogen;
  const isBent =
    own.carbonToNitrogen !== undefined && Math.abs(ratio / own.carbonToNitrogen - 1) > 0.005;
  const minerals = materialMinerals(row.id);
  const uses = materialUses(garden, own.id);
  const others = materialUses(garden, row.id);
  const perBucket = own.densityKgPerM3;
  return (
    <div className="own-row">
      <p>
        Rests on {row.name.charAt(0).toLowerCase() + row.name.slice(1)}. {materialUsesWords(uses)}
      </p>
      <GoToUses places={placesOfMaterial(garden, own.id)} entry={['layer', 'layers']} />
      <div className="fields">
        <TextField label="Name" value={own.name} onCommit={(name) => change({ name })} />
        <ContentField
          content="water"
          value={own.moisturePercent ?? null}
          waterPercent={null}
          row={row.moisturePercent}
          onCommit={number('moisturePercent')}
        />
        <ContentField
          content="nitrogen"
          value={own.nitrogenPercent ?? null}
          waterPercent={own.moisturePercent ?? null}
          row={row.nitrogenPercent}
          onCommit={number('nitrogenPercent')}
        />
        <ContentField
          content="ratio"
          value={own.carbonToNitrogen ?? null}
          waterPercent={null}
          row={row.carbonToNitrogen}
          onCommit={number('carbonToNitrogen')}
        />
        {(['phosphorus', 'potassium'] as const).map((mineral) => (
          <ContentField
            key={mineral}
            content={mineral}
            value={own[`${mineral}Percent`] ?? null}
            waterPercent={own.moisturePercent ?? null}
            row={minerals[`${mineral}Percent`]}
            onCommit={number(`${mineral}Percent`)}
          />
        ))}
        <MeasureField
          label={`A loose bucket of it weighs (${shown.estimate(bucketLitres, shown.units.volume)})`}
          measure="weight"
          units={shown.system}
          value={perBucket === undefined ? null : (perBucket * bucketLitres) / 1000}
          mayBeEmpty
          echo={
            perBucket === undefined
              ? inTableWords(
                  shown.estimate(
                    (row.densityKgPerM3.typical * bucketLitres) / 1000,
                    shown.units.mass,
                  ),
                  row.densityKgPerM3.standing,
                )
              : undefined
          }
          onCommit={(kilograms) =>
            number('densityKgPerM3')(kilograms === null ? null : (kilograms * 1000) / bucketLitres)
          }
        />
        <TextField
          label="Where the numbers are from"
          hint="Laboratory, day, number of the sample."
          value={own.note ?? ''}
          mayBeEmpty
          maxLength={2000}
          onCommit={(note) => change({ note: note === '' ? undefined : note })}
        />
      </div>
      {isClippings(row.id) && garden.lawns.length > 0 && (
        <div role="group" aria-labelledby={countedId}>
          <span id={countedId} className="field-label">
            Whose clippings are counted by it?
          </span>
          {garden.lawns.map((lawn) => (
            <Tick
              key={lawn.id}
              label={lawn.name}
              checked={lawn.ownClippings?.includes(own.id) === true}
              onChange={(isCounted) => countBy(lawn, isCounted)}
            />
          ))}
          <p className="small soft">
            All its mowings, past and to come, that would count as{' '}
            {row.name.charAt(0).toLowerCase() + row.name.slice(1)}.
          </p>
        </div>
      )}
      {isBent && (
        <p className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          That nitrogen and that ratio do not fit together: no such stuff holds so much or so little
          carbon. The nitrogen stands; the ratio is taken as {ratioWords(ratio)}.
        </p>
      )}
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
      <div className="button-row">
        {others.stores + others.layers > 0 && (
          <button
            type="button"
            className="button"
            onClick={() => {
              const result = swapMaterial(row.id, own.id);
              announce(
                result.ok
                  ? `${own.name} now stands in ${result.value.stores + result.value.layers} places. Undo brings the table’s row back.`
                  : editFailureSentence(result.error),
              );
            }}
          >
            Use it wherever the table’s row is used
          </button>
        )}
        <DeleteOwnRow
          name={own.name}
          onDelete={() => deleteMaterial(own.id)}
          onGone={props.onGone}
          onRefused={setRefused}
        />
      </div>
    </div>
  );
}
