import { type KeyboardEvent, type ReactNode, useId, useRef, useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import type { TableData } from '../../charts/export/tableData';
import { csvOf } from '../../charts/export/csv';
import { fontFaces } from '../../charts/export/fontFaces';
import { NoPicture, pngOf } from '../../charts/export/pngFile';
import { svgFileOf } from '../../charts/export/svgFile';
import {
  nameAgain,
  notTakenSentence,
  takeAwayKinds,
  takeAwayWords,
  takenName,
  takenNameSentence,
  takenSentence,
  takenTitle,
  type TakeAwayKind,
} from '../../words/takeAwayWords';
import { useShown } from '../shown';
import { useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { inBase64 } from './inBase64';

interface Waiting {
  readonly kind: TakeAwayKind;
  readonly base64: string;
  readonly name: string;
}

/** more of one name than this is a mistake */
const mostAgain = 99;

/**
 * A chart with a small menu that takes it out of the window: its drawing, a picture of it, or its
 * numbers. A file that is there already is never written over unasked.
 */
export function TakeAway(props: {
  /** "Season of Gate bed", the file's name and the drawing's title */
  readonly name: string;
  /** asked for when it is wanted */
  readonly table: () => TableData;
  /** its drawings go one below the other, each under its own name */
  readonly isStacked?: boolean;
  readonly children: ReactNode;
}) {
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const opener = useRef<HTMLButtonElement>(null);
  const exportFile = useMowings((state) => state.exportFile);
  const announce = useAnnounce();
  const shown = useShown();
  const today = useToday();
  const fileName = takenName(props.name, shown.iso(today));
  const [isOpen, setOpen] = useState(false);
  const [says, say] = useState<string | null>(null);
  const [taken, setTaken] = useState<Waiting | null>(null);

  const told = (sentence: string) => {
    say(sentence);
    announce(sentence);
  };
  const close = () => {
    setOpen(false);
    setTaken(null);
    opener.current?.focus();
  };
  /** The question about the name goes, and the focus with it would go nowhere, where Escape is not heard. */
  const answered = () => {
    if (taken) opener.current?.focus();
    setTaken(null);
  };
  const write = async (wanted: Waiting, replace: boolean): Promise<void> => {
    const { kind, base64, name } = wanted;
    const result = await exportFile({ name, ending: kind, base64, replace });
    if (result.ok) {
      told(takenSentence(result.value.name, result.value.folder));
      answered();
      return;
    }
    if (result.error.kind === 'cancelled') return say(null);
    if (result.error.kind === 'name-taken') {
      setTaken(wanted);
      return told(takenNameSentence(`${result.error.name}.${kind}`));
    }
    told(notTakenSentence(result.error));
  };
  const keepBoth = async ({ kind, base64 }: Waiting): Promise<void> => {
    for (let times = 2; times <= mostAgain; times += 1) {
      const name = nameAgain(fileName, times);
      const result = await exportFile({ name, ending: kind, base64, replace: false });
      if (result.ok) {
        answered();
        return told(takenSentence(result.value.name, result.value.folder));
      }
      if (result.error.kind !== 'name-taken') return told(notTakenSentence(result.error));
    }
  };
  const take = async (kind: TakeAwayKind): Promise<void> => {
    setTaken(null);
    say(takeAwayWords.working);
    try {
      const drawings = [
        ...(box.current?.querySelectorAll<SVGSVGElement>('svg.chart-drawing') ?? []),
      ];
      const file = async (): Promise<Blob> => {
        if (kind === 'csv' || drawings.length === 0)
          return new Blob([csvOf(props.table())], { type: 'text/csv' });
        const svg = svgFileOf(
          drawings,
          takenTitle(props.name, shown.day(today)),
          await fontFaces(drawings),
          props.isStacked ? 'below' : 'beside',
        );
        return kind === 'png' ? pngOf(svg) : new Blob([svg.text], { type: 'image/svg+xml' });
      };
      await write({ kind, base64: await inBase64(await file()), name: fileName }, false);
    } catch (error) {
      if (!(error instanceof NoPicture)) throw error;
      told(takeAwayWords.noPicture);
    }
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || !isOpen) return;
    event.stopPropagation();
    event.preventDefault();
    close();
  };
  return (
    <div ref={box} className="take-away">
      {props.children}
      {/* oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- only hears Escape from the buttons within */}
      <div className="take-away-menu not-printed" onKeyDown={onKeyDown}>
        <button
          type="button"
          ref={opener}
          className="button-small"
          aria-expanded={isOpen}
          aria-controls={isOpen ? id : undefined}
          aria-label={`${takeAwayWords.menu}: ${props.name}`}
          onClick={() => (isOpen ? close() : setOpen(true))}
        >
          {takeAwayWords.menu}
        </button>
        {isOpen && (
          <div id={id} className="take-away-choices" role="group" aria-label={takeAwayWords.menu}>
            {takeAwayKinds.map((kind) => (
              <button
                key={kind}
                type="button"
                className="button-small"
                onClick={() => void take(kind)}
              >
                {takeAwayWords[kind]}
              </button>
            ))}
            {says !== null && <p className="small">{says}</p>}
            {taken && (
              <>
                <button type="button" className="button-small" onClick={() => void keepBoth(taken)}>
                  {takeAwayWords.both}
                </button>
                <button
                  type="button"
                  className="button-small"
                  onClick={() => void write(taken, true)}
                >
                  {takeAwayWords.replace}
                </button>
              </>
            )}
          </div>
        )}
      </div>
    </div>
  );
}
