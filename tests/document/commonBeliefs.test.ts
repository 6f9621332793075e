// What is often said about clippings on beds, and what the program answers in the same case. The
// beliefs are told in short words of our own; the figures they are held against come from the sums
// named at each: Kansas State and Florida (4 % nitrogen of dry weight), weights and volumes by
// definition.
import { describe, expect, test } from 'vitest';
import beansBare from '../../assets/gardens/checks/beans-bare.mowings?raw';
import beansOne from '../../assets/gardens/checks/beans-one-layer.mowings?raw';
import sampleText from '../../assets/gardens/sample.mowings?raw';
import strawDug from '../../assets/gardens/checks/straw-dug.mowings?raw';
import strawLaid from '../../assets/gardens/checks/straw-laid.mowings?raw';
import { dayOf } from '../../app/core/days';
import { mixCarbonToNitrogen } from '../../app/core/cover/mix';
import { answerBed, answerProposal, type BedAnswer } from '../../app/core/season/bedAnswer';
import { flowKinds } from '../../app/core/season/flows';
import { mowingMass } from '../../app/document/accounts';
import { bedQuestion } from '../../app/document/bedQuestion';
import { lawnHeldBack } from '../../app/document/lawnHeldBack';
import { lawnOutlook } from '../../app/document/lawnOutlook';
import { massOf } from '../../app/document/layerMass';
import { materialById } from '../../app/document/materialValues';
import { parseGarden } from '../../app/document/parse';
import type { Application, Garden, Mowing, Treatment } from '../../app/document/schema';
import { unitsOf } from '../../app/amounts/unitSystem';
import { limits } from '../../app/tables/thresholds';
import { otherCauses } from '../../app/words/states';

