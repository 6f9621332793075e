import { textFromDay, type DayNumber } from '../core/days';
import type { Application } from './schema';

/** A layer of dry stuff that is only thought of: crisp, laid on as deep as is said. */
export const dryLayer = (
  id: string,
  bedId: string,
  day: DayNumber,
  from: Application['from'],
  millimetres: number,
): Application => ({
  id,
  date: textFromDay(day),
  bedId,
  from,
  amount: { text: '', quantity: { kind: 'depth', millimetres }, certainty: 'plain' },
  condition: 'crisp',
  wetness: 'dry',
  placement: 'laid',
  mixtureId: null,
  passedStops: [],
});
