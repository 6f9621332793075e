/**
 * One step from a file of version `to - 1` to version `to`. A step that has been shipped is never
 * edited, describes the old shape in little types of its own, never imports today's schema, and no
 * retired field name is used again.
 */
export interface Migration {
  readonly to: number;
  /** what changed, for the person whose file was brought up to date */
  readonly says: string;
  readonly up: (document: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** Shipped steps in order. The first will be `to: 2`. */
export const migrations: readonly Migration[] = [];

/** True when the steps lead from version 1 to `newest` one by one, without a gap or a repeat. */
export const isUnbroken = (chain: readonly Migration[], newest: number): boolean =>
  chain.length === newest - 1 && chain.every((step, index) => step.to === index + 2);

/**
 * Brings a document of version `from` up to the end of the chain. The document is not changed.
 * A step that cannot read its document throws; the caller reports a broken file.
 */
export function migrate(
  document: Readonly<Record<string, unknown>>,
  from: number,
  chain: readonly Migration[] = migrations,
): Record<string, unknown> {
  let current: Record<string, unknown> = { ...document };
  for (const step of chain) {
    if (step.to > from) current = { ...step.up(current), schemaVersion: step.to };
  }
  return current;
}
