import { fromMemory } from '@/shared/sources/provenance'
import { contactGoldMin, contactNickelMin } from '@/shared/plan/limits/interconnection'
import type { Parameter } from '@/shared/plan/parameter'
import {
  contactGold,
  contactNickel,
  contactsCovered,
  interconnection,
} from '@/shared/plan/parameters/interconnection'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'

export const edgeContacts = rule({
  id: 'edge-contacts',
  title: 'Edge contacts',
  why: 'Gold belongs where contacts slide and nowhere that solder goes; solder on a contact ruins it, and thin gold over thin nickel wears through.',
  formula: 'gold and nickel ordered ≥ least each; contacts covered while soldering',
  stage: 'specification',
  version: 1,
  reads: {
    connection: interconnection,
    gold: optional(contactGold),
    nickel: optional(contactNickel),
    covered: optional(contactsCovered),
    goldMin: contactGoldMin,
    nickelMin: contactNickelMin,
  },
  judge({ connection, gold, nickel, covered, goldMin, nickelMin }) {
    const limit = `Gold ${formatQuantity(goldMin.value, 'µm')} (${goldMin.document}) over nickel ${formatQuantity(nickelMin.value, 'µm')} (${nickelMin.document}), kept from the solder`
    const sources = [
      goldMin.limit.byDefault.from,
      nickelMin.limit.byDefault.from,
      fromMemory('Contacts are covered while the board is soldered'),
    ]
    if (connection === 'pins') {
      return notApplicable('The board has no edge contacts.')
    }
    return judgedByParts({
      parts: [
        judgeLayer('Contact gold', gold, goldMin, contactGold),
        judgeLayer('Nickel under it', nickel, nickelMin, contactNickel),
        judgeSignedContent(covered),
      ],
      noun: 'points',
      limit,
      working: [],
      sources,
      notes: [
        'Keep the solder a clear distance from the gold; both sides of the border belong on the drawing.',
      ],
    })
  },
})

function judgeLayer(
  subject: string,
  foundUm: number | undefined,
  min: GoverningRequirement,
  parameter: Parameter,
): Part {
  const about = { layer: parameter.key }
  if (foundUm === undefined)
    return { subject, about, verdict: 'undetermined', found: 'its thickness is missing' }
  const part = partOn({
    subject,
    about,
    found: `${formatQuantity(foundUm, 'µm')} ordered`,
    // What is ordered may equal the limit; the lot is measured when it comes.
    margin: { found: foundUm, limit: min.value, unit: 'µm', direction: 'at least', guardBand: 0 },
  })
  if (part.verdict === 'meets') return part
  const message = `Order at least ${formatQuantity(min.value, 'µm')}.`
  return { ...part, remedy: { message, parameter: parameter.key, value: min.value } }
}

function judgeSignedContent(covered: boolean | undefined): Part {
  const [subject, about] = ['Cover', { layer: contactsCovered.key }]
  if (covered === undefined) {
    return {
      subject,
      about,
      verdict: 'undetermined',
      found: 'production has not said whether the contacts are covered',
    }
  }
  if (covered) return { subject, about, verdict: 'meets', found: 'the contacts are covered while soldering' }
  return {
    subject,
    about,
    verdict: 'fails',
    found: 'the contacts are not covered while soldering',
    remedy: { message: 'Cover the contacts with a peelable mask or a carrier.' },
  }
}
