import { GOVERNED, applicableDocuments, type ApplicableDocument } from '@/shared/plan/parameters/documents'
import { type Limit, type GoverningRequirement, isStatedLayer } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part } from '@/shared/rules/finding'
import { judgedByParts } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import { measure, count } from '@/shared/rules/measure'

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase()

/**
 * The rule over a set of limits: shows where documents disagree, where a
 * limit is relaxed, and which document of a requirement is not in the register.
 */
export const documentConflictsOver = (limits: readonly Limit[]) =>
  rule({
    id: 'document-conflicts',
    title: 'Documents and their precedence',
    why: 'Two documents that ask different things are met by meeting neither, unless it is settled which one rules.',
    formula:
      'one edition of each document; every requirement from a registered document; no two layers of one authority that differ',
    stage: 'specification',
    version: 2,
    reads: {
      documents: applicableDocuments,
      ...(Object.fromEntries(limits.map((limit) => [limit.key, limit])) as Record<string, Limit>),
    },
    judge({ documents, ...governingRequirements }) {
      const register = documents as readonly ApplicableDocument[]
      const parts = [
        ...twoEditions(register),
        ...Object.values(governingRequirements as Record<string, GoverningRequirement>).flatMap((governing) =>
          judgeRequirement(governing, register),
        ),
      ]
      const limit =
        'One edition of each document; requirements from registered documents; the strictest rules unless a higher authority expressly relaxes it'
      if (parts.length === 0) {
        return {
          verdict: 'meets',
          found: `${register.length} documents are registered; no limit of this programme is in dispute.`,
          measured: { registered: count(register.length) },
          limit,
          working: [],
          sources: [],
          notes: sharedSubjects(register),
        }
      }
      return judgedByParts({
        parts,
        noun: 'points',
        limit,
        working: [],
        sources: [],
        notes: sharedSubjects(register),
      })
    },
  })

function twoEditions(register: readonly ApplicableDocument[]): Part[] {
  return register.flatMap((entry, index) => {
    const other = register
      .slice(0, index)
      .find((earlier) => same(earlier.document, entry.document) && !same(earlier.edition, entry.edition))
    if (!other) return []
    return [
      {
        subject: entry.document,
        verdict: 'fails' as const,
        found: `is registered in two editions, ${other.edition} and ${entry.edition}`,
        measured: { editions: [other.edition, entry.edition] },
        remedy: { message: `Settle which edition of ${entry.document} applies and strike the other.` },
      },
    ]
  })
}

function judgeRequirement(governing: GoverningRequirement, register: readonly ApplicableDocument[]): Part[] {
  const { limit, layers } = governing
  const print = (value: number): string => formatQuantity(value, limit.unit)
  const parts: Part[] = []
  for (const layer of layers.filter(isStatedLayer)) {
    // What a lesson brought, and a company rule with its edition, is kept by the installation itself.
    const keptHere = Boolean(layer.lesson) || layer.companyRule !== undefined
    if (!keptHere && !register.some((entry) => names(layer.document, entry))) {
      parts.push({
        subject: limit.label,
        about: { limit: limit.key, document: layer.document, clause: layer.clause },
        verdict: 'fails',
        found: `${layer.document}, ${layer.clause}, asks ${print(layer.value)} but is not among the applicable documents`,
        measured: { asked: measure(layer.value, limit.unit) },
        remedy: {
          message: `Add ${layer.document} to the applicable documents with its edition, or strike the requirement.`,
        },
      })
    }
  }
  if (governing.conflict) {
    const asked = layers.map((layer) => `${print(layer.value)} (${layer.document})`).join(', ')
    parts.push({
      subject: limit.label,
      about: { limit: limit.key, matter: 'disagreement' },
      verdict: 'marginal',
      measured: {
        rules: measure(governing.value, limit.unit),
        of: governing.document,
        ...Object.fromEntries(
          layers.map((layer) => [`asked by ${layer.document}`, measure(layer.value, limit.unit)]),
        ),
      },
      found: `documents of one authority disagree: ${asked}; ${print(governing.value)} of ${governing.document} rules`,
      remedy: {
        message: `Have the parties settle ${limit.label.toLowerCase()}; until then the strictest holds.`,
      },
    })
  }
  if (governing.relaxed) {
    parts.push({
      subject: limit.label,
      about: { limit: limit.key, matter: 'relaxation' },
      verdict: 'marginal',
      measured: {
        rules: measure(governing.value, limit.unit),
        of: governing.document,
        byDefault: measure(limit.byDefault.value, limit.unit),
      },
      found: `is relaxed to ${print(governing.value)} by ${governing.document}; the default is ${print(limit.byDefault.value)}`,
    })
  }
  return parts
}

/** A requirement may cite a document with or without its edition behind the number. */
const names = (cited: string, { document }: ApplicableDocument): boolean =>
  cited.trim().toLowerCase().startsWith(document.trim().toLowerCase())

/** Several documents on one subject are no fault, but worth knowing. */
function sharedSubjects(register: readonly ApplicableDocument[]): string[] {
  return GOVERNED.flatMap(({ value, label }) => {
    const governing = register.filter((entry) => entry.governs === value && value !== 'other')
    if (governing.length < 2) return []
    return [`${label}: ${governing.map(({ document, edition }) => `${document} (${edition})`).join(', ')}.`]
  })
}
