/** Why a text was not taken as a garden. Nothing is changed by a refused text. */
export type ParseFailure =
  /** not JSON; line and column (from 1) of the first place that cannot be read */
  | { readonly kind: 'not-json'; readonly line: number; readonly column: number }
  /** JSON, but not a garden of ours */
  | { readonly kind: 'not-a-garden' }
  /** written by a newer program; `version` is the file's, `known` the newest this program reads */
  | { readonly kind: 'newer'; readonly version: number; readonly known: number }
  /** ours, but a value is missing, of the wrong sort, or beyond belief; `where` as "beds 3, areaM2" */
  | { readonly kind: 'broken'; readonly where: string; readonly what: string }
  /** more text, or deeper nesting, than any garden has */
  | { readonly kind: 'too-large'; readonly limit: number; readonly unit: 'characters' | 'levels' }
  /** something points at a bed, lawn, mowing ... that is not there */
  | { readonly kind: 'dangling'; readonly where: string; readonly what: string };
