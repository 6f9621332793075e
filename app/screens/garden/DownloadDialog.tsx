import { useEffect, useId, useMemo, useRef, useState } from 'react';
import { readDegrees } from '../../amounts/readDegrees';
import { Dialog } from '../../controls/Dialog';
import { Disclosure } from '../../controls/Disclosure';
import { useAnnounce } from '../../controls/Announcer';
import { QuantityField } from '../../controls/QuantityField';
import { dayOf } from '../../core/days';
import {
  readDownload,
  type Download,
  type DownloadAsked,
} from '../../document/weather/readDownload';
import {
  daysToAsk,
  isOfOtherPlace,
  roundedDegrees,
  withDownload,
} from '../../document/weather/withDownload';
import { weatherServiceHost } from '../../store/weatherServiceHost';
import {
  degreesFailureSentence,
  downloadFailureSentence,
  downloadLines,
  downloadMergedSentence,
  downloadSteps,
  placeWords,
  weatherErrorSentence,
  weatherServiceName,
} from '../../words/downloadWords';
import { editFailureSentence } from '../../words/messages';
import { weatherMergeFailureSentence } from '../../words/weatherMessages';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { Consent } from './Consent';
import { FewDays } from './FewDays';

type Stage =
  | { readonly is: 'asked' }
  | { readonly is: 'asking' }
  | { readonly is: 'wrong'; readonly says: string }
  | {
      readonly is: 'here';
      readonly download: Download;
      readonly asked: DownloadAsked;
      readonly isKept: boolean;
    };

/** South of this and north of it no garden file lies; the sums of day length end there. */
const highestLatitude = 66;

/**
 * Weather of the garden's place from the weather service: what would be sent and to whom, then, at
 * the person's word, the question; what came is shown, and taken in one step or not at all.
 */
