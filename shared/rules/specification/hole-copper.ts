import { ALLOYS, meltsAsItsFamily, type AlloyFamily, type AlloyKey } from '@/shared/materials/alloys'
import { fromMemory, published } from '@/shared/sources/provenance'
import {
  brittleBarrelYearsMax,
  holeCopperOtherClassesMin,
  leadFreeCopperLoss,
} from '@/shared/plan/limits/lead-holes'
import { holeCopperMin } from '@/shared/plan/limits/evaluation-plating'
import { boardFinishMax, boardFinishMin } from '@/shared/plan/parameters/finishes'
import { boardBuild } from '@/shared/plan/parameters/laminate'
import { barrelCopper, barrelPlating, leadHoles } from '@/shared/plan/parameters/lead-holes'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { alloyFamily, productClass, serviceYears } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, verdictOn, worstVerdict } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { measure } from '@/shared/rules/measure'

export const holeCopper = rule({
  id: 'hole-copper',
  title: 'Copper of the barrels',
  why: 'The barrel stretches with the board at every soldering and every swing; thin or brittle copper cracks round, and solder takes a little of it each time.',
  formula:
    'copper ordered on the wall, else metal on the wall − most of the finish, ≥ least of the class; + what lead-free solder takes to be clear of it',
  stage: 'specification',
  version: 4,
  reads: {
    holes: leadHoles,
    wall: barrelPlating,
    finishUm: boardFinishMin,
    finishMostUm: optional(boardFinishMax),
    copperUm: optional(barrelCopper),
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
  judge({ holes, wall, finishUm, finishMostUm, copperUm, family, years, alloy, grade, ...rest }) {
    const { build = 'subtractive', ...limits } = rest
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
    if (copperUm !== undefined && copperUm + finishUm > wall)
      return undetermined(
        `The order asks ${formatQuantity(copperUm, 'µm')} of copper and ${formatQuantity(finishUm, 'µm')} of finish within ${formatQuantity(wall, 'µm')} of metal on the wall.`,
        ['metal on the wall that holds the copper and the finish ordered'],
        limit,
      )
    const mostFinishUm = finishMostUm ?? finishUm
    const copper = copperUm ?? Number((wall - mostFinishUm).toFixed(6))
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
    // Copper that is ordered as such needs no room for the most that the finish may take.
    const asked = min.value + lossUm + (copperUm === undefined ? mostFinishUm : finishUm)
    return {
      verdict,
      found: `${copperUm === undefined ? `${formatQuantity(wall, 'µm')} of metal on the wall, ${formatQuantity(mostFinishUm, 'µm')} of it finish${finishMostUm === undefined ? '' : ' at most'}, leave ${formatQuantity(copper, 'µm')} of copper.` : `${formatQuantity(copper, 'µm')} of copper on the wall are ordered.`}${brittle ? ` Built up without current, it stretches little for ${formatQuantity(years, 'years')}.` : ''}`,
      limit,
      margin,
      measured: {
        wall: measure(wall, 'µm'),
        finish: measure(mostFinishUm, 'µm'),
        orderedAsSuch: copperUm !== undefined,
        class: grade,
        ...(brittle && { build, service: measure(years, 'years') }),
      },
      working: [
        {
          label: 'Copper on the wall',
          formula: copperUm === undefined ? 'metal on the wall − most of the finish' : 'as ordered',
          ...(copperUm === undefined && {
            numbers: `${formatQuantity(wall, 'µm')} − ${formatQuantity(mostFinishUm, 'µm')}`,
          }),
          result: formatQuantity(copper, 'µm'),
        },
      ],
      sources,
      ...(verdict !== 'meets' &&
        (brittle && !thinForLeadFree && verdictOn(margin) === 'meets'
          ? { remedy: { message: 'Have the barrels plated by current.' } }
          : copperUm !== undefined
            ? {
                remedy: {
                  message: `Order at least ${formatQuantity(min.value + lossUm, 'µm')} of copper on the wall, and ${formatQuantity(asked, 'µm')} of metal in all; drill to suit.`,
                },
              }
            : {
                remedy: {
                  message: `Order at least ${formatQuantity(asked, 'µm')} of metal on the wall, and drill to suit.`,
                  parameter: barrelPlating.key,
                  value: asked,
                },
              })),
      notes: [
        ...(copperUm === undefined && finishMostUm === undefined
          ? [
              'The order sets no most of the finish: its least is taken off the wall. Order the copper as such.',
            ]
          : []),
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
