import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { jsonValue, line, programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { checkedValue, parameterNamed } from '@/lib/commands/specification/checked-value'
import { writeRevisions } from '@/lib/commands/specification/write-revisions'
import { Refused } from '@/shared/refused'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'

/**
 * Gives a parameter a new value. `seen` is the revision the person had before
 * them (0 for none): when another came between, they are told what it says.
 */
export const reviseParameter = defineCommand({
  name: 'revise-parameter',
  input: z.strictObject({
    programme: programmeCode,
    parameter: line('The parameter'),
    value: jsonValue,
    seen: wholeNumber('The revision', 0, 1_000_000),
    reason,
  }),
  async load(tx, { parameter: key }, { programmeId }) {
    const parameter = parameterNamed(key)
    const current = await tx.revision.findFirst({
      where: { programmeId, parameter: key },
      orderBy: { number: 'desc' },
    })
    return { parameter, current }
  },
  subject: ({ parameter }) => parameter,
  decide({ parameter, current }, { parameter: key, value, seen, reason: why }) {
    const clean = checkedValue(parameter, value)
    const number = current?.number ?? 0
    if (number !== seen) {
      throw new Refused(
        `${parameter.label} was revised meanwhile: it now reads ${canonicalJson(current?.value as JsonValue)} (revision ${number}, “${current?.reason}”). What you typed is still here; save again to replace it.`,
        { seen: String(number) },
      )
    }
    if (current && canonicalJson(current.value as JsonValue) === canonicalJson(clean)) {
      throw new Refused('This is the value it has already. Nothing was changed.')
    }
    return {
      change: { parameter: key, number: number + 1, value: clean, reason: why },
      record: {
        parameter: key,
        label: parameter.label,
        revision: number + 1,
        value: clean,
        before: (current?.value as JsonValue | undefined) ?? null,
        reason: why,
      },
      result: { revision: number + 1 },
    }
  },
  async apply(tx, revision, { programmeId, actor, now }) {
    await writeRevisions(tx, [revision], { programmeId, authorId: actor.personId, at: now })
  },
})
