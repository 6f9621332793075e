import { desk } from './desk';
import type { Asked } from './protocol';
import { lookUpByClock } from './slices';

const take = desk((reply) => self.postMessage(reply), lookUpByClock);

self.addEventListener('message', ({ data }: MessageEvent<Asked>) => take(data));
