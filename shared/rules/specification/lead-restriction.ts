import { ALLOYS } from '@/shared/materials/alloys'
import { BOARD_FINISHES } from '@/shared/materials/board-finishes'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { fromMemory } from '@/shared/sources/provenance'
import { restrictedLeadMax } from '@/shared/plan/limits/solder'
import { boardFinish, leadFinishes } from '@/shared/plan/parameters/finishes'
import {
  deliveriesUntil,
  leadExemptions,
  leadRestriction,
  solderAlloy,
  type LeadExemption,
} from '@/shared/plan/parameters/solder'
import { formatQuantity } from '@/shared/quantity/format'
import { daysBetween } from '@/shared/quantity/calendar'
import type { Part } from '@/shared/rules/finding'
import { optional, rule, today } from '@/shared/rules/rule'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { measure } from '@/shared/rules/measure'

export const leadRestrictionRule = rule({
  id: 'lead-restriction',
  title: 'Restriction of lead',
  why: 'Where the law restricts lead, one leaded finish makes every board unsaleable; where it does not, lead keeps whiskers away. Which holds is settled before finishes are chosen.',
  formula:
    'lead of solder and finishes ≤ most, where restricted; where exempt, last day of each exemption ≥ today and ≥ last delivery',
  stage: 'specification',
  version: 2,
  reads: {
    regime: leadRestriction,
    exemptions: optional(leadExemptions),
    until: optional(deliveriesUntil),
    today,
    alloy: solderAlloy,
    finish: boardFinish,
    finishes: leadFinishes,
    max: restrictedLeadMax,
  },
  judge({ regime, exemptions = [], until, today: now, alloy, finish, finishes, max }) {
    const leaded = [
      { key: `solder ${alloy}`, name: ALLOYS[alloy].label, leadPct: ALLOYS[alloy].leadPct },
      {
        key: `board ${finish}`,
        name: `board finish ${BOARD_FINISHES[finish].label}`,
        leadPct: BOARD_FINISHES[finish].leadPct,
      },
      ...finishes.map((row, index) => ({
        key: `lead ${index + 1} ${row.component}`,
        name: `leads of ${row.component}`,
        leadPct: LEAD_COATINGS[row.coating].leadPct,
      })),
    ].filter(({ leadPct }) => leadPct > max.value)
    const list = leaded.map(({ name, leadPct }) => `${name} (${formatQuantity(leadPct, '%')})`).join(', ')
    const common = {
      measured: {
        regime,
        ...Object.fromEntries(leaded.map(({ key, leadPct }) => [key, measure(leadPct, '%')])),
      },
      limit: `Lead at most ${formatQuantity(max.value, '%')} by mass of each homogeneous material where restricted (${max.document})`,
      working: [],
      sources: [
        max.limit.byDefault.from,
        fromMemory('Directive 2011/65/EU: exemptions of Annexes III and IV expire'),
        fromMemory(
          'Scope of 2011/65/EU: space, defence, large fixed installations and vehicles lie outside it',
        ),
      ],
      cautions: [
        'No legal advice: whether a law applies, and which exemption, is for those who answer for the product in law, in every country it is sold in.',
      ],
    }
    if (leaded.length === 0) return { verdict: 'meets', found: 'No lead in solder or finishes.', ...common }
    switch (regime) {
      case 'out-of-scope':
        return { verdict: 'meets', found: `Stated to be out of scope; leaded: ${list}.`, ...common }
      case 'exempt':
        if (exemptions.length === 0)
          return {
            ...common,
            verdict: 'undetermined',
            found: `An exemption is used for ${list}, and none is stated.`,
            missing: [leadExemptions.label],
            remedy: { message: 'State the exemption with its last day, and plan what follows it.' },
          }
        return {
          ...common,
          ...spokenByWorst(exemptions.map((row, index) => exemptionPart(row, index, until, now))),
        }
      case 'restricted':
        return {
          verdict: 'fails',
          found: `Lead is restricted, and there is lead in ${list}.`,
          remedy: { message: 'Choose lead-free solder and finishes throughout.' },
          ...common,
        }
    }
  },
})

/** One exemption against today and the last delivery: an end that nobody has stated is no end to rely on. */
function exemptionPart(
  { exemption, covers, expiresOn }: LeadExemption,
  index: number,
  until: string | undefined,
  now: string,
): Part {
  const common = {
    subject: `exemption ${exemption}`,
    about: { exemption: `${index + 1} ${exemption}` },
    measured: {
      covers,
      ...(expiresOn !== undefined && { expiresOn }),
      ...(until !== undefined && { until }),
    },
  }
  if (expiresOn === undefined)
    return {
      ...common,
      verdict: 'undetermined',
      found: `used for ${covers}; its last day is not stated.`,
      remedy: { message: 'State the last day of the exemption as the law has it now.' },
    }
  if (expiresOn < now)
    return {
      ...common,
      verdict: 'fails',
      found: `used for ${covers}; it ran out on ${expiresOn}.`,
      remedy: { message: 'Deliver nothing more that rests on it; choose lead-free solder and finishes.' },
    }
  if (until === undefined)
    return {
      ...common,
      verdict: 'undetermined',
      found: `used for ${covers} until ${expiresOn}; how long boards are to be delivered is not stated.`,
      remedy: { message: `State until when deliveries are planned (${deliveriesUntil.label}).` },
    }
  const margin = {
    found: daysBetween(until, expiresOn),
    limit: 0,
    unit: 'days',
    direction: 'at least',
    guardBand: 0,
  } as const
  if (margin.found < 0)
    return {
      ...common,
      verdict: 'fails',
      found: `used for ${covers}; it runs out on ${expiresOn}, before the last delivery on ${until}.`,
      margin,
      remedy: {
        message: `End deliveries by ${expiresOn}, or have a lead-free build approved before then.`,
      },
    }
  return {
    ...common,
    verdict: 'meets',
    found: `used for ${covers} until ${expiresOn}, the last delivery is on ${until}.`,
    margin,
  }
}
