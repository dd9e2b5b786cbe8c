import { ALLOYS, TERNARY_BISMUTH_C, type AlloyKey } from '@/shared/materials/alloys'
import { BOARD_FINISHES } from '@/shared/materials/board-finishes'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { fromMemory, published } from '@/shared/sources/provenance'
import { boardFinish, leadFinishes } from '@/shared/plan/parameters/finishes'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import type { About, Part } from '@/shared/rules/finding'
import { judgedByParts } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'

/** A metal that meets the solder: what it holds of lead and bismuth. */
export interface Surface {
  readonly subject: string
  readonly about?: About
  /** Its key in the table of finishes or of coatings. */
  readonly finish: string
  readonly label: string
  readonly leadPct: number
  readonly bismuthPct: number
}

export const mixedMetals = rule({
  id: 'mixed-metals',
  title: 'Leaded and lead-free together',
  why: 'A little lead in a lead-free joint breaks the law it was made for and weakens it where it freezes last; bismuth with lead melts at 96 °C and lets go in service.',
  formula: 'solder of the programme’s family; no lead into lead-free solder; no bismuth with lead',
  stage: 'specification',
  version: 1,
  reads: { family: alloyFamily, alloy: solderAlloy, finish: boardFinish, finishes: leadFinishes },
  judge({ family, alloy: alloyKey, finish, finishes }) {
    const alloy = ALLOYS[alloyKey]
    const board = BOARD_FINISHES[finish]
    const surfaces: Surface[] = [
      {
        subject: 'Board',
        about: { surface: 'board' },
        finish,
        label: board.label,
        leadPct: board.leadPct,
        bismuthPct: 0,
      },
      ...finishes.map(({ component, coating }) => ({
        subject: component,
        finish: coating,
        ...LEAD_COATINGS[coating],
      })),
    ]
    const parts: Part[] = [
      {
        subject: 'Solder',
        about: { surface: 'solder' },
        measured: { alloy: alloyKey, family },
        verdict: alloy.family === family ? 'meets' : 'fails',
        found: `${alloy.label} is ${alloy.family}; the programme is ${family}`,
        ...(alloy.family !== family && {
          remedy: {
            message: 'Choose an alloy of the programme’s family, or open the programme again in the other.',
          },
        }),
      },
      ...surfaces.map((surface) => judgeSurface(surface, alloyKey)),
    ]
    return judgedByParts({
      parts,
      noun: 'metals',
      limit: `Metals that may meet in a ${family} joint: no lead in lead-free solder, no bismuth with lead`,
      working: [],
      sources: [
        TERNARY_BISMUTH_C.source,
        published('Directive 2011/65/EU, Annex II: lead at most 0.1 % by mass of a homogeneous material'),
        fromMemory('Tin-lead soldering of lead-free tin and solder finishes: compatible'),
      ],
      notes: [
        'Lead-free tin and solder finishes may be soldered with tin-lead; ball-grid arrays with lead-free balls are another matter and not judged here.',
        'Keep pots and irons for leaded and lead-free work apart.',
      ],
      ...(family === 'tin-lead' && {
        cautions: [
          'Lead: no food or smoking at the work, hands washed after it, dross and wipes kept as hazardous waste under local rules.',
        ],
      }),
    })
  },
})

/** One metal that meets the solder. */
export function judgeSurface(
  { subject, about, finish, label, leadPct, bismuthPct }: Surface,
  alloyKey: AlloyKey,
): Part {
  const alloy = ALLOYS[alloyKey]
  const common = { subject, ...(about && { about }), measured: { finish, alloy: alloyKey } }
  const leadMeetsBismuth = (alloy.leadPct > 0 && bismuthPct > 0) || (alloy.bismuthPct > 0 && leadPct > 0)
  if (leadMeetsBismuth || (leadPct > 0 && bismuthPct > 0)) {
    return {
      ...common,
      verdict: 'fails',
      found: `${label} with ${alloy.label}: bismuth and lead together melt from ${TERNARY_BISMUTH_C.value} °C`,
      remedy: { message: `${subject}: choose a finish without ${alloy.leadPct > 0 ? 'bismuth' : 'lead'}.` },
    }
  }
  if (alloy.family === 'lead-free' && leadPct > 0) {
    return {
      ...common,
      verdict: 'fails',
      found: `${label} brings lead into ${alloy.label}`,
      remedy: { message: `${subject}: choose a finish without lead.` },
    }
  }
  return { ...common, verdict: 'meets', found: `${label} with ${alloy.label}` }
}
