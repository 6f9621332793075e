import { coefficientRows } from '../../../app/tables/coefficients';
import type { Standing } from '../../../app/core/reference';
import { everyRow } from '../../tables/rows';

export interface StandingShare {
  readonly standing: Standing;
  readonly coefficients: number;
  readonly rows: number;
}

const order: readonly Standing[] = [
  'read',
  'reported',
  'derived',
  'mixed',
  'memory',
  'assumed',
  'common practice',
  'definition',
  'measured',
];

/** How many of the engine's coefficients, and of all numbers in the tables, stand how. */
export function standingShares(): readonly StandingShare[] {
  const coefficients = Object.values(coefficientRows);
  const rows = everyRow();
  return order
    .map((standing) => ({
      standing,
      coefficients: coefficients.filter((row) => row.standing === standing).length,
      rows: rows.filter(({ row }) => row.standing === standing).length,
    }))
    .filter((share) => share.coefficients + share.rows > 0);
}
