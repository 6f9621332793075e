import { dayOf } from '../../core/days';
import { failure, success } from '../../core/result';
import { limits } from '../../tables/thresholds';
import type { Engine } from '../../worker/protocol';
import type { GardenActions } from '../contract';
import type { ActionTools } from './changing';

/** What to make of something that somebody offers. Nothing is written down by it. */
export function offerActions(
  tools: ActionTools,
  engine: Engine,
): Pick<GardenActions, 'weighOffer'> {
  return {
    weighOffer: async (offer) => {
      // a check that was overtaken knows nothing; the person is still waiting for it
      for (;;) {
        if (!tools.read().garden) return failure({ kind: 'no-garden' });
        try {
          // asked for once in a while: the first page need not wait for it
          const { judgeOffer, offerQuestion } = await import('../../document/offers');
          const { garden } = tools.read();
          if (!garden) return failure({ kind: 'no-garden' });
          const today = dayOf(tools.today());
          const { beds } = offerQuestion(garden, offer, today);
          const settled = await engine.ask<'check'>({ kind: 'check', beds, limits });
          if (settled.state === 'superseded') continue;
          if (settled.state === 'failed')
            return failure({ kind: 'engine-failed', reason: settled.reason });
          return success(judgeOffer(garden, offer, settled.answer, today));
        } catch (error) {
          const reason = error instanceof Error ? error.message : String(error);
          return failure({ kind: 'engine-failed', reason });
        }
      }
    },
  };
}
