import { kindMeantBy } from '@/shared/inspection/typed-defect-kind'

/** A call as typed: "s", "so" or "ok" is sound; else a kind by its first letters; else what was typed, to be refused. */
export function callMeantBy(typed: string): string {
  const text = typed.trim().toLowerCase()
  if (text === 'ok' || (text !== '' && 'sound'.startsWith(text))) return 'sound'
  return kindMeantBy(text) ?? typed
}
