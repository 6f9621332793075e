import { Dialog } from '../../controls/Dialog';
import { listed } from '../../words/chartFormat';
import { useMowings } from '../store';
import { printDrawn } from './beforePrint';
import type { CutOff } from './cutOff';
import { papers } from './papers';

/** Said before printing: what would not be whole on paper. */
export function PrintDialog({ cut }: { readonly cut: readonly CutOff[] }) {
  const showDialog = useMowings((state) => state.showDialog);
  const close = () => showDialog(null);
  return (
    <Dialog title="Not all of it fits on the paper" onClose={close}>
      <div className="form">
        <p>These parts would be made smaller, or cut off at the edge:</p>
        <ul>
          {cut.map(({ what, papers: on }) => (
            <li key={what}>
              {what}
              {on.length < papers.length && <span className="soft">, on {listed(on)}</span>}
            </li>
          ))}
        </ul>
        <p className="small soft">
          Turning the sheet to its long side, or a smaller scale in the next window, may make room.
        </p>
        <div className="button-row">
          <button
            type="button"
            className="button-main"
            onClick={() => {
              close();
              // once the question is off the page
              requestAnimationFrame(() => void printDrawn());
            }}
          >
            Print all the same
          </button>
          <button type="button" className="button" onClick={close}>
            Cancel
          </button>
        </div>
      </div>
    </Dialog>
  );
}
