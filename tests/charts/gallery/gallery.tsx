import '../../../app/style/fonts.css';
import '../../../app/style/tokens.css';
import '../../../app/style/base.css';
import '../../../app/style/charts.css';
import './gallery.css';
import { createRoot } from 'react-dom/client';
import { CoverChart } from '../../../app/charts/cover/Chart';
import { LedgerChart } from '../../../app/charts/ledger/Chart';
import { SeasonChart } from '../../../app/charts/season/Chart';
import { CoverMark, StateMark, WeightMark } from '../../../app/controls/marks/Mark';
import { ledgerWay } from '../../../app/core/season/ledgerStreams';
import { coverStates, nitrogenStates } from '../../../app/core/season/verdict';
import { metricChartUnits, usChartUnits } from '../../../app/words/chartUnits';
import { sampleBeds } from './sampleBeds';

/* A page for looking at the drawings; it is part of no build. Address: ?theme=dark&units=us&bed=1 */
const wanted = new URLSearchParams(location.search);
const theme = wanted.get('theme');
if (theme) document.documentElement.dataset['theme'] = theme;
const units = wanted.get('units') === 'us' ? usChartUnits : metricChartUnits;
const only = wanted.get('bed');
const beds = sampleBeds().filter((_bed, index) => only === null || index === Number(only));

function Gallery() {
  return (
    <>
      <h1>Drawings</h1>
      <section>
        <h2>Marks</h2>
        <ul className="plain-list gallery-marks">
          {nitrogenStates.map((state) => (
            <li key={state}>
              <StateMark state={state} /> {state}
            </li>
          ))}
        </ul>
        <ul className="plain-list gallery-marks">
          {coverStates.map((state) => (
            <li key={state}>
              <CoverMark state={state} /> {state}
            </li>
          ))}
          {(['note', 'caution', 'stop'] as const).map((weight) => (
            <li key={weight}>
              <WeightMark weight={weight} /> {weight}
            </li>
          ))}
        </ul>
      </section>
      {beds.map((bed) => (
        <section key={bed.name}>
          <h2>{bed.name}</h2>
          <SeasonChart {...bed.season} units={units} bedName={bed.name} />
          <CoverChart
            result={bed.season.result}
            layers={bed.cover}
            coverState={bed.coverState}
            units={units}
            bedName={bed.name}
          />
          <LedgerChart
            shown="so far"
            onShow={() => undefined}
            periods={[
              {
                key: 'so far',
                words: 'This season so far',
                way: ledgerWay(
                  bed.season.result,
                  bed.season.result.firstDay,
                  bed.season.result.today,
                ),
                imaginedFrom: null,
              },
            ]}
            bedName={bed.name}
            areaM2={bed.areaM2}
            units={units}
          />
        </section>
      ))}
    </>
  );
}

const place = document.querySelector('#drawings');
if (place) createRoot(place).render(<Gallery />);
