/** The answer of anything that can fail for a reason a person could mend. A broken promise of our own is thrown instead. */
export type Result<Value, Failure> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly error: Failure };

export const success = <Value>(value: Value): { ok: true; value: Value } => ({ ok: true, value });
export const failure = <Failure>(error: Failure): { ok: false; error: Failure } => ({
  ok: false,
  error,
});

/** Makes a `switch` over kinds exhaustive: a forgotten kind does not compile. */
export function assertNever(value: never): never {
  throw new Error(`Unexpected case: ${JSON.stringify(value)}`);
}
