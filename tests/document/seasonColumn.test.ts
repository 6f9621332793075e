// The account of a season on a bed's page adds up before one's eyes, for every bed of the sample.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { runSeason } from '../../app/core/season/season';
import { bedQuestion } from '../../app/document/bedQuestion';
import { parseGarden } from '../../app/document/parse';
import { bedSeasonAccounts } from '../../app/document/seasonsAccount';
import { carriedNames, leftInAll, seasonLine } from '../../app/words/seasonAccountWords';

const parsed = parseGarden(readFileSync('assets/gardens/sample.mowings', 'utf8'));
if (!parsed.ok) throw new Error('the sample does not open');
const garden = parsed.value;

test.each(garden.beds)('$name', ({ id }) => {
  const { input } = bedQuestion(garden, id, dayOf(garden.garden.today!));
  const accounts = bedSeasonAccounts(garden, input, runSeason(input));
  expect(accounts.length).toBeGreaterThan(0);
  for (const { ledger, carriedOver } of accounts) {
    const left = carriedNames.reduce((sum, key) => sum + carriedOver[key], 0);
    const line = (name: Parameters<typeof seasonLine>[0]) => seasonLine(name, ledger);
    expect(line('opening') + line('cameIn') + line('soilGave') - line('wentOut')).toBeCloseTo(
      left,
      9,
    );
    expect(leftInAll(ledger)).toBeCloseTo(left, 9);
  }
});
