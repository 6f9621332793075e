/** Where a part of the bench runs. */
export interface Bench {
  /** top of the project, and the folder the bundled bench stands in */
  readonly top: string;
  readonly folder: string;
  /** the bundled file of `tests/bench/workers/<name>.ts` */
  worker(name: string): URL;
  /** a line for whoever waits */
  say(line: string): void;
}

/**
 * One part of `npm run bench`. A file in `tests/bench/parts` that exports one as `part` is a part;
 * its name on the command line is that of the file.
 */
export interface BenchPart {
  /** what is measured, as a heading */
  readonly title: string;
  /**
   * @returns Markdown for under the heading
   * @throws when what is measured gives another answer than it should; never because it is slow
   */
  run(bench: Bench): Promise<string>;
}
