import { useState, type FormEvent } from 'react';
import { Dialog } from '../../../controls/Dialog';
import { DialogEnd } from '../../../controls/DialogEnd';
import type { Trouble } from '../../../controls/Field';
import { QuantityField } from '../../../controls/QuantityField';
import { textFromDay } from '../../../core/days';
import type { PlanAnswer, PlanLayer, SourceAccount } from '../../../core/plan/answer';
import type { Bed } from '../../../document/schema';
import { exactWords } from '../../../words/planSays';
import { planAmountWords, planSourceWords } from '../../../words/planWords';
import { useShown } from '../../shown';
import { useGarden, useMowings } from '../../store';
import { useReadingContext, useToday } from '../../useReadingContext';
import { newRow, readRow } from '../layRows';
import { pinnable } from './pinnable';
import { planAmount } from './planDrafts';
import { usePlanNames } from './usePlanNames';

/** "mowing:ID" or "stock:ID", as a row of a laying names it. */
const rowName = ({ ref }: SourceAccount): string =>
  ref.source === 'mowing'
    ? `mowing:${ref.mowingId}`
    : ref.source === 'stock'
      ? `stock:${ref.stockId}`
      : '';

type Typed =
  | { readonly kind: 'empty' }
  | { readonly kind: 'litres'; readonly litres: number }
  | { readonly kind: 'trouble'; readonly trouble: Trouble };

const isNone = (text: string): boolean => /^(0+([.,]0+)?(\s.*)?|none|nothing)$/i.test(text.trim());

/** What the plan lays on a bed today. */
const planned = ({ lines }: PlanAnswer, bedId: string): readonly PlanLayer[] =>
  lines.find((line) => line.bedId === bedId)?.layers ?? [];

/** Amounts the plan keeps to on one bed, a line for everything there is; empty lines are the plan's. */
export function ExactDialog(props: {
  readonly bed: Bed;
  readonly answer: PlanAnswer;
  readonly onClose: () => void;
  readonly onKept: (words: string) => void;
}) {
  const { bed, answer, onClose } = props;
  const garden = useGarden();
  const context = useReadingContext();
  const today = useToday();
  const { estimate, units } = useShown();
  const names = usePlanNames();
  const pins = useMowings((state) => state.planWishes.pins);
  const pinPlan = useMowings((state) => state.pinPlan);
  const sources = pinnable(answer);
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>(() =>
    Object.fromEntries([
      // the plan's own amounts to begin with, so that one is changed and not all typed anew
      ...planned(answer, bed.id).map((layer) => [layer.sourceId, planAmount(garden, layer).text]),
      ...pins.flatMap(({ bedId, sourceId, litres }) =>
        bedId === bed.id && sourceId !== null
          ? [[sourceId, litres === 0 ? '0' : estimate(litres, units.volume)]]
          : [],
      ),
    ]),
  );
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);

  const read = (source: SourceAccount): Typed => {
    const text = texts[source.sourceId] ?? '';
    if (text.trim() === '') return { kind: 'empty' };
    if (isNone(text)) return { kind: 'litres', litres: 0 };
    const row = { ...newRow(rowName(source), bed.id), amount: text };
    const { main, troubles } = readRow(garden, context, row, textFromDay(today));
    if (!main)
      return { kind: 'trouble', trouble: troubles.amount ?? { sentence: exactWords.none } };
    const litres = main.millimetres * bed.areaM2;
    const { was } = source;
    // what is told of all there is may be rounded up by a hair
    if (litres > was.litres * 1.02)
      return {
        kind: 'trouble',
        trouble: { sentence: exactWords.tooMuch(planAmountWords(was, names)) },
      };
    return { kind: 'litres', litres: Math.min(litres, was.litres) };
  };
  const typed = sources.map((source) => ({ source, read: read(source) }));

  const submit = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    const isWrong = typed.some((one) => one.read.kind === 'trouble');
    const hadPins = pins.some(({ bedId, sourceId }) => bedId === bed.id && sourceId !== null);
    const isEmpty = typed.every((one) => one.read.kind === 'empty');
    if (isWrong) return setRefused(null);
    if (isEmpty && !hadPins) return setRefused(exactWords.none);
    for (const one of typed)
      pinPlan(bed.id, one.source.sourceId, one.read.kind === 'litres' ? one.read.litres : null);
    props.onKept(isEmpty ? exactWords.free(bed.name) : exactWords.kept(bed.name));
  };

  return (
    <Dialog title={exactWords.title(bed.name)} onClose={onClose}>
      <form className="form" noValidate onSubmit={submit}>
        <p className="small soft">{exactWords.about}</p>
        <p className="small soft">{exactWords.unsaved}</p>
        {typed.map(({ source, read: reading }) => {
          const words = planSourceWords(source.ref, names);
          const text = texts[source.sourceId] ?? '';
          return (
            <QuantityField
              key={source.sourceId}
              label={`${words.charAt(0).toUpperCase()}${words.slice(1)}`}
              hint={exactWords.hint(planAmountWords(source.was, names))}
              text={text}
              onText={(next) => {
                setRefused(null);
                setTexts((now) => ({ ...now, [source.sourceId]: next }));
              }}
              onEnd={() => setAsked(true)}
              trouble={asked && reading.kind === 'trouble' ? reading.trouble : null}
              echo={
                reading.kind === 'litres' && reading.litres > 0
                  ? exactWords.thick(
                      estimate(reading.litres / bed.areaM2, units.depth),
                      estimate(reading.litres, units.volume),
                    )
                  : null
              }
            />
          );
        })}
        <DialogEnd refused={refused} keep={exactWords.keep} onCancel={onClose} />
      </form>
    </Dialog>
  );
}
