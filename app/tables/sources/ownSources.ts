import { source } from './shape';

/** What is nobody's published number. */
export const ownSources = {
  Assumed: source('Mowings', null, 'Our own judgement', 'no source: treat as an estimate'),
  OwnCorrection: source(
    'Mowings',
    null,
    'Our own correction of a published relation',
    'set so that measured releases in the field and in long incubations are met on both sides',
  ),
  CommonPractice: source('Growers', null, 'What growers do', 'no trial behind it'),
  Recalled: source(
    'Mowings',
    null,
    'Recalled agronomic knowledge',
    'not verified in any source: treat as an estimate',
  ),
  Definition: source('Mowings', null, 'Exact by definition', 'arithmetic'),
} as const;
