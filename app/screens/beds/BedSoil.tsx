import { useId } from 'react';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { Figured } from '../../controls/Figured';
import { PickOne } from '../../controls/PickOne';
import { dayOf } from '../../core/days';
import { textures, type Bed } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { twoFigures } from '../../words/figures';
import { soilWeightWords } from '../../words/chartUnits';
import { MatterField } from '../garden/MatterField';
import { useShown } from '../shown';
import { soilFigures } from '../why/soilWhys';
import { useMowings } from '../store';

/** So long a test of nitrate says something of today (ours). */
const freshDays = 365;

/** The soil of a bed, as far as it is known. */
export function BedSoil(props: {
  readonly bed: Bed;
  readonly results: BedResults | undefined;
  /** the heading it stands under decides its own */
  readonly heading?: 'h2' | 'h3';
}) {
  const { bed, results, heading: Heading = 'h2' } = props;
  const headingId = useId();
  const editBed = useMowings((state) => state.editBed);
  const events = useMowings((state) => state.garden?.events);
  const shown = useShown();
  const soil = results?.input.soil;
  const matter = `${twoFigures(soil?.organicMatterPercent ?? 0)} %`;
  const weight = soilWeightWords(soil?.bulkDensityKgPerL ?? 0, shown.chart);
  const from = (results?.input.today ?? 0) - freshDays;
  const isTested = (events ?? []).some(
    (one) =>
      one.kind === 'soil test' &&
      one.bedId === bed.id &&
      one.nitrateMgPerKg !== null &&
      dayOf(one.date) >= from,
  );
  const wanted = isTested
    ? 'A weighed bag of clippings would tell most beyond that.'
    : `Most would tell a laboratory’s test of its nitrate (“Soil test…”${Heading === 'h2' ? '' : ' on the bed’s page'}), and a weighed bag of clippings.`;
  return (
    <section className="section" aria-labelledby={headingId}>
      <Heading id={headingId} className="section-head">
        {Heading === 'h2' ? 'Its soil' : `Soil of ${bed.name}`}
      </Heading>
      <div className="fields">
        <PickOne
          label="How it feels"
          hint="Sand is gritty, silt is silky, clay can be rolled; loam has something of each."
          value={bed.texture}
          groups={[
            { label: null, options: textures.map((each) => ({ value: each, label: each })) },
          ]}
          onPick={(texture) => editBed(bed.id, { texture: texture as Bed['texture'] })}
        />
        <MatterField
          value={bed.organicMatterPercent}
          onCommit={(organicMatterPercent) => editBed(bed.id, { organicMatterPercent })}
        />
        {bed.organicMatterPercent === null && (
          <ChoiceRow
            legend="Years of mulching or composting behind it"
            choices={[
              { value: 'none', label: 'none' },
              { value: 'a few', label: 'a few' },
              { value: 'many', label: 'many' },
            ]}
            value={bed.mulchYears ?? 'none'}
            onChoose={(mulchYears) => editBed(bed.id, { mulchYears })}
          />
        )}
        <ChoiceRow
          legend="Watering"
          choices={[
            { value: 'as logged', label: 'what I write down' },
            { value: 'kept moist', label: 'kept moist all season' },
          ]}
          value={bed.watering}
          onChoose={(watering) => editBed(bed.id, { watering })}
        />
      </div>
      <p className="only-printed">
        {bed.texture}
        {bed.organicMatterPercent !== null &&
          `, ${twoFigures(bed.organicMatterPercent)} % organic matter by test`}
        {bed.organicMatterPercent === null &&
          `, compost or mulch for ${bed.mulchYears === 'none' ? 'no' : (bed.mulchYears ?? 'no')} years`}
        , {bed.watering === 'kept moist' ? 'kept moist all season' : 'watered as written down'}.
      </p>
      {soil && (
        <Figured
          className="small soft"
          says={`The sums use ${matter} organic matter and a weight of ${weight}. ${wanted}`}
          figures={soilFigures(events ?? [], bed, soil, matter, weight)}
        />
      )}
    </section>
  );
}
