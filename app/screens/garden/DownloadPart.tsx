import { useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import type { Garden } from '../../document/schema';
import { editFailureSentence } from '../../words/messages';
import { downloadSteps, placeWords, weatherErrorSentence } from '../../words/downloadWords';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { DownloadDialog } from './DownloadDialog';

/** Weather by place: whether it is on, what came of it, and the ways to have no more of it. */
export function DownloadPart() {
  const garden = useGarden();
  const shown = useShown();
  const edit = useMowings((state) => state.edit);
  const forget = useMowings((state) => state.forgetWeather);
  const announce = useAnnounce();
  const [open, setOpen] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const { download } = garden.weather;
  const change = (label: string, says: string, recipe: (draft: Garden) => void): boolean => {
    const result = edit(label, recipe);
    setRefused(result.ok ? null : editFailureSentence(result.error));
    if (result.ok) announce(says);
    return result.ok;
  };
  const remove = async (): Promise<void> => {
    const isGone = change(
      downloadSteps.remove(),
      'The downloaded weather is out of the garden. Undo brings it back.',
      (draft) => {
        delete draft.weather.download;
      },
    );
    if (!isGone) return;
    const forgotten = await forget();
    if (!forgotten.ok) setRefused(weatherErrorSentence(forgotten.error));
  };
  const isOn = download !== undefined && download.agreedOn !== null;
  return (
    <div className="form download">
      <h4>Weather by place, from the net</h4>
      {garden.garden.isSample ? (
        <p>This garden is invented and lies nowhere: there is nothing to ask for.</p>
      ) : (
        <>
          <p>
            {isOn
              ? `On since ${shown.dayWord(download.agreedOn ?? download.askedOn)}: asked only when you press the button.`
              : 'Off: nothing is asked of anybody.'}{' '}
            {download &&
              `${download.days.length.toLocaleString('en')} downloaded days are kept, of ${placeWords(download.latitudeDegrees, download.longitudeDegrees)}; source: Open-Meteo.`}
          </p>
          <div className="button-row">
            <button type="button" className="button" onClick={() => setOpen(true)}>
              {isOn ? 'Ask for the latest days…' : 'See what it would send…'}
            </button>
            {isOn && (
              <button
                type="button"
                className="button"
                onClick={() =>
                  change(
                    downloadSteps.switchOff(),
                    'Switched off. The days that came stay until you remove them.',
                    (draft) => {
                      if (draft.weather.download) draft.weather.download.agreedOn = null;
                    },
                  )
                }
              >
                Switch it off
              </button>
            )}
            {download && (
              <button type="button" className="button" onClick={() => void remove()}>
                Remove the downloaded days
              </button>
            )}
          </div>
        </>
      )}
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
      {open && <DownloadDialog onClose={() => setOpen(false)} />}
    </div>
  );
}
