import { partsList } from '@/shared/plan/parameters/parts-list'
import { commonPractice } from '@/shared/sources/provenance'
import type { Part } from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { partsOfTheWorks } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import type { ListedPart } from '@/shared/works/listed-part'
import { NO_PARTS_LIST } from './parts-list-counted'

const SOURCE = commonPractice('A part is bought to a description that quality has read and signed')

export const partsDescribed = rule({
  id: 'parts-described',
  title: 'Parts described and approved',
  why: 'What nobody described is bought as the supplier understands it: another lead, another finish, another heat that it bears.',
  formula:
    'each part of the list: described at the works, its newest values approved by quality, not withdrawn',
  stage: 'specification',
  version: 1,
  reads: { list: optional(partsList), parts: partsOfTheWorks },
  judge({ list, parts }) {
    if (!list) return notApplicable(NO_PARTS_LIST)
    const byCode = new Map(parts.map((part) => [part.code, part]))
    const codes = [...new Set(list.map(({ part }) => part))]
    return judgedByParts({
      parts: codes.map((code) => judgePart(code, byCode.get(code))),
      noun: 'parts',
      limit: 'Described at the works, approved by quality as it stands, and not withdrawn.',
      working: [],
      sources: [SOURCE],
    })
  },
})

function judgePart(code: string, part: ListedPart | undefined): Part {
  const named = { subject: code, about: { part: code } }
  if (!part)
    return {
      ...named,
      verdict: 'undetermined',
      measured: { described: false },
      found: 'is not described at the works.',
      remedy: { message: `Describe part ${code} at the works and have it approved, or mend its number.` },
    }
  const measured = { described: true, revision: count(part.revision) }
  if (part.withdrawn)
    return {
      ...named,
      verdict: 'fails',
      measured: { ...measured, withdrawn: true },
      found: 'is withdrawn at the works.',
      remedy: { message: `Put another part in the place of ${code}.` },
    }
  if (!part.approved)
    return {
      ...named,
      verdict: 'undetermined',
      measured: { ...measured, approved: false },
      found: `revision ${part.revision} is not approved by quality of the works.`,
      remedy: { message: `Have part ${code} approved as it stands.` },
    }
  return { ...named, verdict: 'meets', measured, found: `revision ${part.revision}, approved.` }
}
