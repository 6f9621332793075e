import { numberText } from '../../../amounts/amountText';
import { textFromDay } from '../../../core/days';
import type { PlanLayer, PlanLine } from '../../../core/plan/answer';
import type { Amount, Garden } from '../../../document/schema';
import type { LayingDraft, LayingPart } from '../../../store/contract';

/** A layer's amount as a person would have typed it: in the garden's bucket, or in litres. */
export function planAmount(garden: Garden, { amount }: PlanLayer): Amount {
  const { counted, litres } = amount;
  const container = counted
    ? garden.containers.find(({ id }) => id === counted.containerId)
    : undefined;
  return counted && container
    ? {
        text: `${numberText(counted.count, true)} ${counted.count <= 1 ? container.name : container.plural}`,
        quantity: { kind: 'containers', count: counted.count, containerId: container.id },
        certainty: 'plain',
      }
    : {
        text: `${numberText(litres, false)} L`,
        quantity: { kind: 'volume', litres },
        certainty: 'plain',
      };
}

function partOf(garden: Garden, layer: PlanLayer): LayingPart | null {
  const { ref, condition } = layer;
  // what is not mown yet cannot be laid
  if (ref.source === 'coming') return null;
  const from =
    ref.source === 'mowing'
      ? ({ source: 'mowing', mowingId: ref.mowingId } as const)
      : ({ source: 'stock', stockId: ref.stockId } as const);
  // a bag that was weighed holds as much dry stuff as its wetness leaves it
  const mowing =
    from.source === 'mowing' ? garden.mowings.find(({ id }) => id === from.mowingId) : null;
  const wetness = mowing?.wetness ?? 'dry';
  return { from, amount: planAmount(garden, layer), condition, wetness };
}

/** What is written down when lines of a plan are done as they stand; one laying for each layer. */
export const planDrafts = (
  garden: Garden,
  lines: readonly Pick<PlanLine, 'bedId' | 'layers'>[],
): LayingDraft[] =>
  lines.flatMap(({ bedId, layers }) =>
    layers.flatMap((layer): LayingDraft[] => {
      const part = partOf(garden, layer);
      return part === null
        ? []
        : [
            {
              bedId,
              date: textFromDay(layer.day),
              placement: layer.placement,
              parts: [part],
              passedStops: [],
            },
          ];
    }),
  );
