import type { MowingsStore } from '../../store/contract';
import { cutOff } from './cutOff';

/** Prints, or asks first where something would be cut off. */
export function printOrAsk(store: MowingsStore): void {
  const cut = cutOff();
  if (cut.length === 0) window.print();
  else store.getState().showDialog({ kind: 'print', cut });
}
