import { DEFECT_KINDS, type DefectKind } from '@/shared/records/inspection'

const plain = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
const initials = (kind: string): string =>
  plain(kind)
    .split(' ')
    .map((word) => word.charAt(0))
    .join('')

/**
 * The kinds that a few typed letters can mean, by the first of these that finds
 * any: the whole name, its beginning, its initials, the beginning of one of its
 * words. Nothing typed means nothing.
 */
export function kindsMeantBy(typed: string): DefectKind[] {
  const text = plain(typed)
  if (text === '') return []
  const ways: ((kind: DefectKind) => boolean)[] = [
    (kind) => plain(kind) === text,
    (kind) => plain(kind).startsWith(text),
    (kind) => initials(kind) === text,
    (kind) =>
      plain(kind)
        .split(' ')
        .some((word) => word.startsWith(text)),
  ]
  for (const way of ways) {
    const meant = DEFECT_KINDS.filter(way)
    if (meant.length > 0) return meant
  }
  return []
}

/** The one kind meant; undefined when none or several could be. */
export function kindMeantBy(typed: string): DefectKind | undefined {
  const meant = kindsMeantBy(typed)
  return meant.length === 1 ? meant[0] : undefined
}
