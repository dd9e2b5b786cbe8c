import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import {
  correctedCells,
  correctionInput,
  decideCorrection,
  standingOf,
  writeCorrection,
} from '@/lib/commands/corrections/correction'
import { parsedCells } from '@/lib/commands/parsed-cells'
import { id, programmeCode, worksSubject } from '@/lib/commands/inputs'
import type { CorrectedValues } from '@/shared/records/correction'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'
import { Refused } from '@/shared/refused'

/** Other values for a record of any kind. */
export const correctRecord = defineCommand({
  name: 'correct-record',
  input: z.strictObject({
    ...correctionInput,
    programme: programmeCode.optional(),
    works: worksSubject.optional(),
    record: id,
    values: correctedCells,
  }),
  async load(tx, { record: key }, { trailId }) {
    const record = await tx.record.findFirst({ where: { id: key, trailId, withdrawnAt: null } })
    if (!record) throw new Refused('This record does not count any more.')
    return {
      kind: record.kind as RecordKindKey,
      standing: await standingOf(tx, 'record', key, record.data as CorrectedValues),
    }
  },
  subject: ({ kind }): RecordKind => RECORD_KINDS[kind],
  decide({ kind, standing }, { works, values, seen, reason }, context) {
    const { columns }: RecordKind = RECORD_KINDS[kind]
    const after = parsedCells(columns, values, context.today, 'values')
    const { change, record } = decideCorrection(standing, after, { seen, reason }, context)
    return {
      change,
      record: { ...(works && { works }), kind, ...record },
      result: { kind, record: standing.subjectId },
    }
  },
  apply: writeCorrection,
})
