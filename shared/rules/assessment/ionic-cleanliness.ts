import { extractedAssembliesMin } from '@/shared/plan/limits/assessment-evidence'
import { count } from '@/shared/rules/measure'
import { EXTRACTION_METHODS } from '@/shared/materials/extraction-methods'
import {
  extractedAreaCm2,
  perSquareInch,
  sodiumChlorideEquivalentUgPerCm2,
} from '@/shared/physics/ionic-equivalents'
import { ionicResidueGuard } from '@/shared/plan/limits/assessment-guards'
import { IONIC_RESIDUE_BY_EDITION, ionicResidueMax } from '@/shared/plan/limits/assessment-residue'
import { cleanlinessEdition } from '@/shared/plan/parameters/assessment-residue'
import { fluxResidue } from '@/shared/plan/parameters/solder'
import { isStated, type GoverningRequirement } from '@/shared/plan/requirement'
import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { InstrumentFile } from '@/shared/instruments/calibration-status'
import { namedInstrumentDoubt } from '@/shared/instruments/named-instrument'
import type { RecordOf } from '@/shared/records/record-kinds'
import {
  undetermined,
  verdictOn,
  type Judged,
  type Margin,
  type Part,
  type WorkingLine,
} from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { instruments, recordsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { governingUnder } from '@/shared/plan/edition-requirement'
import { cleanlinessTests } from '@/shared/rules/assembly-record-sources'

type Test = RecordOf<'ionic-cleanliness'>

export const ionicCleanlinessRule = rule({
  id: 'ionic-cleanliness',
  title: 'Ionic residue after flux removal',
  why: 'Salts left under a film of moisture conduct, corrode and grow filaments between conductors. The extract says how well cleaning works, in one figure that can be followed.',
  formula: 'concentration · volume/area/instrument factor ≤ most, on as many assemblies as are asked',
  stage: 'assessment',
  version: 3,
  reads: {
    residue: optional(fluxResidue),
    edition: optional(cleanlinessEdition),
    max: ionicResidueMax,
    guard: ionicResidueGuard,
    assembliesMin: extractedAssembliesMin,
    tests: cleanlinessTests,
    instruments,
    calibrations: recordsOf('calibration', 'earlier calibrations'),
  },
  judge({ residue, edition, max, guard, assembliesMin, tests, instruments: onFile, calibrations }): Judged {
    if (residue === 'stays' && tests.length === 0)
      return notApplicable('The residue stays by specification, and no extract test was made.')
    const governing =
      edition === undefined || edition === 'own-evidence'
        ? max
        : governingUnder(max, IONIC_RESIDUE_BY_EDITION[edition])
    const limit = `At most ${formatQuantity(governing.value, 'µg/cm²')} (${formatQuantity(perSquareInch(governing.value), 'µg/in²', 4)}) as sodium chloride, as the manual rinse would read (${governingName(governing)}), on at least ${formatQuantity(assembliesMin.value, 'boards')} (${governingName(assembliesMin)}).`
    if (edition === 'own-evidence' && !isStated(max))
      return {
        ...undetermined(
          'The chosen edition names no figure: state the limit that this programme’s own evidence supports, as a requirement on the ionic residue.',
          ['a requirement on the ionic residue'],
          'By own evidence.',
        ),
        // A limit may be stated and not govern, so that the limits alone do not tell this from tests that are missing.
        measured: { limitStated: false },
      }
    if (tests.length === 0)
      return undetermined(
        'No ionic cleanliness test is recorded yet: record one for each assembly extracted.',
        ['ionic cleanliness tests'],
        limit,
      )
    const file = { instruments: onFile, calibrations }
    return judgedByParts({
      parts: [
        ...tests.map((test) => judgeTest(test, governing, guard.value / 100, file)),
        ...tooFewExtracted(tests, assembliesMin.value),
      ],
      noun: 'extracts',
      limit,
      working: tests.slice(0, 3).flatMap(workingOf),
      sources: [sourceOf(governing), sourceOf(assembliesMin), EXTRACTION_METHODS.manual.source],
      notes: [
        'Both faces of the board count, and the allowance for components that was entered; a generous area makes a dirty board look clean.',
        ...(tests.some(({ instrument }) => instrument === undefined)
          ? [
              'Where a test names no instrument its calibration was not checked; within the guard band of the limit it proves nothing.',
            ]
          : []),
      ],
      cautions: [
        'An extract averages over the whole board and says nothing of where the salt lies, nor of residue that does not dissolve: it controls a cleaning process, it does not predict reliability.',
        'Extract solvents are flammable: no flame or spark, good extraction; the safety data sheet and local codes rule.',
      ],
    })
  },
})

/** One assembly may have been the clean one. */
function tooFewExtracted(tests: readonly Test[], min: number): Part[] {
  const extracted = new Set(tests.map(({ assembly }) => assembly.trim().toLowerCase())).size
  if (extracted >= min) return []
  return [
    {
      subject: 'Assemblies',
      about: { matter: 'assemblies' },
      verdict: 'undetermined',
      measured: { extracted: count(extracted, 'boards'), needed: count(min, 'boards') },
      found: `${extracted} of ${min} were extracted.`,
      remedy: { message: `Extract ${min - extracted} more, from other parts of the production.` },
    },
  ]
}

/** Residue as the manual rinse would have read it, µg/cm². */
export function residueOf(test: Test): number {
  const areaCm2 = extractedAreaCm2(test)
  return sodiumChlorideEquivalentUgPerCm2({ ...test, areaCm2 }) / EXTRACTION_METHODS[test.method].factor
}

function judgeTest(
  test: Test,
  governing: GoverningRequirement,
  guardShare: number,
  file: InstrumentFile,
): Part {
  const found = residueOf(test)
  const margin: Margin = {
    found,
    limit: governing.value,
    unit: 'µg/cm²',
    direction: 'at most',
    guardBand: guardShare * governing.value,
  }
  const named = {
    subject: `${test.assembly}, ${test.testedOn}`,
    about: { assembly: test.assembly, testedOn: test.testedOn },
  }
  const verdict = verdictOn(margin)
  const printed = formatAgainst(found, governing.value, 'µg/cm²').found
  const doubt = namedInstrumentDoubt(test, verdict, file)
  if (doubt !== undefined && verdict !== 'fails')
    return {
      ...named,
      verdict: 'undetermined',
      found: `${printed} proves nothing: ${doubt}.`,
      margin,
      remedy: { message: 'Name the instrument, or extract again with one in calibration.' },
    }
  return {
    ...named,
    verdict,
    found: `${printed}.`,
    margin,
    ...(verdict !== 'meets' && {
      remedy: {
        message:
          'Clean longer, hotter or with fresher solvent as its data sheet allows, rinse again, and extract another assembly of the same run.',
      },
    }),
  }
}

function workingOf(test: Test): WorkingLine[] {
  const { concentrationUgPerMl, solventMl, lengthMm, widthMm, componentAllowancePct, method } = test
  const area = extractedAreaCm2(test)
  return [
    {
      label: `${test.assembly}: area washed`,
      formula: '2 · length · width / 100 · (1 + allowance)',
      numbers: `2 · ${lengthMm} · ${widthMm} / 100 · (1 + ${componentAllowancePct} %)`,
      result: formatQuantity(area, 'cm²'),
    },
    {
      label: `${test.assembly}: residue`,
      formula: 'concentration · volume / area / instrument factor',
      numbers: `${concentrationUgPerMl} · ${solventMl} / ${formatNumber(area)} / ${EXTRACTION_METHODS[method].factor}`,
      result: formatQuantity(residueOf(test), 'µg/cm²'),
    },
  ]
}
