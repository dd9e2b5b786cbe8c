import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, worksSubject } from '@/lib/commands/inputs'
import { parsedCells } from '@/lib/commands/parsed-cells'
import { recordable } from '@/lib/commands/recordable'
import { loadJudged } from '@/lib/commands/signatures/load-judged'
import { gatesShutBefore, tellsOfWork } from '@/shared/gate/shut-gates'
import type { Stage } from '@/shared/plan/stage'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'
import { keptElsewhere } from '@/shared/commands/records/kept-where'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** Adds one record of a kind, or a whole list of them: all or none. */
export const addRecord = defineCommand({
  name: 'add-record',
  input: z.strictObject({
    programme: programmeCode.optional(),
    works: worksSubject.optional(),
    kind: z.enum(Object.keys(RECORD_KINDS) as [RecordKindKey, ...RecordKindKey[]], {
      error: 'Choose what is recorded.',
    }),
    rows: z
      .array(z.record(z.string(), z.union([z.number(), z.string(), z.boolean()])))
      .min(1, 'There is nothing to record.')
      .max(5000, 'At most 5000 at once.'),
  }),
  load: async (tx, { kind: key }, context): Promise<{ readonly gatesShut?: Stage[] }> => {
    const kind: RecordKind = RECORD_KINDS[key]
    const elsewhere = keptElsewhere(kind, context.subject.kind)
    if (elsewhere) throw new Refused(elsewhere)
    if (!tellsOfWork(kind)) return {}
    const { judgement } = await loadJudged(tx, context)
    return { gatesShut: gatesShutBefore(kind.stage, judgement.gates) }
  },
  subject: (_shut, { kind }) => RECORD_KINDS[kind],
  decide({ gatesShut }, { works, kind, rows }, { newId, today }) {
    const { columns }: RecordKind = RECORD_KINDS[kind]
    const data = rows.map((row, index) => {
      const place = rows.length > 1 ? `Line ${index + 1}: ` : ''
      return recordable(parsedCells(columns, row, today, `rows.${index}`, place)) as Record<string, JsonValue>
    })
    const records = data.map((entry) => ({ id: newId(), kind, data: entry }))
    return {
      change: records,
      record: {
        ...(works && { works }),
        kind,
        ...(gatesShut && { gatesShut }),
        records: records.map(({ id, data: entry }) => ({ id, ...entry })),
      },
      result: { kind, records: records.length },
    }
  },
  async apply(tx, records, { trailId, actor, now }) {
    await tx.record.createMany({
      data: records.map((record) => ({
        ...record,
        data: record.data as object,
        trailId,
        addedById: actor.personId,
        at: now,
      })),
    })
  },
})
