import { useEffect, useRef } from 'react';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { Disclosure } from '../../controls/Disclosure';
import { PickOne } from '../../controls/PickOne';
import { textFromDay } from '../../core/days';
import type { Lawn } from '../../document/schema';
import { dayFailureSentence } from '../../words/messages';
import { lawnKindChoices, wetnessChoices } from '../choices';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { useToday } from '../useReadingContext';
import { LawnReady } from './LawnReady';
import type { MowingEntry, ReadEntry } from './mowingEntry';

/** Which lawn, how wet, when and what sort of grass: all of it is taken as usual unless changed. */
export function MowingDetails(props: {
  readonly entry: MowingEntry;
  readonly read: ReadEntry;
  readonly lawn: Lawn;
  readonly change: (changes: Partial<MowingEntry>) => void;
  /** it was asked for by a press that is no longer there */
  readonly focusOnShow: boolean;
}) {
  const { entry, read, lawn, change, focusOnShow } = props;
  const holder = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (focusOnShow) holder.current?.querySelector<HTMLElement>('input:checked, input')?.focus();
  }, [focusOnShow]);
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  return (
    <div className="log-details" ref={holder}>
      <div className="fields">
        {garden.lawns.length > 1 &&
          (garden.lawns.length <= 4 ? (
            <ChoiceRow
              legend="From which lawn?"
              choices={garden.lawns.map((each) => ({ value: each.id, label: each.name }))}
              value={read.lawnId}
              onChoose={(lawnId) => change({ lawnId })}
            />
          ) : (
            <PickOne
              label="From which lawn?"
              value={read.lawnId}
              groups={[
                {
                  label: null,
                  options: garden.lawns.map((each) => ({ value: each.id, label: each.name })),
                },
              ]}
              onPick={(lawnId) => change({ lawnId })}
            />
          ))}
        <ChoiceRow
          legend="How wet was it?"
          choices={wetnessChoices}
          value={read.wetness}
          onChoose={(wetness) => change({ wetness })}
        />
        <DateField
          label="When?"
          day={read.date}
          today={textFromDay(today)}
          latest={textFromDay(today)}
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(date) => change({ date })}
        />
      </div>
      <Disclosure summary="What sort of grass was it this time?" quiet>
        <ChoiceRow
          legend={`Usually ${lawn.kind} (as set for ${lawn.name})`}
          choices={lawnKindChoices}
          value={entry.kind ?? lawn.kind}
          onChoose={(kind) => change({ kind: kind === lawn.kind ? null : kind })}
        />
      </Disclosure>
      <LawnReady />
    </div>
  );
}
