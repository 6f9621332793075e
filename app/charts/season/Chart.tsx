import {
  type KeyboardEvent,
  type PointerEvent,
  useEffect,
  useId,
  useMemo,
  useRef,
  useState,
} from 'react';
import { ChartSays, ChartValues } from '../ChartSays';
import type { DayNumber } from '../../core/days';
import { dayOfKey } from '../dayOfKey';
import { supplySources } from '../../core/season/ledger';
import { gramsPerM2FromMgPerKg } from '../../core/units';
import { dayWord } from '../../words/chartFormat';
import { howToRead, nitrateTitle, seasonFinding, seasonPanelWords } from '../../words/seasonChart';
import { TableButton } from '../TableButton';
import { usePaperHeight } from '../paperWidth';
import { useWidth } from '../useWidth';
import { Weaves } from '../weaves/Weaves';
import { Backdrop, TodayLine } from './Backdrop';
import { calendarStretches } from './calendar';
import { Crosshair } from './Crosshair';
import { type DaySpan, type SeasonChartData, spanOf, type Zoom, zooms } from './data';
import { imaginedStretches, nitrateGeometry, supplyGeometry } from './geometry';
import { seasonLayout } from './layout';
import { Key, KeyButtons, KeyList, placedKeyRows } from './Key';
import { keyRows, keyValues } from './keyRows';
import { likelyWithin } from './likely';
import { NitratePanel } from './NitratePanel';
import { Reading } from './Reading';
import { readDay, spokenReading, weeklyReadings } from './reading';
import { seasonSeries } from './series';
import { labelRoom, wordsInStrips } from './strips';
import { LayerStrip, PlantingRows, RainStrip, StateStrip, WarmthStrip } from './StripPanels';
import {
  deepestShown,
  layerMarks,
  plantingBars,
  plantingsInView,
  rainBars,
  stateSegments,
} from './strips';
import { SupplyPanel } from './SupplyPanel';
import { warmthGeometry } from './warmth';
import { WeeksTable } from './WeeksTable';

const zoomWords: Readonly<Record<Zoom, string>> = {
  season: 'Season',
  month: 'Month',
  fortnight: 'Fortnight',
};

/** What most imagined seasons leave in the top layer on the last evening known, if that is to come. */
function likelyAtEnd(
  { likely, result, bulkDensityKgPerL }: SeasonChartData,
  whole: DaySpan,
): { readonly day: DayNumber; readonly low: number; readonly high: number } | null {
  const last = likelyWithin(likely ?? [], whole).at(-1);
  if (!last || last.day <= result.today) return null;
  const grams = (mgPerKg: number) => gramsPerM2FromMgPerKg(mgPerKg, bulkDensityKgPerL, 30);
  return { day: last.day, low: grams(last.low), high: grams(last.high) };
}

const within = (day: DayNumber, span: DaySpan): DayNumber =>
  Math.max(span.from, Math.min(span.to, day));

export interface SeasonChartProps extends SeasonChartData {
  /** "Gate bed" */
  readonly bedName: string;
  /** days of the season view, both included; the whole run when left out */
  readonly from?: DayNumber;
  readonly to?: DayNumber;
}

const seasonSaying = { of: 'season' } as const;

/**
 * A bed's season: supply in bands against what the crop could use, nitrogen ready in the soil,
 * states, plantings, layers and rain, on one line of days. A day is chosen with the pointer or the
 * arrow keys; all its values are written above the drawing and read out.
 */
