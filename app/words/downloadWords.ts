import { assertNever } from '../core/result';
import type { DegreesFailure } from '../amounts/readDegrees';
import type { Download, DownloadFailure } from '../document/weather/readDownload';
import type { WeatherRank } from '../document/weatherFrom';
import type { WeatherError, WeatherTrouble } from '../host/contract';
import { gapSentence, refusedSentence } from './weatherMessages';

/** What the service calls itself. */
export const weatherServiceName = 'Open-Meteo';

const plural = (count: number, one: string, many: string): string =>
  `${count.toLocaleString('en')} ${count === 1 ? one : many}`;

/** "52.5° north, 0.3° west" */
export function placeWords(latitudeDegrees: number, longitudeDegrees: number): string {
  const of = (degrees: number, above: string, below: string): string =>
    `${Math.abs(degrees).toFixed(1)}° ${degrees < 0 ? below : above}`;
  return `${of(latitudeDegrees, 'north', 'south')}, ${of(longitudeDegrees, 'east', 'west')}`;
}

/** What one agrees to: each with its question, for reading before anything is sent. */
export function consentLines(
  place: string | null,
  host: string,
): readonly { readonly asks: string; readonly says: string }[] {
  return [
    {
      asks: 'What is sent?',
      says: `The place, rounded to a tenth of a degree${place === null ? '' : ` (${place})`}: it says where the garden lies to some 5 km and no nearer. The first and the last day wanted. Three words: highest, lowest, rain. Nothing else of the garden or of you.`,
    },
    {
      asks: 'To whom?',
      says: `To the weather service ${weatherServiceName} (${host}), by a connection others cannot read, and to nobody else. Like everyone you visit on the net, it sees from which connection you ask.`,
    },
    {
      asks: 'When?',
      says: 'Only when you press the button, and each place once a day at most. The program asks nothing of anybody by itself.',
    },
    {
      asks: 'What comes?',
      says: 'What a weather model makes of a square of the map, about 9 to 25 km wide (we recall that, and have not read it): no gauge stood in your garden, and a summer shower may be missing or be the neighbours’. All that you measure or bring in yourself goes before it.',
    },
    {
      asks: 'Where does it stay?',
      says: 'You see first what came. What you take goes into the garden’s file; until tomorrow the program also keeps the answer, so as not to ask twice. You can switch this off and remove all of it at any time.',
    },
    {
      asks: 'What does the service want?',
      says: `To be named as the source (licence CC BY 4.0), and not to be used for business. So we recall it; its own pages say what holds.`,
    },
  ];
}

const troubles: Readonly<Record<WeatherTrouble, (detail: string) => string>> = {
  'no way': (detail) =>
    `The weather service could not be reached${detail === '' ? '' : ` (${detail})`}. Is this computer on the net? Try again, or bring a file instead.`,
  slow: (seconds) =>
    `The weather service did not answer within ${seconds} seconds. Try again later.`,
  'turned down': (reason) =>
    `The weather service turned the question down and gave as its reason: ${reason}. Check the place, or try again tomorrow.`,
  moved: () =>
    'The weather service points to another address. It was not followed: only the address named here is ever asked. A newer version of the program may know it.',
  'too much': (megabytes) =>
    `The answer was longer than ${megabytes} MB and was not read: that is not what was asked for.`,
  'cut off': () => 'The answer broke off on the way. Try again.',
  'no data': () =>
    'What came was no weather but a page or nothing. A network one must first sign in to does that: sign in, then try again.',
  'asked today': () =>
    'This was asked today already. The service has new days tomorrow, and is asked once a day at most.',
};

/** Why nothing came, and what to do. Nothing in the garden was changed. */
export function weatherErrorSentence(error: WeatherError): string {
  switch (error.kind) {
    case 'no-weather':
      return `${troubles[error.why](error.detail)} Nothing was changed.`;
    case 'cancelled':
      return 'The question was called off. Nothing was changed.';
    case 'unreachable':
      return 'The part of the program that speaks to the net does not answer. Start the program again. Nothing was changed.';
    case 'refused':
      return `The question was not sent: ${error.reason} Nothing was changed.`;
    case 'disk-full':
    case 'no-permission':
    case 'read-only':
      return 'The answer could not be kept on this computer’s disk, so that the service might be asked twice in a day. Make room or permit it, then try again. Nothing was changed.';
    default:
      return 'This computer could not do it. Try again. Nothing was changed.';
  }
}

