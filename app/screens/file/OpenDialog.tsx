import { Dialog } from '../../controls/Dialog';
import { useMowings } from '../store';
import { PickFile } from './PickFile';
import { RecentGardens } from './RecentGardens';

/** Choosing a garden in a browser window: those used lately, or any file of this computer. */
export function OpenDialog() {
  const folder = useMowings((state) => state.about?.folder);
  const recent = useMowings((state) => state.recent);
  const showDialog = useMowings((state) => state.showDialog);
  return (
    <Dialog title="Open a garden" onClose={() => showDialog(null)}>
      {recent.length > 0 && (
        <section className="form">
          <h3>Used lately{folder ? `, in ${folder}` : ''}</h3>
          <RecentGardens onPick={() => showDialog(null)} />
        </section>
      )}
      <PickFile onPick={() => showDialog(null)} />
      <div className="button-row">
        <button type="button" className="button" onClick={() => showDialog(null)}>
          Cancel
        </button>
      </div>
    </Dialog>
  );
}
