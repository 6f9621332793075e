import { makePlan } from '../core/plan/makePlan';
import { failure } from '../core/result';
import { highsSolver } from '../solve/highsSolver';
import { runtimeAddress } from '../solve/runtimeAddress';
import { reasonOf } from './answer';
import type { PlanAsked, PlanReplied } from './planProtocol';

const loading = highsSolver({ locate: () => runtimeAddress }).then(
  (solver) => solver,
  // Without the solver a plan is still made, by the simple rule, and says why.
  (error: unknown) => () => failure({ kind: 'solver failed', reason: reasonOf(error) } as const),
);

const tell = (reply: PlanReplied): void => self.postMessage(reply);

self.addEventListener('message', ({ data }: MessageEvent<PlanAsked>) => {
  if (data.kind === 'warm') return;
  const { id, question } = data;
  void loading.then((solve) => {
    try {
      const answer = makePlan(question, solve, (progress) =>
        tell({ kind: 'progress', id, progress }),
      );
      tell({ kind: 'answered', id, answer });
    } catch (error) {
      tell({ kind: 'broken', id, reason: reasonOf(error) });
    }
  });
});