/** Why an answer that came cannot be used. */
export function downloadFailureSentence(failure: DownloadFailure): string {
  const end = 'Nothing was changed; a file can be brought instead.';
  switch (failure.kind) {
    case 'not whole':
      return `The answer cannot be read to its end: it is damaged or cut short. ${end}`;
    case 'service says':
      return `The weather service answers with a fault${failure.reason === '' ? '' : `: ${failure.reason}`}. ${end}`;
    case 'other form':
      return `The answer is not built as it should be (${failure.what}). ${end}`;
    case 'other unit':
      return `The answer gives ${failure.measure === 'rain' ? 'rain' : 'temperatures'} in a unit that was not asked for (${failure.unit}). ${end}`;
    case 'other place':
      return `The answer is for another place: ${placeWords(failure.latitudeDegrees, failure.longitudeDegrees)}. ${end}`;
    case 'no days': {
      const [first] = failure.refused.first;
      return `No day of the answer has a value that can be used. ${first ? `${refusedSentence(first)} ` : ''}${end}`;
    }
    default:
      return assertNever(failure);
  }
}

/**
 * What came, line by line, for reading before it is taken. Lines that belong to the one above begin
 * with two blanks.
 * @param most gaps and refused values that are written out
 */
export function downloadLines(download: Download, isKept: boolean, most = 8): string[] {
  const { gaps, refused, elevationMetres } = download;
  const more = (total: number, shown: number): string[] =>
    total > shown ? [`  and ${(total - shown).toLocaleString('en')} more`] : [];
  return [
    ...(isKept ? ['This came earlier today; the service was not asked again.'] : []),
    `${plural(download.days.length, 'day', 'days')} from ${download.firstDay} to ${download.lastDay}, ${download.wholeDays.toLocaleString('en')} of them with lowest, highest and rain.`,
    `They stand for a square of the map round ${placeWords(download.latitudeDegrees, download.longitudeDegrees)}${elevationMetres === null ? '' : `, ${String(Math.round(elevationMetres))} m above the sea`}.`,
    ...(download.notYet > 0
      ? [`Of the last ${plural(download.notYet, 'day', 'days')} the service knows nothing yet.`]
      : []),
    gaps.total === 0 ? 'No gaps.' : `${plural(gaps.total, 'gap', 'gaps')}:`,
    ...gaps.first.slice(0, most).map((gap) => `  ${gapSentence(gap)}`),
    ...more(gaps.total, Math.min(most, gaps.first.length)),
    refused.total === 0
      ? 'Nothing refused.'
      : `${refused.total.toLocaleString('en')} refused (lines are days of the answer):`,
    ...refused.first.slice(0, most).map((one) => `  ${refusedSentence(one)}`),
    ...more(refused.total, Math.min(most, refused.first.length)),
  ];
}

/** What taking the days would do, or did. */
export function downloadMergedSentence(
  { added, replaced }: { readonly added: number; readonly replaced: number },
  isDone: boolean,
): string {
  const out =
    replaced === 0
      ? ''
      : ` ${plural(replaced, 'day', 'days')} of another place ${isDone ? 'went' : 'go'} out.`;
  return `${plural(added, 'new day', 'new days')} ${isDone ? (added === 1 ? 'was' : 'were') : 'would be'} added, below everything you measured or brought in.${out}`;
}

export function degreesFailureSentence(failure: DegreesFailure, which: string): string {
  return failure.kind === 'beyond'
    ? `The ${which} goes up to ${String(failure.limit)} degrees.`
    : `The ${which} is a number of degrees, as maps show it: ${which === 'latitude' ? '52.5, or 33.9 S' : '13.4, or 1.3 W'}.`;
}

/** Ways in which a day's weather is known, best first, as the table of them says. */
export const rankWords: Readonly<Record<WeatherRank, string>> = {
  own: 'Your own gauge and thermometer',
  record: 'The record you brought in, or that came with the garden',
  downloaded: 'Downloaded for the place',
  filled: 'Filled in from the days around',
  imagined: 'Imagined from the usual months',
};

export const downloadSteps = {
  take: (days: number) =>
    days === 1 ? 'Take 1 downloaded day' : `Take ${days.toLocaleString('en')} downloaded days`,
  switchOff: () => 'Switch weather by place off',
  remove: () => 'Remove the downloaded weather',
} as const;
