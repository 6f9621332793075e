import { Tick } from '../../controls/Tick';
import type { SourceHazard } from '../../document/schema';
import { sourceHazardWords } from '../../words/sourceHazards';

/** What may be wrong with where grass grew or with what is kept; each tick brings its caution. */
export function SourceTicks(props: {
  readonly asked: readonly SourceHazard[];
  readonly ticked: readonly SourceHazard[];
  readonly onChange: (ticked: SourceHazard[]) => void;
}) {
  const { asked, ticked, onChange } = props;
  return (
    <>
      {asked.map((hazard) => (
        <Tick
          key={hazard}
          label={sourceHazardWords[hazard]}
          checked={ticked.includes(hazard)}
          onChange={(isTrue) =>
            onChange(isTrue ? [...ticked, hazard] : ticked.filter((one) => one !== hazard))
          }
        />
      ))}
    </>
  );
}
