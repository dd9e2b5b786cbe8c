import { ALLOYS, meltsAsItsFamily, type AlloyFamily, type AlloyKey } from '@/shared/materials/alloys'
import { fromMemory, published } from '@/shared/sources/provenance'
import {
  brittleBarrelYearsMax,
  holeCopperOtherClassesMin,
  leadFreeCopperLoss,
} from '@/shared/plan/limits/lead-holes'
import { holeCopperMin } from '@/shared/plan/limits/evaluation-plating'
import { boardFinishMin } from '@/shared/plan/parameters/finishes'
import { boardBuild } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles } from '@/shared/plan/parameters/lead-holes'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { alloyFamily, productClass, serviceYears } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, worstVerdict } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { measure } from '@/shared/rules/measure'

export const holeCopper = rule({
  id: 'hole-copper',
  title: 'Copper of the barrels',
  why: 'The barrel stretches with the board at every soldering and every swing; thin or brittle copper cracks round, and solder takes a little of it each time.',
  formula: 'metal on the wall − finish ≥ least of the class; + what lead-free solder takes to be clear of it',
  stage: 'specification',
  version: 3,
  reads: {
    holes: leadHoles,
    wall: barrelPlating,
    finishUm: boardFinishMin,
    family: alloyFamily,
    years: serviceYears,
    build: optional(boardBuild),
    alloy: optional(solderAlloy),
    grade: productClass,
    ofClass3: holeCopperMin,
    ofOthers: holeCopperOtherClassesMin,
    loss: leadFreeCopperLoss,
    brittleYears: brittleBarrelYearsMax,
  },
  judge({ holes, wall, finishUm, family, years, build = 'subtractive', alloy, grade, ...limits }) {
    const min = grade === '3' ? limits.ofClass3 : limits.ofOthers
    const lossUm = takesCopper(family, alloy) ? limits.loss.value : 0
    const limit = `At least ${formatQuantity(min.value, 'µm')} of copper on the wall, class ${grade} (${min.document})`
    const sources = [
      min.limit.byDefault.from,
      published('MIL-PRF-31032/1B, 3.6.4.1: copper below 80 % of what is specified counts as a void'),
      ...(lossUm > 0 ? [limits.loss.limit.byDefault.from] : []),
      fromMemory('Copper built up without current stretches 4 to 10 %, plated copper more than 15 %'),
    ]
    if (!holes.some((row) => row.plated)) {
      return notApplicable('No hole is plated.')
    }
    const copper = Number((wall - finishUm).toFixed(6))
    // What is ordered may equal the limit: the lot's own thickness is judged when it comes.
    const margin = {
      found: copper,
      limit: min.value,
      unit: 'µm',
      direction: 'at least',
      guardBand: 0,
    } as const
    const brittle = build === 'additive' && years >= limits.brittleYears.value
    const thinForLeadFree = copper < min.value + lossUm && copper >= min.value
    const verdict = worstVerdict([verdictOn(margin), brittle || thinForLeadFree ? 'marginal' : 'meets'])
    const asked = min.value + lossUm + finishUm
    return {
      verdict,
      found: `${formatQuantity(wall, 'µm')} of metal on the wall, ${formatQuantity(finishUm, 'µm')} of it finish, leave ${formatQuantity(copper, 'µm')} of copper.${brittle ? ` Built up without current, it stretches little for ${formatQuantity(years, 'years')}.` : ''}`,
      limit,
      margin,
      measured: {
        wall: measure(wall, 'µm'),
        finish: measure(finishUm, 'µm'),
        class: grade,
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
          ? { remedy: { message: 'Have the barrels plated by current.' } }
          : {
              remedy: {
                message: `Order at least ${formatQuantity(asked, 'µm')} of metal on the wall, and drill to suit.`,
                parameter: barrelPlating.key,
                value: asked,
              },
            })),
      notes: [
        'The least is on the mean of a hole, 20 µm of classes 1 and 2 and 25 µm of class 3; older editions ask 12 µm of class 1.',
        ...(lossUm > 0
          ? [
              `Lead-free solder may take up to ${formatQuantity(lossUm, 'µm')}: order so much more, and count reworks.`,
            ]
          : []),
      ],
    }
  },
})

/** Solders rich in tin and hot dissolve copper; one that melts far below its family hardly does. */
const takesCopper = (family: AlloyFamily, alloy: AlloyKey | undefined): boolean =>
  family === 'lead-free' && (alloy === undefined || meltsAsItsFamily(ALLOYS[alloy]))
