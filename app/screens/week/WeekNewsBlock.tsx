import { useMemo } from 'react';
import { flowerWeather } from '../../core/season/flowerWeather';
import { limits } from '../../tables/thresholds';
import { stateSentence } from '../../words/states';
import { finishedCrop } from '../finishedCrop';
import { coverSays } from '../coverSays';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { weekNews, type WeekBefore, type WeekNews } from './weekNews';

/** What the week that was gone on brought, until it is put away. */
export function WeekNewsBlock(props: {
  readonly before: WeekBefore;
  readonly onDismiss: () => void;
}) {
  const { before, onDismiss } = props;
  const garden = useGarden();
  const shown = useShown();
  const bedResults = useMowings((state) => state.bedResults);
  const news = useMemo(() => weekNews(garden, before, bedResults), [garden, before, bedResults]);
  if (!news) return <p className="soft small">Looking at what the week brought…</p>;
  return (
    <section className="message not-printed" aria-labelledby="week-news">
      <div className="section">
        <h2 id="week-news">What the week to {shown.dayWord(before.to)} brought</h2>
        <p>
          {rainWords(news, shown)} {washedWords(news, shown)}
        </p>
        <Changes news={news} />
      </div>
      <button type="button" className="button-small" onClick={onDismiss}>
        Put the news away
      </button>
    </section>
  );
}

type Shown = ReturnType<typeof useShown>;

function rainWords({ rainMillimetres, rainDays }: WeekNews, shown: Shown): string {
  if (rainDays === 0) return 'Next to no rain.';
  const days = rainDays === 1 ? 'one day' : `${rainDays} days`;
  return `Rain: ${shown.estimate(rainMillimetres, shown.units.rain)} on ${days}.`;
}

function washedWords({ washed }: WeekNews, shown: Shown): string {
  const [most] = washed;
  if (!most) return 'Nothing worth naming was washed out.';
  const grams = (value: number) => shown.estimate(value, shown.units.nitrogen);
  const all = washed.reduce((sum, { grams: one }) => sum + one, 0);
  return washed.length === 1
    ? `Washed out: ${grams(all)} of nitrogen, from ${most.bed.name}.`
    : `Washed out: ${grams(all)} of nitrogen in all, ${grams(most.grams)} of it from ${most.bed.name}.`;
}

function Changes({ news }: { readonly news: WeekNews }) {
  const shown = useShown();
  const today = useToday();
  if (news.nitrogen.length === 0 && news.cover.length === 0)
    return <p>Every bed is in the state it was in.</p>;
  return (
    <ul>
      {news.nitrogen.map(({ bed, was, results }) => (
        <li key={`nitrogen ${bed.id}`}>
          <strong>{bed.name}</strong> was {was}, is {results.verdict.state}.{' '}
          {stateSentence(results.verdict, shown.units, {
            today,
            weather: flowerWeather(results.season, today, limits),
            finished: finishedCrop(results),
          })}
        </li>
      ))}
      {news.cover.map(({ bed, was, results }) => (
        <li key={`cover ${bed.id}`}>
          <strong>{bed.name}</strong>: its ground was {was}, is {results.verdict.coverState}.{' '}
          {coverSays(results, shown)}
        </li>
      ))}
    </ul>
  );
}
