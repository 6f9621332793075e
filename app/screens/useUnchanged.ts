import { useState } from 'react';
import { sameQuestion } from '../store/sameQuestion';

/**
 * The value of before for as long as the new one says the very same, so that what is drawn from it is
 * not drawn again. Looks into plain objects and lists; what is one and the same is not looked into.
 */
export function useUnchanged<Value>(value: Value): Value {
  const [held, hold] = useState({ value });
  if (sameQuestion(held.value, value)) return held.value;
  hold({ value });
  return value;
}
