/**
 * How a trail can be broken.
 *
 * - `malformed`: a field is missing or of the wrong kind, so nothing else can be checked;
 * - `altered`: the entry's content does not give its own hash;
 * - `foreign`: the entry belongs to another trail;
 * - `wrong-genesis`: the first entry points to something before it;
 * - `missing`: numbers are left out, or there is no entry at all;
 * - `out-of-order`: an entry stands behind one with a higher number;
 * - `duplicated`: two entries carry one number;
 * - `wrong-previous-hash`: the entry was not written after the one before it;
 * - `cut-off`: a seal covers entries that are no longer there, or the trail says that it had them;
 * - `other-end`: the trail says that it ends with another entry than it does;
 * - `resealed`: the entries are not those that a seal covered.
 */
export type TrailBreakKind =
  | 'malformed'
  | 'altered'
  | 'foreign'
  | 'wrong-genesis'
  | 'missing'
  | 'out-of-order'
  | 'duplicated'
  | 'wrong-previous-hash'
  | 'cut-off'
  | 'other-end'
  | 'resealed'

/**
 * A place where time runs backwards: the entry is older than the one before it. No break, for a
 * clock that was set back does it, but what the entries around it say of their time is to be doubted.
 */
export type ClockStep = { readonly seq: number; readonly at: string; readonly before: string }

/** One place where a trail is broken, with a sentence for the reader. */
export type TrailBreak = { readonly kind: TrailBreakKind; readonly seq: number; readonly sentence: string }
