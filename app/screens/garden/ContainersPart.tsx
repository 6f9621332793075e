import { useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { MeasureField } from '../../controls/MeasureField';
import { TextField } from '../../controls/TextField';
import { materialById } from '../../document/materialValues';
import type { Container, Garden } from '../../document/schema';
import { editFailureSentence } from '../../words/messages';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { nameFor } from '../nameFor';
import { Thing } from './Thing';
import { WeighDialog } from './WeighDialog';

/** What clippings are caught and carried in; weighing one makes every sum better. */
export function ContainersPart() {
  const garden = useGarden();
  const shown = useShown();
  const addContainer = useMowings((state) => state.addContainer);
  const deleteContainer = useMowings((state) => state.deleteContainer);
  const announce = useAnnounce();
  const [added, setAdded] = useState<string | null>(null);
  const [weighing, setWeighing] = useState<Container | null>(null);
  return (
    <>
      {garden.containers.map((container) => (
        <Thing
          key={container.id}
          name={container.name}
          startsOpen={container.id === added}
          startsFocused={container.id === added}
          onDelete={() => deleteContainer(container.id)}
          summary={
            <>
              {shown.estimate(container.litres, shown.units.volume)}.{' '}
              {container.weighed
                ? `A full one${container.weighed.of === undefined ? '' : ` of ${stuffOf(garden, container.weighed.of)}`} weighed ${shown.estimate(container.weighed.kilograms, shown.units.mass)}, ${container.weighed.wetness}, on ${shown.dayWord(container.weighed.date)}.`
                : 'Not weighed yet.'}
            </>
          }
        >
          <ContainerFields container={container} />
          <div>
            <button type="button" className="button" onClick={() => setWeighing(container)}>
              Weigh one {container.name}…
            </button>
          </div>
        </Thing>
      ))}
      <div>
        <button
          type="button"
          className="button"
          onClick={() => {
            const name = nameFor(
              garden.containers.map((each) => each.name),
              'bucket',
            );
            const result = addContainer({
              name,
              plural: name === 'bucket' ? 'buckets' : `${name}s`,
              litres: 10,
              weighed: null,
            });
            if (result.ok) setAdded(result.value);
            announce(result.ok ? `Added: ${name}.` : editFailureSentence(result.error));
          }}
        >
          Add a bag or bucket
        </button>
      </div>
      {weighing && <WeighDialog container={weighing} onClose={() => setWeighing(null)} />}
    </>
  );
}

const stuffOf = (garden: Garden, materialId: string): string =>
  materialById(garden, materialId).name.toLowerCase();

function ContainerFields({ container }: { readonly container: Container }) {
  const shown = useShown();
  const editContainer = useMowings((state) => state.editContainer);
  return (
    <div className="fields">
      <TextField
        label="One of them is a"
        value={container.name}
        onCommit={(name) => editContainer(container.id, { name })}
      />
      <TextField
        label="Two of them are two"
        value={container.plural}
        onCommit={(plural) => editContainer(container.id, { plural })}
      />
      <MeasureField
        label={`A full one holds (${shown.units.volume.symbol})`}
        measure="volume"
        units={shown.system}
        value={container.litres}
        onCommit={(litres) => editContainer(container.id, litres === null ? {} : { litres })}
      />
    </div>
  );
}
