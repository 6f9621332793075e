import { describe } from 'vitest';
import { testDecomposition } from '../testDecomposition';

describe('Nicolardot, Recous & Mary (2001), mature residues', () =>
  testDecomposition(import.meta.dirname, 'mature'));