export function SeasonChart(props: SeasonChartProps) {
  const { result, units } = props;
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box, 960);
  const tallest = usePaperHeight();
  const [zoom, setZoom] = useState<Zoom>('season');
  const [wantedDay, setDay] = useState<DayNumber>(result.today);
  const [wantedMiddle, setMiddle] = useState<DayNumber>(result.today);
  const [tableShown, showTable] = useState(false);
  /** the day last chosen by key, which is read out; not those that the garden or a pointer changed */
  const [spokenDay, speakOf] = useState<DayNumber | null>(null);

  const whole: DaySpan = {
    from: Math.max(props.from ?? result.firstDay, result.firstDay),
    to: Math.min(props.to ?? Infinity, result.firstDay + result.days - 1),
  };
  const { from, to } = spanOf(zoom, wantedMiddle, whole);
  const span = useMemo(() => ({ from, to }), [from, to]);
  const day = within(wantedDay, span);

  const { plantings } = props;
  const coverCrops = useMemo(
    () => plantings.filter(({ isCoverCrop }) => isCoverCrop).map((planting) => planting.id),
    [plantings],
  );
  const series = useMemo(
    () => seasonSeries(result, span, props.bulkDensityKgPerL, coverCrops),
    [result, span, props.bulkDensityKgPerL, coverCrops],
  );
  const layout = seasonLayout(width, span, plantingsInView(props, span).length, tallest);
  const supply = supplyGeometry(series, layout, units.nitrogen);
  const nitrate = nitrateGeometry(series, layout, props);
  const imagined = imaginedStretches(result, series, layout);
  const rain = rainBars(result, span, layout, units.rain);
  const segments = stateSegments(props, span, layout);
  const bars = plantingBars(props, span, layout);
  const words = wordsInStrips(segments, bars, layout);
  /** an upright line over all panels, without the stretches where words or dates lie */
  const pieces = (x: number): string =>
    layout.panels
      .filter(({ top }) => !words.some((one) => one.top === top && x > one.from && x < one.to))
      .map(
        (panel) =>
          `M${x} ${panel.top} V${panel === layout.layers ? panel.bottom - labelRoom : panel.bottom}`,
      )
      .join(' ');
  const warmth = warmthGeometry(result, span, layout, units);
  const layers = layerMarks(props, span, layout);
  const reading = readDay(props, series, day);
  const key = keyRows(reading, supply.labels, nitrate, units, {
    watering: rain.bars.some(({ watered }) => watered > 0),
    stages: new Set(bars.flatMap(({ marks }) => marks.map(({ stage }) => stage))),
    stuffs: new Set(layers.map(({ layer }) => layer.stuff ?? 'other')),
  });
  const placed = placedKeyRows(key, layout);
  const seasonDay = { reading, from, plantings };
  const since = `since ${dayWord(from, units)}`;

  const season = useMemo(
    () =>
      seasonSeries(result, { from: whole.from, to: whole.to }, props.bulkDensityKgPerL, coverCrops),
    [result, whole.from, whole.to, props.bulkDensityKgPerL, coverCrops],
  );
  const untilToday = Math.max(0, within(result.today, whole) - whole.from + 1);
  const finding = seasonFinding(
    {
      today: result.today,
      verdict: props.verdict,
      couldUse: season.demand[untilToday] ?? 0,
      got: season.got[untilToday] ?? 0,
      couldUseToEnd: season.demand.at(-1) ?? 0,
      gotToEnd: season.got.at(-1) ?? 0,
      likelyAtEnd: likelyAtEnd(props, whole),
      bySource: Object.fromEntries(
        supplySources.map((source) => [
          source,
          season.bands.find((band) => band.name === source)?.grams[untilToday] ?? 0,
        ]),
      ) as Parameters<typeof seasonFinding>[0]['bySource'],
    },
    units,
  );

  const choose = (wanted: DayNumber) => {
    const chosen = within(wanted, whole);
    setDay(chosen);
    if (chosen < span.from || chosen > span.to) setMiddle(chosen);
  };
  const zoomTo = (wanted: Zoom) => {
    setZoom(wanted);
    setMiddle(day);
  };
  const shift = (direction: -1 | 1) => {
    const next = spanOf(zoom, wantedMiddle + direction * (to - from + 1), whole);
    setMiddle(next.from + Math.floor((to - from + 1) / 2));
    setDay(within(day + direction * (to - from + 1), next));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const wanted = dayOfKey(event, day, whole);
    if (wanted === null) return;
    choose(wanted);
    speakOf(within(wanted, whole));
    event.preventDefault();
  };
  // worded once for the day that was chosen: what the garden makes of it later is told elsewhere
  // eslint-disable-next-line react-hooks/exhaustive-deps
  const spoken = useMemo(() => spokenReading(props, reading), [spokenDay]);
  // a drawing wider than its box follows the chosen day
  const dayX = layout.x(day + 0.5);
  useEffect(() => {
    const view = box.current;
    if (!view || view.scrollWidth <= view.clientWidth) return;
    const edge = view.clientWidth / 5;
    if (dayX < view.scrollLeft + edge || dayX > view.scrollLeft + view.clientWidth - edge)
      view.scrollLeft = dayX - view.clientWidth / 2;
  }, [dayX]);
  const onPointer = (event: PointerEvent<HTMLElement>) => {
    const px = event.clientX - event.currentTarget.getBoundingClientRect().left;
    if (px >= layout.left && px <= layout.right) setDay(layout.dayAt(px));
  };

  return (
    <figure className="chart season-chart" aria-labelledby={`${id}-name`}>
      <figcaption>
        <h3 id={`${id}-name`}>Season of {props.bedName}</h3>
        <div id={`${id}-finding`}>
          <ChartSays saying={seasonSaying} says={finding.first} />
        </div>
      </figcaption>
      <div className="chart-tools">
        <div role="group" aria-label="Days shown" className="chart-choices">
          {zooms.map((name) => (
            <button
              key={name}
              type="button"
              className="button-small"
              aria-pressed={zoom === name}
              onClick={() => zoomTo(name)}
            >
              {zoomWords[name]}
            </button>
          ))}
        </div>
        {zoom !== 'season' && (
          <div role="group" aria-label="Move the days shown" className="chart-choices">
            <button
              type="button"
              className="button-small"
              aria-disabled={from <= whole.from}
              onClick={() => from > whole.from && shift(-1)}
            >
              Earlier
            </button>
            <button
              type="button"
              className="button-small"
              aria-disabled={to >= whole.to}
              onClick={() => to < whole.to && shift(1)}
            >
              Later
            </button>
          </div>
        )}
        <TableButton
          tableId={`${id}-table`}
          isShown={tableShown}
          onShow={showTable}
          words={{ table: 'The same numbers as a table', hideTable: 'Hide the table' }}
        />
      </div>
      <Reading reading={reading} units={units} />
      <div className="only-heard" aria-live="polite">
        {spokenDay === day && spoken}
      </div>
      <ChartValues values={{ of: 'season day', day: seasonDay }} written={keyValues(key)}>
        {(button) => (
          <>
            <div ref={box} className="chart-scroll">
              <div
                className="chart-reader"
                role="slider"
                tabIndex={0}
                aria-label={`Day in the season of ${props.bedName}`}
                aria-describedby={`${id}-finding`}
                aria-valuemin={0}
                aria-valuemax={whole.to - whole.from}
                aria-valuenow={day - whole.from}
                aria-valuetext={dayWord(day, units)}
                onKeyDown={onKeyDown}
                onPointerMove={onPointer}
                onPointerDown={onPointer}
              >
                <svg
                  className="chart-drawing"
                  viewBox={`0 0 ${layout.width} ${layout.height}`}
                  width={layout.width}
                  height={layout.height}
                  aria-hidden="true"
                  focusable="false"
                >
                  <Weaves prefix={id} />
                  <Backdrop
                    layout={layout}
                    calendar={calendarStretches(zoom, span, units, layout.x(1) - layout.x(0))}
                    imagined={imagined}
                    weaves={id}
                  />
                  <SupplyPanel
                    geometry={supply}
                    layout={layout}
                    weaves={id}
                    unit={units.nitrogen}
                    since={since}
                  />
                  <NitratePanel geometry={nitrate} layout={layout} units={units} weaves={id} />
                  <TodayLine
                    layout={layout}
                    today={result.today >= from && result.today <= to ? result.today : null}
                    imagined={imagined}
                    pieces={pieces}
                  />
                  <Crosshair
                    pieces={pieces}
                    onToday={day === result.today}
                    reading={reading}
                    layout={layout}
                    supply={supply}
                    nitrate={nitrate}
                  />
                  <StateStrip segments={segments} layout={layout} />
                  <PlantingRows bars={bars} layout={layout} />
                  <LayerStrip
                    marks={layers}
                    layout={layout}
                    deepest={deepestShown(layers.map(({ layer }) => layer))}
                    unit={units.depth}
                  />
                  <RainStrip bars={rain.bars} top={rain.top} layout={layout} unit={units.rain} />
                  <WarmthStrip geometry={warmth} layout={layout} unit={units.warmth.short} />
                  {!layout.isNarrow && (
                    <Key
                      rows={placed}
                      reading={reading}
                      layout={layout}
                      weaves={id}
                      units={units}
                    />
                  )}
                </svg>
              </div>
              {!layout.isNarrow && <KeyButtons rows={placed} layout={layout} button={button} />}
            </div>
            {layout.isNarrow && (
              <KeyList
                rows={key}
                weaves={id}
                heads={{
                  supply: seasonPanelWords.supply,
                  nitrate: nitrateTitle(units),
                  plantings: seasonPanelWords.plantings,
                  layers: seasonPanelWords.layers,
                  rain: seasonPanelWords.rain,
                  warmth: seasonPanelWords.warmth,
                }}
                button={button}
              />
            )}
          </>
        )}
      </ChartValues>
      <details className="more more-quiet">
        <summary>How to read this</summary>
        <div className="more-body chart-how">
          {finding.more.map((more) => (
            <ChartSays key={more.about} saying={{ of: 'season more', more }} says={more.says} />
          ))}
          <p>{howToRead(since)}</p>
        </div>
      </details>
      {tableShown && (
        <WeeksTable
          id={`${id}-table`}
          readings={weeklyReadings(props, series)}
          units={units}
          since={since}
          day={seasonDay}
        />
      )}
    </figure>
  );
}
