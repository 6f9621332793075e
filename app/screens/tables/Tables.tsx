import { ChoiceRow } from '../../controls/ChoiceRow';
import { useDesk } from '../desk';
import { CropTable } from './CropTable';
import { MaterialTable } from './MaterialTable';
import { Mixing } from './Mixing';
import { RateTable } from './RateTable';

type Leaf = 'materials' | 'crops' | 'rates' | 'mixing';

/** The numbers everything rests on, each with its range and where it is from; and the mixing sum. */
export function Tables() {
  const [leaf, setLeaf] = useDesk<Leaf>('tables leaf', () => 'materials');
  return (
    <div className="page">
      <div className="page-head">
        <div>
          <h1 tabIndex={-1}>Tables</h1>
          <p className="soft">
            Every number the sums rest on, with its range. Put your own in place of any material or
            crop.
          </p>
        </div>
      </div>
      <ChoiceRow
        legend="Show"
        choices={[
          { value: 'materials', label: 'Materials' },
          { value: 'crops', label: 'Crops' },
          { value: 'rates', label: 'The sums' },
          { value: 'mixing', label: 'A mixture' },
        ]}
        value={leaf}
        onChoose={setLeaf}
      />
      {leaf === 'materials' && <MaterialTable />}
      {leaf === 'crops' && <CropTable />}
      {leaf === 'rates' && <RateTable />}
      {leaf === 'mixing' && <Mixing />}
    </div>
  );
}
