import { Disclosure } from '../../controls/Disclosure';
import type { WeatherPreview } from '../../document/weather/weatherTypes';
import { gapSentence, refusedSentence } from '../../words/weatherMessages';
import { useShown } from '../shown';

/** Lines that the preview itself writes out. */
export const leftOutInPreview = 10;

/** Refused lines and gaps beyond what the preview writes out, as far as they were kept one by one. */
export function LeftOut({ preview }: { readonly preview: WeatherPreview }) {
  const { dayField } = useShown();
  const { refused, gaps } = preview;
  const parts = [
    {
      what: 'The other refused lines',
      total: refused.total,
      lines: refused.first.slice(leftOutInPreview).map((one) => refusedSentence(one, dayField)),
    },
    {
      what: 'The other gaps',
      total: gaps.total,
      lines: gaps.first.slice(leftOutInPreview).map((one) => gapSentence(one, dayField)),
    },
  ].filter(({ total }) => total > leftOutInPreview);
  return parts.map(({ what, total, lines }) => (
    <Disclosure key={what} summary={what} quiet>
      <ul className="plain-list small">
        {lines.map((line, index) => (
          <li key={`${String(index)} ${line}`}>{line}</li>
        ))}
      </ul>
      {total - leftOutInPreview > lines.length && (
        <p className="small soft">
          And {(total - leftOutInPreview - lines.length).toLocaleString('en')} more.
        </p>
      )}
    </Disclosure>
  ));
}
