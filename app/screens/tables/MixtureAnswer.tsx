import { HeapLayers } from '../../charts/heap/HeapLayers';
import { heapTable } from '../../charts/heap/tableData';
import { Scroller } from '../../charts/Scroller';
import { Disclosure } from '../../controls/Disclosure';
import { Figured } from '../../controls/Figured';
import type { BlendWish } from '../../core/cover/blend';
import type { Mixture, MixturePart } from '../../document/mixture';
import { materialById } from '../../document/materialValues';
import { twoFigures } from '../../words/figures';
import { carriedWords, ratioWords, whoBringsWhat } from '../../words/mixWords';
import { rangeOdds } from '../../words/ranges';
import { lengthWords } from '../../words/sectionWords';
import { leftOutSentence, unmetSentence } from '../../words/tableWords';
import { stuffName, stuffOf } from '../beds/chartData';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { TakeAway } from '../takeAway/TakeAway';
import { foundWhy, mixtureWhy, waterWhy } from '../why/mixWhys';

/** 0.9144 m squared: the yard as it is defined. */
const squareMetresPerSquareYard = 0.9144 ** 2;

/** What to carry there, what comes of it, and what of the wish cannot be met. */
export function MixtureAnswer(props: {
  readonly mixture: Mixture;
  readonly parts: readonly MixturePart[];
  readonly wish: BlendWish;
  readonly names: readonly string[];
}) {
  const { blend, parts, ratioRange } = props.mixture;
  const garden = useGarden();
  const shown = useShown();
  const { units } = shown;
  const isUs = shown.system === 'us';
  const weight = (kilograms: number) => shown.estimate(kilograms, units.mass);
  const total = (of: (part: (typeof parts)[number]) => number) =>
    parts.reduce((sum, part) => sum + of(part), 0);
  const layers = parts.flatMap((part, index) => {
    const asked = props.parts[index];
    if (!asked || part.litres <= 0) return [];
    const millimetres = part.litres / (isUs ? squareMetresPerSquareYard : 1);
    return [
      {
        millimetres,
        name: stuffName(materialById(garden, asked.materialId)),
        thick: lengthWords(millimetres, shown.chart),
        stuff: stuffOf(materialById(garden, asked.materialId)),
      },
    ];
  });
  const facts = { garden, mixture: props.mixture, parts: props.parts, shown };
  const litresOf = (kilograms: number) => shown.estimate(kilograms, units.volume);
  const water = litresOf(blend.waterKilograms);
  const ratio = `${ratioWords(blend.ratio)}, likely ${twoFigures(ratioRange.low)} to ${twoFigures(ratioRange.high)}`;
  const moist = `${twoFigures(blend.moisture * 100)} % water`;
  const ground = `On a heap a ${isUs ? 'yard' : 'metre'} each way`;
  return (
    <div className="mix-answer">
      <ul className="plain-list mix-list">
        {parts.map((part, index) => {
          if (props.parts[index]?.amount !== null || part.freshKilograms === 0) return null;
          const carried = carriedWords(part.litres, garden.containers);
          const litres = shown.estimate(part.litres, units.volume);
          const besides = `${carried === null ? '' : `about ${litres}, `}${weight(part.freshKilograms)}`;
          return (
            // oxlint-disable-next-line react/no-array-index-key -- parts have no name of their own and keep their order
            <li key={index}>
              <Figured
                says={`${carried ?? litres} of ${props.names[index] ?? part.name} (${besides})`}
                figures={[carried ?? litres, besides].map((text) => ({
                  text,
                  why: foundWhy(facts, index),
                }))}
              />
            </li>
          );
        })}
        {props.wish.moisture !== null && blend.waterKilograms > 0 && (
          <li>
            <Figured
              says={`${water} of water, sprinkled in as it is stacked`}
              figures={[{ text: water, why: waterWhy(facts) }]}
            />
          </li>
        )}
      </ul>
      {layers.length > 0 && (
        <TakeAway name="Mixture in layers" table={() => heapTable(layers, shown.chart)}>
          <figure className="mix-layers">
            <figcaption className="small">
              {ground}, shaken out loose, the first below. Thickness is to scale.
            </figcaption>
            <HeapLayers title={ground} layers={layers} />
          </figure>
        </TakeAway>
      )}
      <Figured
        says={`It comes to ${ratio} (${rangeOdds}), and ${moist}. ${whoBringsWhat}`}
        figures={[ratio, moist].map((text) => ({ text, why: mixtureWhy(facts) }))}
      />
      {blend.unmet.map((unmet) => (
        <Figured
          key={unmet.kind}
          className="field-trouble"
          before={<span aria-hidden="true" className="field-trouble-mark" />}
          says={unmetSentence(unmet, props.names, litresOf)}
          figures={
            unmet.kind === 'too-wet'
              ? [{ text: litresOf(unmet.waterKilograms), why: waterWhy(facts) }]
              : []
          }
        />
      ))}
      {parts.map((part, index) => {
        const isMet = blend.unmet.length === 0;
        const isTold = blend.unmet.some((unmet) => 'part' in unmet && unmet.part === index);
        if (props.parts[index]?.amount !== null || part.freshKilograms > 0 || isTold) return null;
        return (
          // oxlint-disable-next-line react/no-array-index-key -- parts have no name of their own and keep their order
          <p key={index} className={isMet ? 'soft' : 'field-trouble'}>
            {!isMet && <span aria-hidden="true" className="field-trouble-mark" />}
            {leftOutSentence(props.names[index] ?? part.name, isMet)}
          </p>
        );
      })}
      <Disclosure summary="The sum" quiet>
        <p className="small">
          Carbon and nitrogen are added up first and divided last. The parts’ own ratios are never
          averaged: a wet part counts by what it holds, not by its weight.
        </p>
        <Scroller className="table-scroll" label="What each part brings">
          <table>
            <thead>
              <tr>
                <th scope="col">Part</th>
                <th scope="col" className="number">
                  Weight
                </th>
                <th scope="col" className="number">
                  Dry
                </th>
                <th scope="col" className="number">
                  Carbon
                </th>
                <th scope="col" className="number">
                  Nitrogen
                </th>
                <th scope="col" className="number">
                  Carbon to 1 of nitrogen
                </th>
              </tr>
            </thead>
            <tbody>
              {[
                ...parts,
                {
                  name: 'Together',
                  freshKilograms: total((part) => part.freshKilograms) + blend.waterKilograms,
                  dryKilograms: total((part) => part.dryKilograms),
                  carbonKilograms: total((part) => part.carbonKilograms),
                  nitrogenKilograms: total((part) => part.nitrogenKilograms),
                },
              ].map((part, index) => (
                // oxlint-disable-next-line react/no-array-index-key -- parts have no name of their own and keep their order
                <tr key={index}>
                  <th scope="row">{part.name}</th>
                  <td className="number">{weight(part.freshKilograms)}</td>
                  <td className="number">{weight(part.dryKilograms)}</td>
                  <td className="number">{weight(part.carbonKilograms)}</td>
                  <td className="number">
                    {shown.estimate(part.nitrogenKilograms * 1000, units.nitrogen)}
                  </td>
                  <td className="number">
                    {part.nitrogenKilograms > 0
                      ? twoFigures(part.carbonKilograms / part.nitrogenKilograms)
                      : '–'}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      </Disclosure>
    </div>
  );
}
