import { type KeyboardEvent, type ReactNode, useId, useRef, useState } from 'react';
import { cutAtFigures, whyName, whyWords, type FigureInText, type Why } from '../words/why';

/** Which figure of a group is open, by its place or its name, and what its buttons need. */
export interface OpenFigure<Key extends number | string = number> {
  readonly panelId: string;
  readonly open: Key | null;
  readonly toggle: (figure: Key) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly button: (figure: Key) => (element: HTMLButtonElement | null) => void;
}

/** One figure of a group open at a time; Escape closes it and goes back to its button. */
export function useOpenFigure<Key extends number | string = number>(): OpenFigure<Key> {
  const panelId = useId();
  const [open, setOpen] = useState<Key | null>(null);
  const buttons = useRef(new Map<Key, HTMLButtonElement>());
  return {
    panelId,
    open,
    toggle: (figure) => setOpen((now) => (now === figure ? null : figure)),
    onKeyDown(event) {
      if (event.key !== 'Escape' || open === null) return;
      event.stopPropagation();
      event.preventDefault();
      setOpen(null);
      buttons.current.get(open)?.focus();
    },
    button: (figure) => (element) => {
      if (element) buttons.current.set(figure, element);
      else buttons.current.delete(figure);
    },
  };
}

/** A figure that opens what stands behind it. */
export function FigureButton<Key extends number | string>(props: {
  readonly text: string;
  readonly figure: Key;
  readonly group: OpenFigure<Key>;
  /** more than the figure itself, where many alike stand on one page: "nitrogen of Gate bed" */
  readonly of?: string;
  /** the figure is drawn already: the button lies over it */
  readonly isOver?: boolean;
}) {
  const { text, figure, group, of, isOver = false } = props;
  const isOpen = group.open === figure;
  return (
    <button
      type="button"
      ref={group.button(figure)}
      className={isOver ? 'figure-why figure-over' : 'figure-why'}
      aria-label={whyName(of === undefined ? text : `${text}, ${of}`)}
      aria-expanded={isOpen}
      aria-controls={isOpen ? group.panelId : undefined}
      onClick={() => group.toggle(figure)}
    >
      {!isOver && text}
    </button>
  );
}

/** What stands behind a figure: how it is made, what went in, its range, and where its numbers come from. */
export function WhyPanel({ why, id }: { readonly why: Why; readonly id: string }) {
  return (
    <div id={id} className="why-panel" role="group" aria-label={why.of}>
      <p>
        <strong>{why.of}</strong> {why.formula}
      </p>
      {why.inputs.length > 0 && (
        <table className="why-inputs">
          <caption className="only-heard">{whyWords.goesIn}</caption>
          <tbody>
            {why.inputs.map(([words, value]) => (
              <tr key={words}>
                <th scope="row">{words}</th>
                <td className="number">{value}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {why.range !== null && (
        <p>
          {whyWords.range}: {why.range}.
        </p>
      )}
      <div className="why-sources soft">
        <p>{whyWords.from}</p>
        <ul>
          {why.sources.map((source) => (
            <li key={source}>{source}</li>
          ))}
        </ul>
      </div>
    </div>
  );
}

/** Marks that stand close before and after a figure: a line never breaks between them and it. */
const marksBefore = (words: string): string => /[(“]+$/.exec(words)?.[0] ?? '';
const marksAfter = (words: string): string => /^[).,;:”]+/.exec(words)?.[0] ?? '';

/**
 * A sentence whose figures open what stands behind them, beneath it. `says` is cut where a
 * figure's text stands in it; a figure that is not there stays unsaid.
 */
export function Figured(props: {
  readonly says: string;
  readonly figures: readonly FigureInText[];
  readonly className?: string;
  /** said before the sentence, in the same line */
  readonly before?: ReactNode;
  /** more than the figure itself for who hears it, where many alike stand on one page */
  readonly of?: string;
}) {
  const { says, figures } = props;
  const group = useOpenFigure();
  const shown = group.open === null ? undefined : figures[group.open];
  const stretches = cutAtFigures(
    says,
    figures.map(({ text }) => text),
  );
  return (
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- only hears Escape from the buttons and what they open
    <div className="figured" onKeyDown={group.onKeyDown}>
      <p className={props.className}>
        {props.before}
        {stretches.map((stretch, at) => {
          const [before, after] = [stretches[at - 1], stretches[at + 1]];
          if (typeof stretch === 'string')
            return stretch.slice(
              before === undefined ? 0 : marksAfter(stretch).length,
              after === undefined ? undefined : stretch.length - marksBefore(stretch).length,
            );
          return (
            <span key={at} className="figure-held">
              {typeof before === 'string' && marksBefore(before)}
              <FigureButton
                text={stretch.text}
                figure={stretch.figure}
                group={group}
                {...(props.of === undefined ? {} : { of: props.of })}
              />
              {typeof after === 'string' && marksAfter(after)}
            </span>
          );
        })}
      </p>
      {shown && <WhyPanel why={shown.why} id={group.panelId} />}
    </div>
  );
}
