import { createContext } from 'react';
import type { DayNumber } from '../../core/days';

/** The day that is read: only what says a value or marks the day follows it, not the drawings. */
export const DayRead = createContext<DayNumber>(0);
