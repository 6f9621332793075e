import { desk } from './desk';
import type { Asked } from './protocol';
import { lookUpByClock } from './slices';

const take = desk(
  (reply, handedOver = []) => self.postMessage(reply, { transfer: handedOver }),
  lookUpByClock,
);

self.addEventListener('message', ({ data }: MessageEvent<Asked>) => take(data));
