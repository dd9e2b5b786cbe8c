import { fromMemory, published } from '@/shared/sources/provenance'
import { holeCopperLeast } from '@/shared/plan/limits/evaluation-plating'
import { boardFinishLeast } from '@/shared/plan/parameters/finishes'
import { boardBuild } from '@/shared/plan/parameters/laminate'
import { holeWall, leadHoles } from '@/shared/plan/parameters/lead-holes'
import { alloyFamily, serviceYears } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, worstVerdict } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { measure } from '@/shared/rules/measure'

/** Copper that lead-free solder may take off a barrel over all its solderings, µm. */
const LEAD_FREE_LOSS_UM = 12
/** From this service on, copper that stretches little is a risk of its own. */
const LONG_SERVICE_YEARS = 10

export const holeCopper = rule({
  id: 'hole-copper',
  title: 'Copper of the barrels',
  why: 'The barrel stretches with the board at every soldering and every swing; thin or brittle copper cracks round, and solder takes a little of it each time.',
  stage: 'specification',
  version: 2,
  reads: {
    holes: leadHoles,
    wall: holeWall,
    finishUm: boardFinishLeast,
    family: alloyFamily,
    years: serviceYears,
    build: optional(boardBuild),
    least: holeCopperLeast,
  },
  judge({ holes, wall, finishUm, family, years, build = 'subtractive', least }) {
    const limit = `At least ${formatQuantity(least.value, 'µm')} of copper on the wall (${least.document})`
    const sources = [
      least.limit.byDefault.from,
      published('MIL-PRF-31032/1B, 3.6.4.1: copper below 80 % of what is specified counts as a void'),
      published(
        'Up to 12 µm of barrel copper lost to lead-free solder (Coombs & Holden, Printed Circuits Handbook, 7th ed.; secondary copy)',
      ),
      fromMemory('Copper built up without current stretches 4 to 10 %, plated copper more than 15 %'),
    ]
    if (!holes.some((row) => row.plated)) {
      return notApplicable('No hole is plated.')
    }
    const copper = Number((wall - finishUm).toFixed(6))
    // What is ordered may equal the limit: the lot's own thickness is judged when it comes.
    const margin = {
      found: copper,
      limit: least.value,
      unit: 'µm',
      direction: 'at least',
      guardBand: 0,
    } as const
    const brittle = build === 'additive' && years >= LONG_SERVICE_YEARS
    const thinForLeadFree = family === 'lead-free' && copper < least.value + LEAD_FREE_LOSS_UM
    const verdict = worstVerdict([verdictOn(margin), brittle || thinForLeadFree ? 'marginal' : 'meets'])
    const asked = least.value + (family === 'lead-free' ? LEAD_FREE_LOSS_UM : 0) + finishUm
    return {
      verdict,
      found: `${formatQuantity(wall, 'µm')} of metal on the wall, ${formatQuantity(finishUm, 'µm')} of it finish, leave ${formatQuantity(copper, 'µm')} of copper.${brittle ? ` Built up without current, it stretches little for ${formatQuantity(years, 'years')}.` : ''}`,
      limit,
      margin,
      measured: {
        wall: measure(wall, 'µm'),
        finish: measure(finishUm, 'µm'),
        ...(brittle && { build, service: measure(years, 'years') }),
      },
      working: [
        {
          label: 'Copper on the wall',
          formula: 'metal on the wall − finish',
          numbers: `${formatQuantity(wall, 'µm')} − ${formatQuantity(finishUm, 'µm')}`,
          result: formatQuantity(copper, 'µm'),
        },
      ],
      sources,
      ...(verdict !== 'meets' &&
        (brittle && !thinForLeadFree && verdictOn(margin) === 'meets'
          ? { remedy: { says: 'Have the barrels plated by current.' } }
          : {
              remedy: {
                says: `Order at least ${formatQuantity(asked, 'µm')} of metal on the wall, and drill to suit.`,
                parameter: holeWall.key,
                value: asked,
              },
            })),
      notes: [
        'Editions differ: 20 or 25 µm on the mean by class; older ones ask 12 µm of class 1.',
        ...(family === 'lead-free'
          ? [
              `Lead-free solder may take up to ${LEAD_FREE_LOSS_UM} µm: order so much more, and count reworks.`,
            ]
          : []),
      ],
    }
  },
})