export function DownloadDialog({ onClose }: { readonly onClose: () => void }) {
  const garden = useGarden();
  const today = useToday();
  const computerToday = useMowings((state) => state.about?.today ?? '');
  const askWeather = useMowings((state) => state.askWeather);
  const callOff = useMowings((state) => state.callOffWeather);
  const edit = useMowings((state) => state.edit);
  const announce = useAnnounce();
  const kept = garden.weather.download;
  const [stage, setStage] = useState<Stage>({ is: 'asked' });
  const [latitude, setLatitude] = useState(String(garden.garden.latitudeDegrees));
  const [longitude, setLongitude] = useState(kept ? String(kept.longitudeDegrees) : '');
  const [wasAsked, setWasAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  /** counts up with every question and every calling off: an answer to an older one is nobody's */
  const turn = useRef(0);
  useEffect(
    () => () => {
      turn.current++;
      void callOff();
    },
    [callOff],
  );

  const north = useMemo(() => readLatitude(latitude), [latitude]);
  const east = useMemo(() => readDegrees(longitude, 'longitude'), [longitude]);
  const place =
    north.ok && east.ok
      ? {
          latitudeDegrees: roundedDegrees(north.value),
          longitudeDegrees: roundedDegrees(east.value),
        }
      : null;
  const days = place && daysToAsk(garden, place, today, dayOf(computerToday));
  const isAgreed =
    place !== null && kept !== undefined && kept.agreedOn !== null && !isOfOtherPlace(kept, place);
  const isAskedToday = isAgreed && kept.askedOn === computerToday;
  const where = place && placeWords(place.latitudeDegrees, place.longitudeDegrees);

  const ask = async (): Promise<void> => {
    setWasAsked(true);
    setRefused(null);
    if (!place || !days || isAskedToday) return;
    const asked: DownloadAsked = { ...place, ...days };
    setStage({ is: 'asking' });
    announce(askingWords, 'weather by place');
    const own = ++turn.current;
    const answer = await askWeather({
      latitudeTenths: Math.round(asked.latitudeDegrees * 10),
      longitudeTenths: Math.round(asked.longitudeDegrees * 10),
      firstDay: asked.firstDay,
      lastDay: asked.lastDay,
    });
    if (turn.current !== own) return;
    if (!answer.ok) return setStage({ is: 'wrong', says: weatherErrorSentence(answer.error) });
    const read = readDownload(answer.value.text, asked);
    setStage(
      read.ok
        ? { is: 'here', download: read.value, asked, isKept: answer.value.isKept }
        : { is: 'wrong', says: downloadFailureSentence(read.error) },
    );
  };

  const wouldBeId = useId();
  const takes = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    // what was asked with is gone: one goes on with the answer, and hears what it would do
    if (stage.is === 'here') takes.current?.focus();
  }, [stage.is]);

  const giveUp = (): void => {
    turn.current++;
    void callOff();
    setStage({ is: 'wrong', says: weatherErrorSentence({ kind: 'cancelled' }) });
  };

  const merged =
    stage.is === 'here'
      ? withDownload(garden, stage.download.days, stage.asked, computerToday)
      : null;
  const take = (): void => {
    if (!merged) return;
    if (!merged.ok) return setRefused(weatherMergeFailureSentence(merged.error));
    const { download, added } = merged.value;
    const exact = north.ok ? north.value : garden.garden.latitudeDegrees;
    const result = edit(downloadSteps.take(added), (draft) => {
      draft.weather.download = download;
      draft.garden.latitudeDegrees = exact;
    });
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    announce(`${downloadMergedSentence(merged.value, true)} Undo takes it back.`);
    onClose();
  };

  return (
    <Dialog title="Weather by place" wide onClose={onClose}>
      {stage.is === 'here' && merged ? (
        <>
          <div className="preview">
            {downloadLines(stage.download, stage.isKept).map((line, index) => (
              <p key={`${index} ${line}`} className={line.startsWith('  ') ? 'preview-inner' : ''}>
                {line.trim()}
              </p>
            ))}
          </div>
          <FewDays days={stage.download.days} />
          {merged.ok && <p id={wouldBeId}>{downloadMergedSentence(merged.value, false)}</p>}
          {north.ok && north.value !== garden.garden.latitudeDegrees && (
            <p>The garden’s latitude becomes {north.value}° with it.</p>
          )}
          {refused && <Trouble says={refused} />}
          <div className="button-row">
            <button
              ref={takes}
              type="button"
              className="button-main"
              aria-describedby={wouldBeId}
              onClick={take}
            >
              Take these days
            </button>
            <button type="button" className="button" onClick={onClose}>
              Leave them
            </button>
          </div>
        </>
      ) : (
        <form
          className="form"
          noValidate
          onSubmit={(submit) => {
            submit.preventDefault();
            void ask();
          }}
        >
          <div className="fields">
            <QuantityField
              label="Latitude (degrees)"
              hint="Of the garden, as maps show it; S below the equator."
              text={latitude}
              onText={setLatitude}
              trouble={
                wasAsked && !north.ok
                  ? { sentence: degreesFailureSentence(north.error, 'latitude') }
                  : null
              }
            />
            <QuantityField
              label="Longitude (degrees)"
              hint="East is plain, west with W: 13.4, or 1.3 W."
              text={longitude}
              onText={setLongitude}
              trouble={
                wasAsked && !east.ok
                  ? { sentence: degreesFailureSentence(east.error, 'longitude') }
                  : null
              }
            />
          </div>
          {isAgreed ? (
            <Disclosure summary="What is sent, and to whom" quiet>
              <Consent place={where} host={weatherServiceHost} />
            </Disclosure>
          ) : (
            <Consent place={where} host={weatherServiceHost} />
          )}
          {where !== null && (
            <p role="status">
              {days === null
                ? 'Every day up to yesterday is there already. Nothing needs asking.'
                : isAskedToday
                  ? 'The service was asked for this place today, and knew no more. It has new days tomorrow.'
                  : `Asked for would be the days from ${days.firstDay} to ${days.lastDay} of ${where}.`}
            </p>
          )}
          {stage.is === 'asking' && <p>{askingWords}</p>}
          {stage.is === 'wrong' && <Trouble says={stage.says} />}
          <div className="button-row">
            {stage.is === 'asking' ? (
              // without a key of its own it would become the button that asks while it is pressed
              <button key="off" type="button" className="button" onClick={giveUp}>
                Call it off
              </button>
            ) : (
              <>
                {!(place && (days === null || isAskedToday)) && (
                  <button key="ask" type="submit" className="button-main">
                    {stage.is === 'wrong'
                      ? 'Try again'
                      : isAgreed
                        ? 'Ask for these days'
                        : 'I agree: ask for these days'}
                  </button>
                )}
                <button type="button" className="button" onClick={onClose}>
                  {isAgreed ? 'Close' : 'No, send nothing'}
                </button>
              </>
            )}
          </div>
        </form>
      )}
    </Dialog>
  );
}

const askingWords = `Asking ${weatherServiceName}. It gives up after 20 seconds.`;

function readLatitude(text: string) {
  const read = readDegrees(text, 'latitude');
  return read.ok && Math.abs(read.value) > highestLatitude
    ? ({ ok: false, error: { kind: 'beyond', limit: highestLatitude } } as const)
    : read;
}

function Trouble({ says }: { readonly says: string }) {
  return (
    <p role="alert" className="field-trouble">
      <span aria-hidden="true" className="field-trouble-mark" />
      {says}
    </p>
  );
}
