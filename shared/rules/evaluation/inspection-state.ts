import { published } from '@/shared/sources/provenance'
import { undetermined, type Judged, type Part, type Verdict } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { rule } from '@/shared/rules/rule'
import type { InspectionStatus } from '@/shared/statistics/sampling/switching'
import { askedOf, isSampled, sampledLimits, sampledMethods } from '@/shared/sampling/asked-methods'
import { seriesOf, type Series } from '@/shared/sampling/lot-sampling'
import type { SampledMethod } from '@/shared/sampling/sampled-method'
import { planForLot, planInWords, planMeasured } from '@/shared/sampling/sampling-plan'
import { conditionAbout } from '@/shared/sampling/stated-conditions'
import { testInWords } from '@/shared/sampling/test-asked'
import { tablesNote } from '@/shared/sampling/sampling-sources'
import { contextFrom, samplingReads } from '@/shared/sampling/sampling-reads'
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
  needed.some(({ method }) => isSampled(method))
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
    const context = contextFrom(inputs)
    const isAsked = askedOf(inputs.needed)
    const parts = sampledMethods(inputs).flatMap(({ method, limit }) =>
      seriesOf(inputs.lots, method, limit, context)
        .filter(({ lots }) =>
          lots.some(({ lot, sample }) => sample !== undefined || isAsked(lot, method.key)),
        )
        .map((series) => partOf(series, method)),
    )
    const base = {
      limit: LIMIT_SAYS,
      sources: [SOURCE],
      notes: [
        `Switching by ${context.switching.edition}. A lot counts once its sample has decided; a lot offered again after rejection is to be entered as a new lot only when it was made anew.`,
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

    function partOf({ lots, next, condition, stated, settings }: Series, method: SampledMethod): Part {
      const { lot } = lots[lots.length - 1]!
      const decided = lots.filter(({ sample }) => sample?.outcome.decided !== undefined)
      const failed = decided.filter(({ sample }) => sample?.outcome.decided === 'rejected').length
      const inUse = next.severity === 'discontinued' ? 'tightened' : next.severity
      const plan = planForLot(lot.quantity, inUse, settings, { measured: method.fitsVariables })
      const nextPlan =
        next.severity === 'discontinued'
          ? 'no lot is taken'
          : `the next lot of ${lot.quantity}: ${planInWords(plan)}`
      return {
        subject: `${lot.supplier}, ${lot.part}, ${testInWords({ method: method.key, condition, stated })}`,
        about: {
          supplier: lot.supplier,
          part: lot.part,
          method: method.key,
          ...conditionAbout(condition, stated),
        },
        verdict: decided.length === 0 ? 'undetermined' : VERDICTS[next.severity],
        measured: {
          inspection: next.severity,
          reason: next.reason,
          decided: count(decided.length),
          rejected: count(failed),
          ...(next.severity !== 'discontinued' && {
            nextLot: count(lot.quantity, 'pieces'),
            ...planMeasured(plan),
          }),
        },
        found: `${next.severity} inspection after ${decided.length} ${decided.length === 1 ? 'lot' : 'lots'}, ${failed} rejected. ${next.because} For ${nextPlan}.`,
        remedy:
          next.severity === 'discontinued'
            ? { message: 'Record the corrective action of the supplier once quality has accepted it.' }
            : undefined,
      }
    }
  },
})
