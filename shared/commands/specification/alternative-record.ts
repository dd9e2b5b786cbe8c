import { z } from 'zod'
import { costLineRecord } from '@/shared/commands/cost-line-record'
import { recordedValue } from '@/shared/commands/recorded-value'
import { boundInWords, limitName, parameterName, valueInBrief } from '@/shared/commands/named'
import { revisionInBrief } from '@/shared/commands/specification/revision-in-brief'
import { lineInWords } from '@/shared/gate/answer-in-words'

export const statedLimitRecord = z.object({
  limit: z.string(),
  authority: z.string(),
  document: z.string(),
  clause: z.string(),
  value: z.number(),
})

/** An alternative as an entry of an open study's revision records it. */
export const alternativeRecord = z.object({
  name: z.string(),
  note: z.string(),
  values: z.record(z.string(), recordedValue),
  limits: z.array(statedLimitRecord),
  costs: z.array(costLineRecord),
  defectsPerMillion: z.number().nullable(),
})
type AlternativeRecorded = z.output<typeof alternativeRecord>

/** "customer asks at most 0.2 mm" without its reason. */
export const statedInWords = ({ limit, value, document }: z.output<typeof statedLimitRecord>): string =>
  `${limitName(limit)}: ${boundInWords(limit, value)} by ${document}`

const costInWords = (line: AlternativeRecorded['costs'][number]): string =>
  lineInWords({ ...line, alternative: null })

/** All that an alternative says, each part with its name. */
export const alternativeInWords = ({ name, values, limits, costs }: AlternativeRecorded): string =>
  [
    name,
    ...Object.entries(values).map(([key, value]) => `${parameterName(key)}: ${valueInBrief(key, value)}`),
    ...limits.map(statedInWords),
    ...costs.map(costInWords),
  ].join('; ')

/** What a change made of it, as before → after. */
export function alternativeChangeInWords(before: AlternativeRecorded, after: AlternativeRecorded): string {
  const keys = [...new Set([...Object.keys(before.values), ...Object.keys(after.values)])]
  const values = keys
    .filter((key) => JSON.stringify(before.values[key]) !== JSON.stringify(after.values[key]))
    .map(
      (key) =>
        `${parameterName(key)}: ${revisionInBrief(key, before.values[key] ?? null, after.values[key] ?? null)}`,
    )
  const lists = [
    differing('limits', before.limits.map(statedInWords), after.limits.map(statedInWords)),
    differing('own costs', before.costs.map(costInWords), after.costs.map(costInWords)),
    differing('note', [before.note], [after.note]),
    differing(
      'defects per million joints',
      [String(before.defectsPerMillion ?? 'as its process')],
      [String(after.defectsPerMillion ?? 'as its process')],
    ),
  ]
  return [...values, ...lists.filter(Boolean)].join('; ') || 'what it rests on'
}

function differing(what: string, before: readonly string[], after: readonly string[]): string {
  const [was, is] = [before.join(', ') || 'none', after.join(', ') || 'none']
  return was === is ? '' : `${what}: ${was} → ${is}`
}
