import { Dialog } from '../../../controls/Dialog';
import type { Application, Bed } from '../../../document/schema';
import { useGarden } from '../../store';
import { LayForm } from '../../week/LayForm';
import type { LayRow } from '../../week/layRows';

/** The laying form filled in with an alternative: its cautions and its stops are met there. */
export function LayAlternative(props: {
  readonly bed: Bed;
  readonly row: LayRow;
  readonly condition: Application['condition'] | null;
  readonly onClose: () => void;
  readonly onLaid: () => void;
}) {
  const { bed, row, condition } = props;
  const garden = useGarden();
  const mowing = garden.mowings.find(({ id }) => row.what === `mowing:${id}`);
  return (
    <Dialog title={`Lay it on ${bed.name}`} wide onClose={props.onClose}>
      <LayForm
        what={mowing ? row.what : null}
        bedId={bed.id}
        earliest={mowing?.date}
        filled={[{ ...row, condition }]}
        onLaid={props.onLaid}
        onCancel={props.onClose}
      />
    </Dialog>
  );
}
