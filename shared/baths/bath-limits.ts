import { BATH_CONSTITUENTS, NEW_SOLDER_MAX } from '@/shared/materials/bath-constituents'
import { BATH_LIMITS, type BathLimits, type Contaminant } from '@/shared/materials/bath-contaminants'
import { bathSumMax, leadFreeBathLimits, tinLeadBathLimits } from '@/shared/plan/limits/control-bath'
import { bathLimitEdition, newSolderCopper } from '@/shared/plan/parameters/control-bath'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import type { Log } from '@/shared/records/log'
import { optional, type Inputs } from '@/shared/rules/rule'
import { guarded } from '@/shared/logs/logged-window'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import { limitReads, metalRequirements, questionsOn, type BathQuestion } from './bath-questions'

/** What the limits of a bath follow from. */
export const bathLimitReads = {
  family: alloyFamily,
  alloy: optional(solderAlloy),
  edition: optional(bathLimitEdition),
  sumMax: bathSumMax,
  guard: processWindowGuard,
  ...limitReads('tin-lead', tinLeadBathLimits),
  ...limitReads('lead-free', leadFreeBathLimits),
}
export const newCopperRead = { newCopper: optional(newSolderCopper) }

type BathInputs = Inputs<typeof bathLimitReads> & Partial<Inputs<typeof newCopperRead>>

/** The edition that is chosen; undefined where the strictest of all rules. */
export const chosenEdition = ({ edition }: Pick<BathInputs, 'edition'>): BathLimits | undefined =>
  edition && edition !== 'strictest' ? (BATH_LIMITS[edition] as BathLimits) : undefined

/** Everything the analyses of these baths are held against; metals that belong into the alloy are left out. */
export function bathQuestions(inputs: BathInputs, logs: readonly Log[]): BathQuestion[] {
  const { family, alloy, newCopper, sumMax } = inputs
  const chosen = chosenEdition(inputs)
  const onPurpose: readonly string[] = alloy ? BATH_CONSTITUENTS[alloy].onPurpose : []
  const byName = inputs as unknown as Readonly<Record<string, GoverningRequirement | undefined>>
  const metals = metalRequirements(family, byName, chosen).filter(({ metal }) => !onPurpose.includes(metal))
  const sum = family === 'tin-lead' && (!chosen || chosen.sumMax !== undefined) ? sumMax : undefined
  const addedOf = (metal: Contaminant): number =>
    metal === 'copper' && newCopper !== undefined ? newCopper : NEW_SOLDER_MAX.max[metal]
  return logs
    .flatMap((log) => questionsOn(log, metals, addedOf, sum))
    .map((question) => ({ ...question, window: guarded(question.window, inputs.guard) }))
}
