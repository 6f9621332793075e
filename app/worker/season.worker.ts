import { answer, reasonOf } from './answer';
import type { Asked, Replied } from './protocol';

self.addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  const { id, question } = data;
  let reply: Replied;
  try {
    reply = { id, ok: true, answer: answer(question) };
  } catch (error) {
    reply = { id, ok: false, reason: reasonOf(error) };
  }
  self.postMessage(reply);
});
