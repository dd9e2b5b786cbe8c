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
import { line } from '@/lib/commands/inputs'
import { atSupplier, lotRecordedIn } from '@/lib/commands/lots/recorded-at'
import { testsThatStand } from '@/lib/commands/lots/tests-that-stand'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import type { TestMethod } from '@/shared/methods/test-method'
import { ownMember } from '@/shared/own-member'
import { LOT_COLUMNS } from '@/shared/records/correctable-columns'
import { Refused } from '@/shared/refused'
import { heldBy } from '@/shared/storage/order-of-use'

/** Other values for what was noted when a lot came in, such as a supplier's result that was left out. */
export const correctLot = defineCommand({
  name: 'correct-lot',
  input: z.strictObject({
    ...lotRecordedIn,
    ...correctionAsked,
    lot: line('The lot', 40),
    values: correctedCells,
  }),
  async load(tx, { lot: code }, { trailId }) {
    const lot = await tx.lot.findUnique({
      where: { trailId_code: { trailId, code } },
      include: { allocations: { select: { quantity: true, returned: true } } },
    })
    if (!lot) throw new Refused(`There is no lot ${code} here.`)
    const { kind, part, supplier, dateCode, quantity, receivedOn, expiresOn, storage, supplierResult } = lot
    return {
      code: lot.code,
      standing: await standingOf(tx, 'lot', lot.id, {
        kind,
        part,
        supplier,
        dateCode,
        quantity,
        receivedOn,
        expiresOn,
        storage,
        supplierResult,
      }),
      tests: await testsThatStand(tx, lot.id),
      held: heldBy(lot.allocations),
    }
  },
  decide({ code, standing, tests, held }, { values, seen, reason }, context) {
    const cells = parsedCells(LOT_COLUMNS, values, context.today, 'values')
    const { temperatureC, relativeHumidityPct, packing, ...rest } = cells
    const after = {
      ...rest,
      dateCode: rest['dateCode'] ?? '',
      expiresOn: rest['expiresOn'] ?? null,
      supplierResult: rest['supplierResult'] ?? '',
      storage: { temperatureC, relativeHumidityPct, packing },
    }
    if (context.subject.kind === 'supplier' && rest['supplier'] !== context.subject.code)
      throw new Refused(`It was received from ${context.subject.code}, and stays there.`, {
        'values.supplier': `Received from ${context.subject.code}.`,
      })
    if (Number(rest['quantity']) < held)
      throw new Refused(`Programmes hold ${held} of lot ${code}. Take some back first.`, {
        'values.quantity': `At least ${held}.`,
      })
    refuseAgainstTests(tests, String(rest['kind']), String(rest['receivedOn']))
    const { change, record } = decideCorrection(standing, after, { seen, reason }, context)
    return { change, record: { ...atSupplier(context), lot: code, ...record }, result: { lot: code } }
  },
  apply: writeCorrection,
})

/** What was tested was there, and of a kind that is tested so. */
function refuseAgainstTests(
  tests: readonly { readonly method: string; readonly testedOn: string }[],
  kind: string,
  receivedOn: string,
): void {
  const early = tests.find(({ testedOn }) => testedOn < receivedOn)
  if (early)
    throw new Refused(`A test of ${early.testedOn} stands, before that day. Withdraw or correct it first.`, {
      'values.receivedOn': 'After a test of the lot.',
    })
  const odd = tests
    .map((test): TestMethod | undefined => ownMember(TEST_METHODS, test.method))
    .find((method) => method && !method.lotKinds.some((one) => one === kind))
  if (odd)
    throw new Refused(`${odd.label} stands, which is not done on a lot of kind ${kind}. Withdraw it first.`, {
      'values.kind': 'Does not go with a test of the lot.',
    })
}
