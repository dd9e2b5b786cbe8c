import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import {
  correctedCells,
  correctionAsked,
  decideCorrection,
  standingOf,
  writeCorrection,
} from '@/lib/commands/corrections/correction'
import { parsedCells } from '@/lib/commands/parsed-cells'
import { id } from '@/lib/commands/inputs'
import { loadLot } from '@/lib/commands/lots/load-lot'
import { atSupplier, lotRecordedIn } from '@/lib/commands/lots/recorded-at'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { ownMember } from '@/shared/own-member'
import { LOT_TEST_COLUMNS } from '@/shared/records/correctable-columns'
import { Refused } from '@/shared/refused'

/** Other facts of a test: when, by whom, with what, under which conditions. Its readings stay as they are. */
export const correctLotTest = defineCommand({
  name: 'correct-lot-test',
  input: z.strictObject({
    ...lotRecordedIn,
    ...correctionAsked,
    test: id,
    values: correctedCells,
    instrument: id.nullable(),
    conditions: correctedCells,
  }),
  async load(tx, { test: key, instrument }, { trailId }) {
    const test = await tx.lotTest.findFirst({
      where: { id: key, trailId, withdrawnAt: null },
      include: { lot: { select: { code: true } } },
    })
    if (!test) throw new Refused('This test does not count any more.')
    const tagOf = async (named: string | null) =>
      named && (await tx.instrument.findUnique({ where: { id: named }, select: { tag: true } }))
    const { testedOn, testedBy, instrumentId, conditions } = test
    const was = await tagOf(instrumentId)
    return {
      test,
      lot: await loadLot(tx, trailId, test.lot.code),
      instrument: await tagOf(instrument),
      standing: await standingOf(tx, 'lot test', key, {
        testedOn,
        testedBy,
        instrumentId,
        instrument: was ? was.tag : null,
        conditions,
      }),
    }
  },
  decide({ test, lot, instrument, standing }, input, context) {
    const method: TestMethod | undefined = ownMember(TEST_METHODS, test.method)
    if (!method) throw new Refused('This version does not know how it was tested. Withdraw the test instead.')
    const values = parsedCells(LOT_TEST_COLUMNS, input.values, context.today, 'values')
    if (String(values['testedOn']) < lot.receivedOn)
      throw new Refused(`Lot ${lot.code} was received on ${lot.receivedOn}, after the test.`, {
        'values.testedOn': 'Before the lot was received.',
      })
    if (input.instrument && !instrument)
      throw new Refused('This instrument is not in the register.', {
        instrument: 'Choose one from the register.',
      })
    const after = {
      ...values,
      instrumentId: input.instrument,
      instrument: instrument ? instrument.tag : null,
      conditions: parsedCells(method.conditions, input.conditions, context.today, 'conditions'),
    }
    const { change, record } = decideCorrection(standing, after, input, context)
    return {
      change,
      record: { ...atSupplier(context), lot: lot.code, method: test.method, ...record },
      result: { lot: lot.code, test: test.id },
    }
  },
  apply: writeCorrection,
})
