import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, line } from '@/lib/commands/inputs'
import { loadLot } from '@/lib/commands/lots/load-lot'
import { atSupplier, lotRecordedIn } from '@/lib/commands/lots/recorded-at'
import { batchRecord, readingsInput, refuseBadReadings, sourceFile } from '@/lib/commands/readings-input'
import { claimFile } from '@/lib/evidence/claim-file'
import { calendarDate } from '@/shared/columns/calendar-date'
import { rowSchema } from '@/shared/columns/column-schema'
import { TEST_METHODS, type TestMethodKey } from '@/shared/methods/test-methods'
import type { TestMethod } from '@/shared/methods/test-method'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** Records one test of a lot with all its readings, or nothing. */
export const testLot = defineCommand({
  name: 'test-lot',
  input: z.strictObject({
    ...lotRecordedIn,
    lot: line('The lot', 40),
    method: z.enum(Object.keys(TEST_METHODS) as [TestMethodKey, ...TestMethodKey[]], {
      error: 'Choose how it was tested.',
    }),
    testedOn: calendarDate('The date of the test'),
    testedBy: line('Who tested', 80),
    instrument: id.nullable(),
    conditions: z.record(z.string(), z.union([z.number(), z.string(), z.boolean()])),
    readings: readingsInput,
    file: sourceFile,
  }),
  async load(tx, { lot, instrument, file }, { trailId, actor }) {
    return {
      lot: await loadLot(tx, trailId, lot),
      instrument:
        instrument && (await tx.instrument.findUnique({ where: { id: instrument }, select: { tag: true } })),
      stored: file ? await claimFile(tx, file, { personId: actor.personId, trailId }) : null,
    }
  },
  decide({ lot, instrument, stored }, input, { newId, today, subject }) {
    const method: TestMethod = TEST_METHODS[input.method]
    if (!method.lotKinds.includes(lot.kind))
      throw new Refused(`${method.label} is not done on a lot of kind ${lot.kind}.`, {
        method: 'Choose another method.',
      })
    if (input.testedOn > today)
      throw new Refused('A test cannot lie in the future.', { testedOn: 'This date lies in the future.' })
    if (input.testedOn < lot.receivedOn)
      throw new Refused(`Lot ${lot.code} was received on ${lot.receivedOn}, after the test.`, {
        testedOn: 'Before the lot was received.',
      })
    if (input.instrument && !instrument)
      throw new Refused('This instrument is not in the register.', {
        instrument: 'Choose one from the register.',
      })
    if (input.file && !stored)
      throw new Refused('The file did not arrive. Upload it again.', { file: 'Upload it again.' })
    const conditions = rowSchema(method.conditions).safeParse(input.conditions)
    if (!conditions.success) {
      const fields = Object.fromEntries(
        conditions.error.issues.map(({ path, message }) => [`conditions.${path.join('.')}`, message]),
      )
      throw new Refused(Object.values(fields)[0] ?? 'The conditions cannot be read.', fields)
    }
    refuseBadReadings(input.readings, method.columns)
    const test = {
      id: newId(),
      lotId: lot.id,
      method: input.method,
      testedOn: input.testedOn,
      testedBy: input.testedBy,
      instrumentId: input.instrument,
    }
    const batch = newId()
    const kept = JSON.parse(JSON.stringify(conditions.data)) as Record<string, JsonValue>
    return {
      change: {
        batch,
        test: { ...test, conditions: kept as object },
        readings: input.readings,
        file: input.file,
      },
      record: {
        ...atSupplier({ subject }),
        ...test,
        lot: lot.code,
        instrument: instrument ? instrument.tag : null,
        conditions: kept,
        ...batchRecord(batch, input.readings, input.file, stored),
      },
      result: { lot: lot.code, test: test.id },
    }
  },
  async apply(tx, { batch, test, readings, file }, { trailId, actor, now }) {
    await tx.lotTest.create({ data: { ...test, trailId, addedById: actor.personId, at: now } })
    await tx.readingBatch.create({
      data: {
        id: batch,
        trailId,
        lotTestId: test.id,
        count: readings.count,
        readings: readings as object,
        sha256: file,
        addedById: actor.personId,
        at: now,
      },
    })
  },
})
