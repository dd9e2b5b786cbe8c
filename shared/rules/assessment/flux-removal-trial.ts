import { ionicResidueMax, IONIC_RESIDUE_BY_EDITION } from '@/shared/plan/limits/assessment-residue'
import { cleanlinessEdition } from '@/shared/plan/parameters/assessment-residue'
import { fluxResidue } from '@/shared/plan/parameters/solder'
import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import { ionicResidueGuard } from '@/shared/plan/limits/assessment-guards'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { governingUnder } from '@/shared/plan/edition-requirement'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { recordsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { measure } from '@/shared/rules/measure'

type Trial = RecordOf<'flux-removal'>

export const fluxRemovalTrial = rule({
  id: 'flux-removal-trial',
  title: 'Flux removal, before and after',
  why: 'Cleaning that only spreads the residue looks the same as cleaning that removes it. The same board measured before and after tells them apart.',
  formula: 'residue after cleaning ≤ most, and less than before; none plain to see',
  stage: 'assessment',
  version: 3,
  reads: {
    residue: optional(fluxResidue),
    edition: optional(cleanlinessEdition),
    max: ionicResidueMax,
    guard: ionicResidueGuard,
    trials: recordsOf('flux-removal', 'flux removal trials'),
  },
  judge({ residue, edition, max, guard, trials }): Judged {
    if (trials.length === 0)
      return residue === 'removed'
        ? undetermined(
            'No trial of the cleaning is recorded: measure a board before and after by the same extract.',
            ['a flux removal trial'],
          )
        : residue === 'stays'
          ? notApplicable('The residue stays on the board, and no cleaning was tried.')
          : undetermined('Whether the residue is removed is not specified, and no cleaning was tried.', [
              fluxResidue.label,
            ])
    const governing =
      edition === 'j-std-001' || edition === 'nasa-8739'
        ? governingUnder(max, IONIC_RESIDUE_BY_EDITION[edition])
        : max
    return judgedByParts({
      parts: trials.map((trial) => judgeTrial(trial, governing.value, guard.value / 100)),
      noun: 'trials',
      limit: `At most ${formatQuantity(governing.value, 'µg/cm²')} after cleaning (${governingName(governing)}), less than before, and no residue plain to see.`,
      working: trials.map((trial) => ({
        label: `${trial.assembly}, ${trial.triedOn}`,
        formula: 'removed = 1 − after / before',
        numbers: `1 − ${trial.afterUgPerCm2} / ${trial.beforeUgPerCm2}`,
        result:
          removedPct(trial) === undefined ? 'nothing to remove' : formatQuantity(removedPct(trial)!, '%', 3),
      })),
      sources: [sourceOf(governing)],
      notes: [
        'Before and after must be extracted by the same method, or the difference tells of the method.',
      ],
      cautions: [
        'Cleaning solvents burn or harm by their vapour: safety data sheets and local codes rule on ventilation, gloves and waste.',
      ],
    })
  },
})

const removedPct = ({ beforeUgPerCm2, afterUgPerCm2 }: Trial): number | undefined =>
  beforeUgPerCm2 > 0 ? (1 - afterUgPerCm2 / beforeUgPerCm2) * 100 : undefined

function judgeTrial(trial: Trial, limit: number, guardShare: number): Part {
  const { assembly, triedOn, cleaning, beforeUgPerCm2, afterUgPerCm2, residue } = trial
  const named = {
    subject: `${assembly}, ${triedOn}`,
    about: { assembly, triedOn },
    measured: { before: measure(beforeUgPerCm2, 'µg/cm²'), cleaning, residue },
  }
  const margin: Margin = {
    found: afterUgPerCm2,
    limit,
    unit: 'µg/cm²',
    direction: 'at most',
    guardBand: guardShare * limit,
  }
  const printed = formatAgainst(afterUgPerCm2, limit, 'µg/cm²').found
  const found = `${formatNumber(beforeUgPerCm2)} before, ${printed} after (${cleaning})`
  const remedy = {
    message: 'Fresh agent, longer or warmer as its maker allows, a cleaner last rinse; then try again.',
  }
  if (residue === 'plain')
    return { ...named, verdict: 'fails', found: `${found}; residue is plain to see.`, margin, remedy }
  if (beforeUgPerCm2 === 0 && afterUgPerCm2 === 0)
    return {
      ...named,
      verdict: 'undetermined',
      found: `${found}: there was nothing to remove, so the trial shows nothing of the cleaning.`,
      remedy: { message: 'Try it on a board soldered and not cleaned.' },
    }
  if (afterUgPerCm2 >= beforeUgPerCm2)
    return { ...named, verdict: 'fails', found: `${found}; cleaning made it no cleaner.`, margin, remedy }
  const verdict = verdictOn(margin)
  if (verdict === 'fails') return { ...named, verdict, found: `${found}.`, margin, remedy }
  if (residue === 'traces')
    return { ...named, verdict: 'marginal', found: `${found}; traces are left away from contacts.`, margin }
  return { ...named, verdict, found: `${found}.`, margin }
}
