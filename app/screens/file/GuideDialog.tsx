import { CoverMark, StateMark, WeightMark } from '../../controls/marks/Mark';
import { Dialog } from '../../controls/Dialog';
import { coverStates, nitrogenStates } from '../../core/season/verdict';
import { safetyLines } from '../../words/safetyLines';
import { coverStateMeaning, nitrogenStateMeaning, weightMeaning } from '../../words/states';
import { CoverRows } from '../CoverRows';
import { useMowings } from '../store';
import { WeightWord } from '../StateWords';

const weights = ['note', 'caution', 'stop'] as const;

/** On a Mac the same with Command in place of Ctrl. */
const keys: readonly (readonly [keys: string, does: string])[] = [
  ['Ctrl Z', 'takes back the last thing done to the garden; in a line being typed, the typing'],
  ['Ctrl Y', 'does it again'],
  ['Ctrl S', 'saves; with Shift, under another name'],
  ['Ctrl O, Ctrl N, Ctrl P', 'opens another garden, starts a new one, prints'],
  ['Up, Down', 'in a day: a day later, a day earlier'],
  ['Left, Right', 'on the days of a drawing: a day back or on; Page Up and Page Down a week'],
  ['Home, End', 'on those days: the first and the last'],
  ['Arrows', 'among the beds of Season: up and down from bed to bed, left and right along one'],
  ['Home, End', 'there: the ends of a bed; with Ctrl the first and the last bed'],
  [
    'Shift Left, Shift Right',
    'there, on a planting: moves it by a day; Page Up and Page Down a week',
  ],
];

/** The marks and words of the program on one page. */
export function GuideDialog() {
  const showDialog = useMowings((state) => state.showDialog);
  return (
    <Dialog title="How to read this" wide onClose={() => showDialog(null)}>
      <section className="form">
        <h3>Nitrogen in a bed</h3>
        <dl className="legend">
          {nitrogenStates.map((state) => (
            <div key={state}>
              <dt>
                <StateMark state={state} /> {state}
              </dt>
              <dd>{nitrogenStateMeaning(state)}</dd>
            </div>
          ))}
        </dl>
      </section>
      <section className="form">
        <h3>Cover on a bed</h3>
        <dl className="legend">
          {coverStates.map((state) => (
            <div key={state}>
              <dt>
                <CoverMark state={state} /> {state}
              </dt>
              <dd>{coverStateMeaning(state)}</dd>
            </div>
          ))}
        </dl>
        <p className="small soft">
          What a depth of cover does against weeds and drying, as others found it or as we judge it.
          The sums of a bed use these numbers nowhere: they go by weight and by ground hidden.
        </p>
        <CoverRows />
      </section>
      <section className="form">
        <h3>Words of warning</h3>
        <dl className="legend">
          {weights.map((weight) => (
            <div key={weight}>
              <dt>
                <WeightMark weight={weight} /> {weight}
              </dt>
              <dd>{weightMeaning(weight)}</dd>
            </div>
          ))}
        </dl>
      </section>
      <section className="form">
        <h3>Keys</h3>
        <dl className="legend">
          {keys.map(([pressed, does]) => (
            <div key={does}>
              <dt>{pressed}</dt>
              <dd>{does}</dd>
            </div>
          ))}
        </dl>
      </section>
      <section className="form">
        <h3>Safety</h3>
        <ul className="plain-list cautions">
          {safetyLines.map((line) => (
            <li key={line.says}>
              <WeightWord weight={line.weight} /> {line.says}
            </li>
          ))}
        </ul>
      </section>
      <p className="small soft">
        Dashed lines and pale stretches are imagined: the days ahead have not happened yet. Type
        amounts as you would say them to a neighbour, in either kind of units.
      </p>
    </Dialog>
  );
}
