import type { Finding, Margin, Verdict } from '@/shared/rules/finding'
import { VERDICTS } from '@/shared/rules/finding'
import { canonicalJson } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'
import { fullData } from './finding-data'
import type { PlannedItem } from './programme-state'

/** What one finding found, in as much as a later look has to be compared with it. */
export interface FoundThen {
  readonly rule: string
  readonly margin: Pick<Margin, 'found' | 'limit' | 'unit' | 'direction'> | null
  /** How many of its parts had each verdict. */
  readonly parts: Readonly<Partial<Record<Verdict, number>>>
  /** SHA-256 of all that it found, without a sentence. */
  readonly data: string
}

/** What an item's findings found, kept beside an approval as canonical JSON. It is not part of what is signed. */
export const foundText = (item: PlannedItem, findings: ReadonlyMap<string, Finding>): string =>
  canonicalJson(
    item.definition.rules.flatMap(({ id }) => {
      const finding = findings.get(id)
      return finding ? [jsonOf(foundNow(finding))] : []
    }),
  )

const jsonOf = ({ margin, parts, ...rest }: FoundThen) => ({
  ...rest,
  margin: margin && { ...margin },
  parts: { ...parts },
})

/** One finding as it is found now. */
export function foundNow(finding: Finding): FoundThen {
  const { rule, margin, parts = [] } = finding
  return {
    rule,
    margin: margin && hasNumbers(margin) ? marginOf(margin) : null,
    parts: Object.fromEntries(
      VERDICTS.map((verdict) => [verdict, parts.filter((part) => part.verdict === verdict).length]).filter(
        ([, count]) => count,
      ),
    ),
    data: sha256(fullData(finding)),
  }
}

const hasNumbers = ({ found, limit }: Margin): boolean => Number.isFinite(found) && Number.isFinite(limit)

/** Zero without a sign, which canonical JSON asks for. */
const marginOf = ({ found, limit, unit, direction }: Margin) => ({
  found: found + 0,
  limit: limit + 0,
  unit,
  direction,
})

export const readFound = (text: string): readonly FoundThen[] => JSON.parse(text) as FoundThen[]
