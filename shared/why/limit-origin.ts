import type { ProgrammeState } from '@/shared/gate/programme-state'
import { governingInWords } from '@/shared/plan/governing-in-words'
import { governingRequirement, isStatedLayer, type Layer, type Limit } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { broughtBy } from './brought-by'
import type { Origins } from './origins'
import type { WhyStep } from './step'

/** A limit in force: which layer rules and why, and who stated each layer on what grounds. */
export function limitOrigin(limit: Limit, state: ProgrammeState, origins: Origins): WhyStep {
  const governing = governingRequirement(limit, state.facts.requirements)
  return {
    what: limit.label,
    says: `${limit.direction} ${formatQuantity(governing.value, limit.unit, 6)}`,
    lines: [
      governingInWords(governing),
      ...(governing.relaxed ? ['Looser than the default.'] : []),
      ...(governing.conflict ? ['Two layers of one authority disagree; the stricter rules.'] : []),
    ],
    place: { kind: 'limit', limit: limit.key },
    rests: governing.layers.map((layer) => layerStep(limit, layer, state, origins)),
  }
}

function layerStep(limit: Limit, layer: Layer, state: ProgrammeState, origins: Origins): WhyStep {
  const { document, authority, value, rules } = layer
  const step = {
    what: `${document}${isStatedLayer(layer) && layer.clause ? `, ${layer.clause}` : ''} (${authority})`,
    says: `${formatQuantity(value, limit.unit, 6)}${rules ? ', in force' : ', overridden'}`,
  }
  if (!isStatedLayer(layer))
    return { ...step, lines: [`The default that comes with the plan; ${limit.byDefault.from.how}.`] }
  const stated = origins.requirements.get(layer.id)
  const { lesson } = layer
  if (!stated) return step
  return {
    ...step,
    by: { name: stated.author, at: stated.at },
    words: stated.reason,
    recorded: { at: stated.at, name: layer.id },
    ...(lesson && { lines: [`Brought by lesson ${lesson.number} of ${lesson.programme}.`] }),
    ...(stated.companyRule !== null && {
      lines: ['Taken over from the company rules.'],
      place: { kind: 'of the works', subject: { kind: 'company-rules', code: 'company-rules' } } as const,
    }),
    rests: broughtBy(stated, { limit: limit.key }, state, origins),
  }
}
