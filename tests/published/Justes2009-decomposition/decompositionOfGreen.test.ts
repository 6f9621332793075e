import { describe } from 'vitest';
import { testDecomposition } from '../testDecomposition';

describe('Justes, Mary & Nicolardot (2009), green residues', () =>
  testDecomposition(import.meta.dirname, 'green'));
