import { published } from '@/shared/sources/provenance'
import { undetermined, type Judged, type Part, type Verdict } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { rule } from '@/shared/rules/rule'
import type { InspectionStatus } from '@/shared/statistics/sampling/switching'
import { sampledLimits, sampledMethod } from '@/shared/lot-tests/sampled-methods'
import { conditionAbout } from '@/shared/lot-tests/stated-conditions'
import { testInWords } from '@/shared/lot-tests/tests-asked'
import { allSeries, type Series } from '@/shared/sampling/sampled-series'
import { planInWords, planMeasured } from '@/shared/sampling/sampling-plan'
import { samplingReads, switchingRules, tablesNote } from '@/shared/sampling/sampling-reads'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { count } from '@/shared/rules/measure'

const SOURCE = published(
  'MIL-STD-105E 4.7 and 4.8, switching between normal, tightened and reduced inspection',
)
const LIMIT_SAYS = 'no series of a supplier’s lots on tightened inspection, and none discontinued'

const VERDICTS: Record<InspectionStatus['severity'], Verdict> = {
  normal: 'meets',
  reduced: 'meets',
  tightened: 'marginal',
  discontinued: 'fails',
}

const nothingSampled = (needed: readonly { readonly method: string }[]): Judged =>
  needed.some(({ method }) => sampledMethod(method) !== undefined)
    ? undetermined(
        'No lot is recorded of a part that is to be sampled.',
        ['a lot, and its sample'],
        LIMIT_SAYS,
      )
    : notApplicable('No part is to be tested by a sample, and none was.')

export const inspectionState = rule({
  id: 'inspection-state',
  title: 'State of inspection, by supplier and part',
  why: 'A plan protects over a series of lots, not in one: it does so only when poor lots make the next sample stricter.',
  formula: 'state by the switching rules of the scheme, from the lots before in their order',
  stage: 'evaluation',
  version: 4,
  reads: { ...samplingReads, ...sampledLimits },
  judge(inputs): Judged {
    const parts = allSeries(inputs)
      .filter(({ begun }) => begun)
      .map(partOf)
    const base = {
      limit: LIMIT_SAYS,
      sources: [SOURCE],
      notes: [
        `Switching by ${switchingRules(inputs).edition}. Every lot of the supplier and part counts once its sample has decided, whichever programme it went to; a lot offered again after rejection is to be entered as a new lot only when it was made anew.`,
        ...tablesNote(inputs),
        'The limit numbers that reduced inspection also asks for (MIL-STD-105E table VIII) are not held here: quality confirms them when it allows reduced inspection.',
      ],
    }
    if (parts.length === 0) return nothingSampled(inputs.needed)
    const spoken = spokenByWorst(parts)
    return {
      ...spoken,
      found:
        spoken.verdict === 'meets'
          ? `Every series (${parts.length}) is on normal or reduced inspection.`
          : spoken.found,
      measured: { series: count(parts.length) },
      working: parts.map(({ subject, found }) => ({ label: subject, result: found })),
      ...base,
    }

    function partOf({ test, lots, next, nextPlan }: Series): Part {
      const { lot } = lots.findLast(({ own }) => own)!
      const { quantity } = lots[lots.length - 1]!.lot
      const decided = lots.filter(({ sample }) => sample?.outcome.decided !== undefined)
      const failed = decided.filter(({ sample }) => sample?.outcome.decided === 'rejected').length
      const coming = nextPlan ? `the next lot of ${quantity}: ${planInWords(nextPlan)}` : 'no lot is taken'
      return {
        subject: `${lot.supplier}, ${lot.part}, ${testInWords(test)}`,
        about: {
          supplier: lot.supplier,
          part: lot.part,
          method: test.method,
          ...conditionAbout(test.condition, test.stated),
        },
        verdict: decided.length === 0 ? 'undetermined' : VERDICTS[next.severity],
        measured: {
          inspection: next.severity,
          reason: next.reason,
          decided: count(decided.length),
          rejected: count(failed),
          ...(nextPlan && { nextLot: count(quantity, 'pieces'), ...planMeasured(nextPlan) }),
        },
        found: `${next.severity} inspection after ${decided.length} ${decided.length === 1 ? 'lot' : 'lots'}, ${failed} rejected. ${next.because} For ${coming}.`,
        remedy:
          next.severity === 'discontinued'
            ? { message: 'Record the corrective action of the supplier once quality has accepted it.' }
            : undefined,
      }
    }
  },
})