const gardenOf = (text: string): Garden => {
  const parsed = parseGarden(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  return parsed.value;
};
const sample = gardenOf(sampleText);
const today = dayOf('2013-06-15');
const answerOf = (garden: Garden, day = today, bedId = garden.beds[0]!.id): BedAnswer =>
  answerBed(bedQuestion(garden, bedId, day), limits);
const checked = (text: string): BedAnswer => {
  const garden = gardenOf(text);
  return answerOf(garden, dayOf(garden.garden.today!));
};

const layer = (
  bedId: string,
  millimetres: number,
  changes: Partial<Application> = {},
): Application => ({
  id: `belief ${bedId} ${changes.date ?? ''} ${millimetres}`,
  date: '2013-06-15',
  bedId,
  from: { source: 'mowing', mowingId: 'mowing-2013-06-15' },
  amount: { text: '', quantity: { kind: 'depth', millimetres }, certainty: 'plain' },
  condition: 'just cut',
  wetness: 'damp',
  placement: 'laid',
  mixtureId: null,
  passedStops: [],
  ...changes,
});
const proposed = (bedId: string, layers: readonly Application[], garden = sample) =>
  answerProposal(
    {
      before: bedQuestion(garden, bedId, today),
      after: bedQuestion(garden, bedId, today, layers),
      layerIds: layers.map(({ id }) => id),
    },
    limits,
  );
const stopsOf = (cautions: readonly { kind: string; weight: string }[]): string[] =>
  cautions.filter(({ weight }) => weight === 'stop').map(({ kind }) => kind);
const laidGrams = ({ input }: BedAnswer, id: string): number =>
  input.layers.find((one) => one.id === id)!.nitrogen;

const tenPounds = 10 * 0.45359237;
const fresh: Mowing = {
  ...sample.mowings[0]!,
  wetness: 'dry',
  amount: { text: '', quantity: { kind: 'mass', kilograms: tenPounds }, certainty: 'plain' },
};

describe('how thick, and how often', () => {
  test('an inch at once, as some say: 20 to 80 g of nitrogen a square metre, and a stop', () => {
    const inch = layer('bed-far', 25.4);
    const { after, cautions } = proposed('bed-far', [inch]);
    expect(laidGrams(after, inch.id)).toBeGreaterThan(20);
    expect(laidGrams(after, inch.id)).toBeLessThan(80);
    expect(stopsOf(cautions)).toContain('layer depth');
  });

  test('half an inch at every mowing: ten of them pass the line of a whole season', () => {
    const ten = Array.from({ length: 10 }, (_unused, at) =>
      layer('bed-far', 12.7, {
        id: `top up ${at}`,
        date: `2013-0${at < 5 ? 5 : 6}-${10 + (at % 5)}`,
      }),
    );
    const { after, cautions } = proposed('bed-far', ten);
    expect(after.verdict.laidThisSeason).toBeGreaterThan(100);
    expect(stopsOf(cautions)).toContain('season total');
  });

  test('the lawn feeds the garden: 220 m2 of it take off more than nine beds of 67 m2 could use', () => {
    const outlook = lawnOutlook(sample, 'lawn-back', today, today);
    const lawn = sample.lawns.find(({ id }) => id === 'lawn-back')!;
    const grams = outlook.takenByEnd.nitrogen.typical * lawn.areaM2;
    // a usual garden rate is 10 g a square metre
    expect(grams / 10).toBeGreaterThan(sample.beds.reduce((sum, { areaM2 }) => sum + areaM2, 0));
  });

  test('two or three inches dug in: more than 40 g a square metre at one go, and a stop', () => {
    const dug = layer('bed-far', 60, { placement: 'dug' });
    const { after, cautions } = proposed('bed-far', [dug]);
    expect(laidGrams(after, dug.id)).toBeGreaterThan(40);
    expect(stopsOf(cautions).length).toBeGreaterThan(0);
  });
});

describe('how much nitrogen', () => {
  test('ten pounds of clippings hold an ounce or two, not half a pound', () => {
    const pounds = mowingMass(sample, fresh).nitrogenGrams / 453.59237;
    // 4 % of a fifth to a sixth of the weight is 0.06 to 0.1 lb
    expect(pounds).toBeGreaterThan(0.05);
    expect(pounds).toBeLessThan(0.12);
  });

  test('a tenth of their weight: ten times too much', () => {
    const { nitrogenGrams, freshKilograms } = mowingMass(sample, fresh);
    expect(nitrogenGrams / (freshKilograms * 1000)).toBeLessThan(0.012);
  });

  test('grass robs the soil while it rots: dug in, it brings the crop more and ties up nothing', () => {
    const dug = layer('bed-far', 6, { placement: 'dug' });
    const { before, after, cautions } = proposed('bed-far', [dug]);
    expect(after.verdict.ratio!).toBeGreaterThan(before.verdict.ratio!);
    expect(cautions.map(({ kind }) => kind)).not.toContain('tied up');
  });
});

describe('greens and browns', () => {
  const share = (materialId: string, litres: number) => {
    const material = materialById(sample, materialId);
    const handling = { condition: 'just cut', wetness: 'dry' } as const;
    const mass = massOf(sample, { kind: 'volume', litres }, material, handling, null);
    return {
      freshKilograms: mass.freshKilograms,
      moistureFraction: 1 - mass.dryKilograms / mass.freshKilograms,
      carbonFraction: material.carbon,
      nitrogenFraction: material.nitrogen,
    };
  };
  const ratioOf = (grass: number, leaves: number): number => {
    const mixed = mixCarbonToNitrogen([
      share('grass-fresh-generic', grass),
      share('leaves-mixed-shredded', leaves),
    ]);
    if (!mixed.ok) throw new Error(mixed.error.kind);
    return mixed.value;
  };

  test('one of green to twenty of brown is hardly better than leaves alone', () => {
    const alone = share('leaves-mixed-shredded', 1);
    const leaves = alone.carbonFraction / alone.nitrogenFraction;
    expect(ratioOf(1, 20)).toBeGreaterThan(0.85 * leaves);
  });

  test('thirty to one is no count of buckets: about as much of each comes near it', () => {
    expect(ratioOf(1, 1)).toBeGreaterThan(15);
    expect(ratioOf(1, 1)).toBeLessThan(35);
    expect(ratioOf(1, 30)).toBeGreaterThan(1.5 * ratioOf(1, 1));
  });

  test('browns rob the soil, or never do: laid on under half a gram, dug in nearly all there is', () => {
    const taken = ({ season }: BedAnswer): number =>
      flowKinds.reduce(
        (sum, { from, to }, at) =>
          from === 'mineralTop' && (to === 'coverMicrobes' || to === 'dugMicrobes')
            ? sum + season.flows[at]!.reduce((all, one) => all + one, 0)
            : sum,
        0,
      );
    expect(taken(checked(strawLaid))).toBeLessThan(0.5);
    expect(taken(checked(strawDug))).toBeGreaterThan(5);
  });

  test('browns on top cure an over-fed bed within weeks: they take next to nothing, raking does', () => {
    const chips = layer('bed-gate', 50, {
      from: { source: 'elsewhere', materialId: 'wood-chips-arborist' },
      condition: 'crisp',
      wetness: 'dry',
    });
    const { before, after } = proposed('bed-gate', [chips]);
    const raked: Garden = {
      ...sample,
      events: [
        ...sample.events,
        { id: 'rake', kind: 'rake off', bedId: 'bed-gate', date: '2013-06-15', share: 0.5 },
      ],
    };
    const ratio = before.verdict.ratio!;
    const byChips = ratio - after.verdict.ratio!;
    const byRake = ratio - answerOf(raked, today, 'bed-gate').verdict.ratio!;
    expect(byChips).toBeLessThan(0.1 * ratio);
    expect(byRake).toBeGreaterThan(3 * byChips);
  });
});

describe('all leaf and no fruit', () => {
  test('is not always nitrogen: after heat it is said that heat does the same', () => {
    const words = otherCauses({ hotDays: 9, hotAbove: 32 }, unitsOf('metric'));
    expect(words).toMatch(/heat over 32 °C.*can keep fruit from setting too/);
    expect(otherCauses({ hotDays: 0 }, unitsOf('metric'))).toBe('');
  });

  test('calls for a phosphorus feed or bitter salts: the program never says so', () => {
    const sentences = import.meta.glob('../../app/words/*.ts', {
      query: '?raw',
      import: 'default',
      eager: true,
    });
    expect(Object.keys(sentences).length).toBeGreaterThan(20);
    for (const text of Object.values(sentences))
      expect(text).not.toMatch(/epsom|bloom booster|add phosphorus|bone meal helps/i);
  });
});

describe('sprayed lawns', () => {
  const back = sample.lawns.find(({ id }) => id === 'lawn-back')!;
  const held = (treatment: Treatment, mowingDays: readonly string[] = []) => {
    const garden: Garden = {
      ...sample,
      mowings: mowingDays.map((date, at) => ({ ...sample.mowings[0]!, id: `m${at}`, date })),
      applications: [],
    };
    return lawnHeldBack(garden, { ...back, treatment }, today);
  };

  test('three mowings make it good again: not under a silent label, never where it forbids, nor unknown', () => {
    const three = ['2013-05-20', '2013-05-27', '2013-06-03'];
    const silent = { answer: 'treated', label: 'silent', date: '2013-05-15' } as const;
    expect(held(silent, three)?.weight).toBe('stop');
    expect(held({ ...silent, label: 'forbids' }, three)?.row).toBe('label forbids');
    expect(held({ answer: 'unknown' }, three)?.weight).toBe('stop');
    // four mowings and six weeks under a silent label: no rule of ours holds it from every food bed
    const four = ['2013-04-20', '2013-04-27', '2013-05-03', '2013-05-10'];
    expect(held({ ...silent, date: '2013-04-15' }, four)).toBeNull();
  });

  test('composting clears it: what the label forbids is kept from the heap as well', () => {
    expect(held({ answer: 'treated', label: 'forbids', date: '2012-06-15' })?.weight).toBe('stop');
  });

  test('clippings carry no seed, or are full of it: asked, and cautioned where heads were seen', () => {
    const thin = layer('bed-far', 5);
    const clean = proposed('bed-far', [thin]).cautions.map(({ kind }) => kind);
    const seeded: Garden = {
      ...sample,
      lawns: sample.lawns.map((lawn) => ({ ...lawn, seedHeadsSeen: '2013-06-14' })),
    };
    const after = proposed('bed-far', [thin], seeded).cautions.map(({ kind }) => kind);
    expect(clean).not.toContain('seed heads');
    expect(after).toContain('seed heads');
  });
});

describe('beans', () => {
  test('feed the next crop: what they leave is less than the pods carry off', () => {
    const { season } = checked(beansBare);
    const [beans] = season.plantings;
    expect(beans!.harvested).toBeGreaterThan(beans!.left);
  });

  test('must never be fed, or be mulched like the rest: one thin layer costs little of what they gather', () => {
    const bare = checked(beansBare).season.plantings[0]!;
    const one = checked(beansOne).season.plantings[0]!;
    expect(one.fixed).toBeLessThan(bare.fixed);
    expect(one.fixed).toBeGreaterThan(0.75 * bare.fixed);
    // what they do not gather they take from the soil: little is gained for what is laid
    expect(one.demandMet - bare.demandMet).toBeGreaterThanOrEqual(0);
    expect(one.demandMet - bare.demandMet).toBeLessThan(0.2);
  });
});

describe('the lawn, the soil kit, and autumn', () => {
  test('leaving clippings saves a quarter to a half of the feed: taking them costs just that', () => {
    const outlook = lawnOutlook(sample, 'lawn-back', today, today);
    // 1.6 to 3.2 lb of nitrogen per 1,000 sq ft a year is 8 to 16 g a square metre
    expect(outlook.takenByEnd.nitrogen.typical).toBeGreaterThan(6);
    expect(outlook.takenByEnd.nitrogen.typical).toBeLessThan(20);
    expect(outlook.cost.feedSavedInTheLongRun.typical).toBeGreaterThan(0.2);
    expect(outlook.cost.feedSavedInTheLongRun.typical).toBeLessThan(0.6);
  });

  test('one nitrate test tells all: it moves today much, and weeks later less', () => {
    const tested = (date: string): Garden => ({
      ...sample,
      events: [
        ...sample.events,
        {
          id: 'kit',
          kind: 'soil test',
          bedId: 'bed-far',
          date,
          nitrateMgPerKg: 40,
          organicMatterPercent: null,
          depthCentimetres: 30,
        },
      ],
      beds: sample.beds.map((bed) => (bed.id === 'bed-far' ? { ...bed, knownSince: date } : bed)),
    });
    const nitrate = (garden: Garden): number =>
      answerOf(garden, today, 'bed-far').verdict.nitrateMgPerKg;
    const untested = nitrate(sample);
    const fresher = Math.abs(nitrate(tested('2013-06-14')) - untested);
    const stale = Math.abs(nitrate(tested('2013-04-10')) - untested);
    expect(fresher).toBeGreaterThan(2 * stale);
  });

  test('compost and manure on bare beds in autumn: what nobody takes up washes out, and is cautioned', () => {
    const bare: Garden = {
      ...sample,
      plantings: sample.plantings.filter(({ bedId }) => bedId !== 'bed-far'),
    };
    const manure = layer('bed-far', 40, {
      from: { source: 'elsewhere', materialId: 'manure-hen-fresh' },
      condition: 'just cut',
      wetness: 'dry',
      placement: 'dug',
    });
    const { after, cautions } = proposed('bed-far', [manure], bare);
    const kinds = [...cautions, ...after.cautions].map(({ kind }) => kind);
    expect(kinds).toContain('washing out');
  });
});
