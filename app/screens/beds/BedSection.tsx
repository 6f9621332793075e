import { memo, useEffect, useMemo, useState } from 'react';
import { SectionChart } from '../../charts/section/Chart';
import { sectionFacts } from '../../charts/section/facts';
import { sectionTable } from '../../charts/section/tableData';
import type { Application, Bed, Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { applicationsOf } from '../../store/proposal';
import { useShown } from '../shown';
import { useMowings } from '../store';
import { planDrafts } from '../week/plan/planDrafts';
import { TakeAway } from '../takeAway/TakeAway';
import { dayAhead, daysAhead, sectionData } from './sectionData';

/** One way the bed may go on. */
interface Course {
  readonly key: string;
  /** "As it stands" */
  readonly name: string;
  /** "as it stands", "with this week’s plan" */
  readonly words: string;
  /** null: being reckoned */
  readonly results: BedResults | null;
  readonly proposed: readonly Application[];
}

const asItStands = 'stands';
const noDrafts: ReturnType<typeof planDrafts> = [];
const Drawn = memo(SectionChart);

/** What was proposed for the bed: by the week's plan, and by the alternatives being thought of below. */
function useCourses(bed: Bed, garden: Garden, results: BedResults): readonly Course[] {
  const plan = useMowings((state) => state.plan);
  const ahead = useMowings((state) => state.ahead);
  const wantAhead = useMowings((state) => state.wantAhead);
  const whatIf = useMowings((state) => state.whatIf);
  const drafts = useMemo(() => {
    const lines = plan.isBehind ? [] : (plan.answer?.lines ?? []);
    const own = lines.filter(({ bedId }) => bedId === bed.id);
    return own.length > 0 ? planDrafts(garden, own) : noDrafts;
  }, [garden, plan.answer, plan.isBehind, bed.id]);
  useEffect(() => {
    wantAhead(bed.id, drafts);
    return () => wantAhead(bed.id, []);
  }, [wantAhead, bed.id, drafts]);
  return useMemo(() => {
    const courses: Course[] = [
      { key: asItStands, name: 'As it stands', words: 'as it stands', results, proposed: [] },
    ];
    if (drafts.length > 0 && ahead?.drafts === drafts && ahead.state !== 'failed')
      courses.push({
        key: 'plan',
        name: 'With this week’s plan',
        words: 'with this week’s plan',
        results: ahead.answer?.after ?? null,
        proposed: ahead.applications,
      });
    if (whatIf?.bedId === bed.id && whatIf.state !== 'failed')
      whatIf.drafts.forEach(({ key, draft }, at) => {
        const likely = whatIf.state === 'ready' ? whatIf.likely[key] : undefined;
        courses.push({
          key,
          name: `With alternative ${at + 1}`,
          words: `with alternative ${at + 1} of “What if…”`,
          results: likely?.after ?? null,
          proposed: likely ? applicationsOf(garden, [draft]) : [],
        });
      });
    return courses;
  }, [garden, bed.id, results, drafts, ahead, whatIf]);
}

/** A bed as a cut through it, today and in four weeks: as it stands, or with what is proposed for it. */
export function BedSection(props: {
  readonly bed: Bed;
  /** what the results are answers to */
  readonly garden: Garden;
  readonly results: BedResults;
}) {
  const { bed, garden, results } = props;
  const shown = useShown();
  const courses = useCourses(bed, garden, results);
  const [picked, pick] = useState<string | null>(null);
  const { today } = results.season;
  const now = useMemo(
    () => sectionData({ garden, results, day: today, units: shown.units }),
    [garden, results, today, shown.units],
  );
  const chosen = courses.find(({ key }) => key === picked) ?? courses[1] ?? courses[0];
  const later = dayAhead(results);
  const ahead = useMemo(() => {
    if (later === today || !chosen) return null;
    const when = `${later - today === daysAhead ? 'In four weeks' : 'At the season’s end'}, ${shown.dayWord(later)}`;
    // until the course is reckoned, what is known
    const course = chosen.results ?? results;
    return {
      data: sectionData({
        garden,
        results: course,
        proposed: chosen.results ? chosen.proposed : [],
        day: later,
        units: null,
      }),
      title: chosen.results
        ? `${when}, ${chosen.words}`
        : `${when}, as it stands, till the other is reckoned`,
    };
  }, [garden, results, chosen, later, today, shown]);
  return (
    <TakeAway
      name={`Section of ${bed.name}`}
      table={() =>
        sectionTable(
          [now, ...(ahead ? [ahead.data] : [])].map((data) => sectionFacts(data)),
          shown.chart,
        )
      }
    >
      <Drawn
        bedName={bed.name}
        now={now}
        ahead={ahead}
        units={shown.chart}
        choice={
          courses.length > 1 && (
            <div className="chart-choices" role="group" aria-label="In four weeks">
              {courses.map(({ key, name }) => (
                <button
                  key={key}
                  type="button"
                  className="button-small"
                  aria-pressed={key === chosen?.key}
                  onClick={() => pick(key)}
                >
                  {name}
                </button>
              ))}
            </div>
          )
        }
      />
    </TakeAway>
  );
}
