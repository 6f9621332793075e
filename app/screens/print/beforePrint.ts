import { backOnScreen, drawForPaper } from '../../charts/paperWidth';
import type { MowingsStore } from '../../store/contract';
import { cutOff } from './cutOff';

/** Prints with every drawing as wide as the paper. */
export async function printDrawn(): Promise<void> {
  await drawForPaper();
  window.print();
  backOnScreen();
}

/** Prints, or asks first where something would be cut off. */
export async function printOrAsk(store: MowingsStore): Promise<void> {
  await drawForPaper();
  const cut = cutOff();
  if (cut.length === 0) return printDrawn();
  backOnScreen();
  store.getState().showDialog({ kind: 'print', cut });
}
