import newYork from '../../assets/weather/new-york.json';

/** Daily weather that came with the program, one value a day from `firstDay` on. */
export interface BundledRecord {
  readonly name: string;
  readonly place: string;
  readonly credit: string;
  /** `YYYY-MM-DD` */
  readonly firstDay: string;
  readonly minimumCelsius: readonly number[];
  readonly maximumCelsius: readonly number[];
  readonly rainMillimetres: readonly number[];
}

const records: readonly BundledRecord[] = [newYork];

/** The record of that name; undefined when none came with the program. */
export const bundledRecord = (name: string): BundledRecord | undefined =>
  records.find((record) => record.name === name);
