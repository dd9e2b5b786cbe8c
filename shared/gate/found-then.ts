import type { Finding, Margin, Part, Verdict } from '@/shared/rules/finding'
import { canonicalJson } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'
import { fullData, partData } from './finding-data'
import type { PlannedItem } from './programme-state'

/** What one finding found, in as much as a later look has to be compared with it. */
export interface FoundThen {
  readonly rule: string
  readonly margin: FoundMargin | null
  readonly parts: readonly FoundPart[]
  /** SHA-256 of all that it found, without a sentence. */
  readonly data: string
}

/** The same of one of its parts. */
export interface FoundPart {
  /** What it is about, as canonical JSON, or its name. */
  readonly about: string
  readonly verdict: Verdict
  readonly margin: FoundMargin | null
  readonly data: string
}

export type FoundMargin = Readonly<Pick<Margin, 'found' | 'limit' | 'unit' | 'direction'>>

/** What an item's findings found, kept beside an approval as canonical JSON. It is not part of what is signed. */
export const foundText = (item: PlannedItem, findings: ReadonlyMap<string, Finding>): string =>
  canonicalJson(
    item.definition.rules.flatMap(({ id }) => {
      const finding = findings.get(id)
      return finding ? [asJson(foundNow(finding))] : []
    }),
  )

export const readFound = (text: string): readonly FoundThen[] => JSON.parse(text) as FoundThen[]

/** One finding as it is found now. */
export const foundNow = (finding: Finding): FoundThen => ({
  rule: finding.rule,
  margin: marginOf(finding.margin),
  parts: (finding.parts ?? []).map(partNow),
  data: sha256(fullData(finding)),
})

const partNow = (part: Part): FoundPart => ({
  about: part.about ? canonicalJson({ ...part.about }) : part.subject,
  verdict: part.verdict,
  margin: marginOf(part.margin),
  data: sha256(canonicalJson(partData(part))),
})

/** Nothing where a number is missing; zero without a sign, which canonical JSON asks for. */
const marginOf = (margin: Margin | undefined): FoundMargin | null =>
  margin && Number.isFinite(margin.found) && Number.isFinite(margin.limit)
    ? {
        found: margin.found + 0,
        limit: margin.limit + 0,
        unit: margin.unit,
        direction: margin.direction,
      }
    : null

const asJson = ({ margin, parts, ...rest }: FoundThen) => ({
  ...rest,
  margin: margin && { ...margin },
  parts: parts.map((part) => ({ ...part, margin: part.margin && { ...part.margin } })),
})
