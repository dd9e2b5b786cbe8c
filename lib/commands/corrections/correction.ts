import { z } from 'zod'
import type { Context } from '@/lib/commands/command'
import { programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { recordable } from '@/lib/commands/recordable'
import type { Transaction } from '@/lib/db/transaction'
import type { Corrected, CorrectedValues } from '@/shared/records/correction'
import { Refused } from '@/shared/refused'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'

/** What every correction is asked with; `seen` is how often it had been corrected when the person opened it. */
export const correctionAsked = {
  seen: wholeNumber('The correction', 0, 1_000_000),
  reason,
} as const

/** The same, of something recorded in a programme. */
export const correctionInput = { programme: programmeCode, ...correctionAsked } as const

export const correctedCells = z.record(z.string(), z.union([z.number(), z.string(), z.boolean()]))

/** What stands of something recorded: as it was recorded, or as its newest correction says. */
export interface Standing {
  readonly of: Corrected
  readonly subjectId: string
  readonly values: CorrectedValues
  /** The newest correction, where there is one. */
  readonly newest: { readonly number: number; readonly authorName: string; readonly reason: string } | null
}

/** The values that stand, given those that were recorded. */
export async function standingOf(
  tx: Transaction,
  of: Corrected,
  subjectId: string,
  recorded: CorrectedValues,
): Promise<Standing> {
  const newest = await tx.correction.findFirst({ where: { subjectId }, orderBy: { number: 'desc' } })
  return { of, subjectId, values: (newest?.values as CorrectedValues | undefined) ?? recorded, newest }
}

/** A correction, decided: what is to be written, and what the entry says of it. */
export function decideCorrection(
  { of, subjectId, values: before, newest }: Standing,
  after: CorrectedValues,
  { seen, reason: why }: { readonly seen: number; readonly reason: string },
  { newId }: Pick<Context, 'newId'>,
) {
  const number = newest?.number ?? 0
  if (number !== seen)
    throw new Refused(
      `It was corrected meanwhile by ${newest?.authorName ?? 'somebody'} (“${newest?.reason ?? ''}”). What you typed is still here; look at the page again, and save again to replace it.`,
      { seen: String(number) },
    )
  const [was, is] = [before, after].map((values) => recordable(values) as Record<string, JsonValue>) as [
    Record<string, JsonValue>,
    Record<string, JsonValue>,
  ]
  if (canonicalJson(was) === canonicalJson(is))
    throw new Refused('Nothing differs from what stands already. Nothing was changed.')
  const correction = { id: newId(), of, subjectId, number: number + 1, before: was, values: is, reason: why }
  return {
    change: correction,
    record: {
      correction: correction.id,
      of,
      subjectId,
      number: correction.number,
      before: was,
      after: is,
      reason: why,
    },
  }
}

export async function writeCorrection(
  tx: Transaction,
  { before, values, ...correction }: ReturnType<typeof decideCorrection>['change'],
  { trailId, actor, now }: Context,
): Promise<void> {
  await tx.correction.create({
    data: {
      ...correction,
      before: before as object,
      values: values as object,
      trailId,
      authorId: actor.personId,
      authorName: actor.name,
      at: now,
    },
  })
}
