import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode, reason } from '@/lib/commands/inputs'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

export const withdrawRecord = defineCommand({
  name: 'withdraw-record',
  input: z.strictObject({ programme: programmeCode, record: id, reason }),
  load: (tx, { record }, { programmeId }) =>
    tx.record.findFirst({ where: { id: record, programmeId, withdrawnAt: null } }),
  decide(record, { reason: why }, { actor }) {
    if (!record) throw new Refused('This record does not count any more.')
    const { departments }: RecordKind = RECORD_KINDS[record.kind as RecordKindKey]
    if (!departments.some((department) => actor.departments.includes(department))) {
      throw new Refused('Only a department that keeps this kind of record may withdraw one.')
    }
    return {
      change: { id: record.id, why },
      record: { record: record.id, kind: record.kind, data: record.data as JsonValue, reason: why },
    }
  },
  async apply(tx, { id: key, why }, { now }) {
    await tx.record.update({ where: { id: key }, data: { withdrawnAt: now, withdrawnWhy: why } })
  },
})
