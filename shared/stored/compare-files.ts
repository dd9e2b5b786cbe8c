import type { Sha256 } from '@/shared/trail/sha256'
import type { NamedFile } from './expected-rows'
import { keptText } from './kept-text'
import type { ColumnDifference, StoredBreak } from './stored-break'

/** What the store found when it read a file whole. */
export type FileState =
  | { readonly kind: 'whole'; readonly size: number }
  | { readonly kind: 'missing' }
  | { readonly kind: 'changed' }
  | { readonly kind: 'unreadable' }

/** What the register of files says of one. */
export interface RegisteredFile {
  readonly size: unknown
  readonly mediaType: unknown
}

/** A file whose bytes are not those that the entry names; undefined when they are. */
export const fileBreak = (sha256: string, seq: number, { kind }: FileState): StoredBreak | undefined =>
  kind === 'whole' ? undefined : { kind: `file-${kind}`, seq, sha256 }

/** What the register says other than the entry does, or the file itself; undefined when all agree. */
export function compareRegister(
  sha256: string,
  { seq, size, mediaType }: NamedFile,
  registered: RegisteredFile | undefined,
  state: FileState,
  hash: Sha256,
): StoredBreak | undefined {
  const measured = state.kind === 'whole' ? state.size : undefined
  const recorded = { size: size ?? measured, mediaType }
  const differences: ColumnDifference[] = (['size', 'mediaType'] as const).flatMap((column) => {
    if (registered && recorded[column] === undefined) return []
    const says = keptText(recorded[column] ?? null, hash)
    const stands = registered ? keptText(registered[column], hash) : 'no row'
    return says === stands ? [] : [{ column, recorded: says, stored: stands }]
  })
  return differences.length > 0 ? { kind: 'file-register', seq, sha256, differences } : undefined
}
