import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { TodayLine } from '../../app/charts/season/Backdrop';
import type { SeasonLayout } from '../../app/charts/season/layout';
import { textWidth } from '../../app/charts/textWidth';
import { seasonPanelWords } from '../../app/words/seasonChart';

const wide = 900;
const today = 400;
const layout = {
  width: wide,
  x: (day: number) => day,
  supply: { top: 40 },
} as unknown as SeasonLayout;
const wordsWide = textWidth(seasonPanelWords.imagined);
const todayTo = today + 0.5 - 5;
const todayFrom = todayTo - textWidth(seasonPanelWords.today, true);

/** Left and right edge of "imagined from here"; null where it is left out. */
function imaginedEdges(from: number, width = wide): readonly [number, number] | null {
  const markup = renderToStaticMarkup(
    <svg>
      <TodayLine
        layout={{ ...layout, width }}
        today={today}
        imagined={[{ x: from, width: 10 } as never]}
        pieces={() => ''}
      />
    </svg>,
  );
  const found = /chart-label-imagined ([^"]*)" x="([\d.]+)"/.exec(markup);
  if (!found) return null;
  const x = Number(found[2]);
  return found[1]?.includes('chart-label-end') ? [x - wordsWide, x] : [x, x + wordsWide];
}

test.each([1, 3, 20, 40, 80, 150, 260, 390])(
  'weather that ends %i days before today: both words can be read',
  (days) => {
    for (const width of [wide, today + 40]) {
      const edges = imaginedEdges(today - days, width);
      if (edges === null) continue;
      expect(edges[1] <= todayFrom || edges[0] >= todayTo).toBe(true);
      expect(edges[0]).toBeGreaterThanOrEqual(0);
      expect(edges[1]).toBeLessThanOrEqual(width);
    }
    expect(imaginedEdges(today - days)).not.toBeNull();
  },
);
