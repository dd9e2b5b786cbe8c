import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode, reason, worksSubject } from '@/lib/commands/inputs'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

export const withdrawRecord = defineCommand({
  name: 'withdraw-record',
  input: z.strictObject({
    programme: programmeCode.optional(),
    works: worksSubject.optional(),
    record: id,
    reason,
  }),
  async load(tx, { record: key }, { trailId }) {
    const record = await tx.record.findFirst({ where: { id: key, trailId, withdrawnAt: null } })
    if (!record) throw new Refused('This record does not count any more.')
    return record
  },
  subject: ({ kind }): RecordKind => RECORD_KINDS[kind as RecordKindKey],
  decide: ({ id: key, kind, data }, { works, reason: why }) => ({
    change: { id: key, why },
    record: {
      ...(works && { works }),
      record: key,
      kind,
      data: data as Record<string, JsonValue>,
      reason: why,
    },
  }),
  async apply(tx, { id: key, why }, { now }) {
    await tx.record.update({ where: { id: key }, data: { withdrawnAt: now, withdrawnWhy: why } })
  },
})
