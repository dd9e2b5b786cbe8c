import { ALLOYS } from '@/shared/materials/alloys'
import { BOARD_FINISHES } from '@/shared/materials/board-finishes'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { fromMemory } from '@/shared/sources/provenance'
import { restrictedLeadMax } from '@/shared/plan/limits/solder'
import { boardFinish, leadFinishes } from '@/shared/plan/parameters/finishes'
import { leadRestriction, solderAlloy } from '@/shared/plan/parameters/solder'
import { formatQuantity } from '@/shared/quantity/format'
import { rule } from '@/shared/rules/rule'
import { measure } from '@/shared/rules/measure'

export const leadRestrictionRule = rule({
  id: 'lead-restriction',
  title: 'Restriction of lead',
  why: 'Where the law restricts lead, one leaded finish makes every board unsaleable; where it does not, lead keeps whiskers away. Which holds is settled before finishes are chosen.',
  formula: 'lead of solder and finishes ≤ most, where restricted',
  stage: 'specification',
  version: 1,
  reads: {
    regime: leadRestriction,
    alloy: solderAlloy,
    finish: boardFinish,
    finishes: leadFinishes,
    max: restrictedLeadMax,
  },
  judge({ regime, alloy, finish, finishes, max }) {
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
        return {
          verdict: 'marginal',
          found: `An exemption is used for ${list}; exemptions end.`,
          remedy: { message: 'Record the exemption and its date of expiry, and plan what follows it.' },
          ...common,
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
