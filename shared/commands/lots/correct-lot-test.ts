import { z } from 'zod'
import { lotPlace, lotRecordedAt } from '@/shared/commands/lots/lot-place'
import { correctionRecorded } from '@/shared/commands/correction-recorded'
import { defineFace } from '@/shared/commands/face'
import { methodName } from '@/shared/commands/named'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { ownMember } from '@/shared/own-member'
import { correctedInWords, testFieldsCorrected } from '@/shared/records/correction'

export const correctLotTest = defineFace({
  label: 'Correct how a lot was tested',
  done: 'Corrected how a lot was tested',
  may: { scope: 'programme', worksToo: ['supplier'], departments: ['quality'] },
  record: z.object({ ...lotRecordedAt, lot: z.string(), method: z.string(), ...correctionRecorded.shape }),
  reads: ({ lot, method, before, after, reason }) => {
    const known: TestMethod | undefined = ownMember(TEST_METHODS, method)
    return {
      subject: `lot ${lot}, ${methodName(method)}`,
      what: correctedInWords(testFieldsCorrected(known, before, after)),
      words: reason,
    }
  },
  leads: ({ atSupplier, lot }) => lotPlace(atSupplier, lot),
})
