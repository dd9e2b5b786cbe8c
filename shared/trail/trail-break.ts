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
 * - `cut-off`: a seal covers entries that are no longer there;
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
  | 'resealed'

/** One place where a trail is broken, with a sentence for the reader. */
export type TrailBreak = { readonly kind: TrailBreakKind; readonly seq: number; readonly sentence: string }
