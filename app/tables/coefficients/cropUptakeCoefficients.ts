import { row, single } from '../row';

/** How a crop takes nitrogen up. */
export const cropUptakeCoefficients = {
  arrearsDays: single(
    5,
    'days',
    'Assumed',
    'need left open for longer than this is lost',
    'assumed',
  ),
  uptakeShare: row(
    0.05,
    0.1,
    0.2,
    'share per day',
    'Assumed',
    'most a crop takes of the nitrogen its roots reach',
    'assumed',
    { drawnPer: 'garden' },
  ),
  uptakeFloor: single(0.4, 'g N per m2', 'Assumed', 'left in every layer, out of reach', 'assumed'),
  luxuryShare: row(
    0.1,
    0.3,
    0.5,
    'share of the need',
    'Assumed',
    'taken beyond need when there is plenty',
    'assumed',
    {
      drawnPer: 'crop',
      note: 'direction from nitrogen trials on spinach, potato and carrot; the size is ours',
    },
  ),
  luxuryStart: single(
    4,
    'g N per m2 in 0-30 cm',
    'Assumed',
    'where taking beyond need begins',
    'assumed',
  ),
  luxuryFull: single(
    10,
    'g N per m2 in 0-30 cm',
    'Assumed',
    'where taking beyond need is full',
    'assumed',
  ),
  harvestLimit: single(
    0.9,
    'share of plant nitrogen',
    'Assumed',
    'most that a harvest can carry off',
    'assumed',
  ),
} as const;
