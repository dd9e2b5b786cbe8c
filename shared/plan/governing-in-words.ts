import { formatQuantity } from '@/shared/quantity/format'
import type { Layer, GoverningRequirement } from './requirement'
import { AUTHORITIES } from './requirement'

/** Why the governing layer of a limit governs, in one or two sentences. */
export function governingInWords(governing: GoverningRequirement): string {
  const { limit, layers } = governing
  const [only, ...more] = layers
  const said = (layer: Layer) => `${layer.document}, ${formatQuantity(layer.value, limit.unit, 6)}`
  if (!only || more.length === 0) return `Default: ${governing.document}.`
  const rules = layers.find((layer) => layer.rules)
  if (!rules) throw new RangeError('A requirement has one layer that governs.')
  const relaxing = layers.find(({ relaxes }) => relaxes)
  const strictest = limit.direction === 'at most' ? 'smallest' : 'largest'
  if (!relaxing)
    return `${said(rules)}, rules because it is the strictest (${strictest}) of ${layers.length} layers.`
  const aside = layers.filter((layer) => rank(layer) > rank(relaxing))
  const left = layers.length - aside.length
  const permits =
    aside.length > 0
      ? `${relaxing.document} (${relaxing.authority}) expressly permits ${formatQuantity(relaxing.value, limit.unit, 6)}, which sets aside what stands below it: ${aside.map(said).join('; ')}.`
      : `${relaxing.document} expressly permits its value, but nothing stands below it.`
  const rest = left === 1 ? 'It rules alone.' : `Of the ${left} left, ${said(rules)}, is the strictest.`
  return `${permits} ${rest}`
}

const rank = ({ authority }: Layer): number => AUTHORITIES.indexOf(authority)
