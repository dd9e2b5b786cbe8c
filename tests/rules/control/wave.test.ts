import { describe, expect, test } from 'vitest'
import { preheatTinLeadMax, thermalStepChipMax } from '@/shared/plan/limits/control-wave'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import { leadFreeBathMax } from '@/shared/plan/limits/control-bath'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import { chipCapacitorsInWave } from '@/shared/plan/parameters/control-wave'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { bathTemperatureRule } from '@/shared/rules/control/bath-temperature'
import { thermalStepRule } from '@/shared/rules/control/thermal-step'
import { waveDwellRule } from '@/shared/rules/control/wave-dwell'
import { waveGeometryRule } from '@/shared/rules/control/wave-geometry'
import { wavePreheatRule } from '@/shared/rules/control/wave-preheat'
import { afterRemedy, factsWith, findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { INSTRUMENT, logOf, worked } from '../log-builder'

const AT = { at: '2026-02-02T08:00:00Z' }
const WAVE = [set(solderingProcess, 'wave'), set(alloyFamily, 'tin-lead')]
const HAND = [set(solderingProcess, 'hand'), set(alloyFamily, 'tin-lead')]
const instruments = [INSTRUMENT]
const records = worked()

describe('dwell in the wave', () => {
  const judged = (row: Record<string, number>, over: FactsInput = {}) =>
    findingOf(waveDwellRule, {
      values: WAVE,
      logs: [logOf('wave-contact', [{ ...AT, ...row }])],
      instruments,
      records,
      ...over,
    })

  // Examples of common practice: 5 cm at 150 cm/min and 2 cm at 60 cm/min both give 2.0 s.
  test.each([
    [50, 1.5, 2, 'marginal'],
    [20, 0.6, 2, 'marginal'],
    [50, 1.0, 3, 'meets'],
    [50, 0.75, 4, 'marginal'],
    [50, 0.74, 4.054, 'fails'],
    [50, 1.51, 1.987, 'fails'],
  ])('%s mm at %s m/min: %s s, %s', (contactLengthMm, conveyorSpeedMPerMin, seconds, verdict) => {
    const finding = judged({ contactLengthMm, conveyorSpeedMPerMin })
    expect(finding.margin?.found).toBeCloseTo(seconds, 3)
    expect(finding.verdict).toBe(verdict)
  })

  test('too short: the speed it proposes meets', () => {
    const finding = judged({ contactLengthMm: 30, conveyorSpeedMPerMin: 1.2 })
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy?.message).toMatch(/0\.6 m\/min/)
    expect(judged({ contactLengthMm: 30, conveyorSpeedMPerMin: 0.6 }).verdict).toBe('meets')
    expect(finding.remedy?.message).toMatch(/60 mm/)
    expect(judged({ contactLengthMm: 60, conveyorSpeedMPerMin: 1.2 }).verdict).toBe('meets')
  })

  test('both waves together are held to 10 s of their own', () => {
    const long = judged({ contactLengthMm: 50, firstWaveLengthMm: 130, conveyorSpeedMPerMin: 1 })
    expect(long.verdict).toBe('fails')
    expect(long.found).toMatch(/Both waves together: 10\.8 s/)
    expect(judged({ contactLengthMm: 50, firstWaveLengthMm: 20, conveyorSpeedMPerMin: 1 }).verdict).toBe(
      'meets',
    )
  })

  // Readings belong to the days worked (common practice, no published source).
  test('a first wave once read is read for every day of work', () => {
    const rows = [
      { ...AT, contactLengthMm: 50, firstWaveLengthMm: 20, conveyorSpeedMPerMin: 1 },
      { at: '2026-03-02T08:00:00Z', contactLengthMm: 50, conveyorSpeedMPerMin: 1 },
    ]
    const finding = findingOf(waveDwellRule, {
      values: WAVE,
      logs: [logOf('wave-contact', rows)],
      instruments,
      records: worked({ doneOn: '2026-03-02' }),
    })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.parts?.find(({ subject }) => subject === 'Soldering runs, both waves')?.found).toContain(
      'no reading in time before the work',
    )
  })
  test('a stopped conveyor is no reading', () => {
    expect(judged({ contactLengthMm: 50, conveyorSpeedMPerMin: 0 }).verdict).toBe('undetermined')
  })

  test('nothing is asked where boards are soldered by hand', () => {
    expect(findingOf(waveDwellRule, { values: HAND }).verdict).toBe('not applicable')
  })
})

describe('bath temperature', () => {
  const judged = (bathC: number, target = 250, over: FactsInput = {}) =>
    findingOf(bathTemperatureRule, {
      values: [...WAVE, set(bathTemperatureTarget, target)],
      logs: [logOf('bath-temperature', [{ ...AT, bathC }])],
      instruments,
      records,
      ...over,
    })
  test.each([
    [250, 'meets'],
    [255, 'marginal'],
    [255.1, 'fails'],
    [244.9, 'fails'],
  ])('%s °C against 250 ± 5 °C %s', (bathC, verdict) => expect(judged(bathC).verdict).toBe(verdict))

  test('how near to the window’s end is only just good is a limit of its own', () => {
    const wider = { requirements: [requirement(processWindowGuard, 25)] }
    // A quarter of 245 to 255 °C is 2.5 K: 253 °C has 2 K left.
    expect(judged(253).verdict).toBe('meets')
    expect(judged(253, 250, wider).verdict).toBe('marginal')
    expect(judged(252, 250, wider).verdict).toBe('meets')
  })

  // Common practice: tin-lead wave baths are run at 240 to 260 °C.
  test('a target of 270 °C is refused for tin-lead; the remedy’s value meets', () => {
    const values = [...WAVE, set(bathTemperatureTarget, 270)]
    const logs = [logOf('bath-temperature', [{ ...AT, bathC: 258 }])]
    const finding = findingOf(bathTemperatureRule, { values, logs, instruments, records })
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy).toMatchObject({ parameter: 'bath-temperature-target', value: 260 })
    expect(afterRemedy(bathTemperatureRule, factsWith({ values, logs, instruments, records })).verdict).toBe(
      'meets',
    )
  })
  test('270 °C is a lead-free bath', () => {
    const values = [set(alloyFamily, 'lead-free'), set(bathTemperatureTarget, 265)]
    expect(judged(266, 265, { values }).verdict).toBe('meets')
  })
  test('a selective machine’s nozzle may run hotter', () => {
    const values = [
      set(solderingProcess, 'selective'),
      set(alloyFamily, 'tin-lead'),
      set(bathTemperatureTarget, 300),
    ]
    expect(judged(301, 300, { values }).verdict).toBe('meets')
  })
})

describe('tin-bismuth in the wave', () => {
  // Sn42Bi58 melts at 138 °C: 35 to 77 K above it, as the usual baths lie above their own alloys, is 173 to 215 °C.
  const BISMUTH = [set(solderingProcess, 'wave'), set(alloyFamily, 'lead-free'), set(solderAlloy, 'sn42bi58')]
  const bath = (bathC: number, over: FactsInput = {}) =>
    findingOf(bathTemperatureRule, {
      values: [...BISMUTH, set(bathTemperatureTarget, bathC)],
      logs: [logOf('bath-temperature', [{ ...AT, bathC }])],
      instruments,
      records,
      ...over,
    })
  test('is run at 200 °C, and refused at the 265 °C of its family', () => {
    expect(bath(200).verdict).toBe('meets')
    expect(bath(200).limit).not.toMatch(/looser/)
    expect(bath(265).verdict).toBe('fails')
  })
  test('a customer’s own limit rules over what follows from the alloy', () => {
    expect(bath(200, { requirements: [requirement(leadFreeBathMax, 190)] }).verdict).toBe('fails')
  })
  test('preheat stays 20 K below its solidus', () => {
    const upper = (uppersideC: number) =>
      findingOf(wavePreheatRule, {
        values: BISMUTH,
        logs: [logOf('wave-preheat', [{ ...AT, uppersideC, steepestRiseKPerS: 1.2 }])],
        instruments,
        records,
      }).verdict
    expect(upper(110)).toBe('meets')
    expect(upper(119)).toBe('fails')
  })
})

describe('preheat', () => {
  const judged = (row: Record<string, number>, over: FactsInput = {}) =>
    findingOf(wavePreheatRule, {
      values: WAVE,
      logs: [logOf('wave-preheat', [{ ...AT, ...row }])],
      instruments,
      records,
      ...over,
    })
  test.each([
    [{ uppersideC: 95 }, 'undetermined'],
    [{ uppersideC: 95, steepestRiseKPerS: 1.2 }, 'meets'],
    [{ uppersideC: 79 }, 'fails'],
    [{ uppersideC: 111 }, 'fails'],
    [{ uppersideC: 95, steepestRiseKPerS: 2.5 }, 'fails'],
  ])('%o %s', (row, verdict) => expect(judged(row).verdict).toBe(verdict))
  // As a profile, once a month at least (common practice, no published source).
  test('the steepest rise of a year ago says nothing of today', () => {
    const on = (doneOn: string) =>
      findingOf(wavePreheatRule, {
        values: WAVE,
        logs: [
          logOf('wave-preheat', [
            { ...AT, uppersideC: 95, steepestRiseKPerS: 1.2 },
            { at: `${doneOn}T08:00:00Z`, uppersideC: 95 },
          ]),
        ],
        instruments,
        records: worked({ doneOn }),
      })
    expect(on('2026-02-20').verdict).toBe('meets')
    expect(on('2026-12-01').verdict).toBe('undetermined')
    expect(on('2026-12-01').found).toContain('no reading in time before the work')
  })
  test('the flux maker’s window, stated as a requirement that relaxes, rules', () => {
    const requirements = [
      requirement(preheatTinLeadMax, 120, {
        authority: 'company',
        document: 'Flux data sheet F-7',
        relaxes: true,
      }),
    ]
    const finding = judged({ uppersideC: 115, steepestRiseKPerS: 1.2 }, { requirements })
    expect(finding.verdict).toBe('meets')
    expect(finding.limit).toMatch(/Flux data sheet F-7; looser than the default/)
  })
})

describe('step into the wave', () => {
  const judged = (uppersideC: number, chips: boolean | undefined, over: FactsInput = {}) =>
    findingOf(thermalStepRule, {
      values: [
        ...WAVE,
        set(bathTemperatureTarget, 250),
        ...(chips === undefined ? [] : [set(chipCapacitorsInWave, chips)]),
      ],
      logs: [logOf('wave-preheat', [{ ...AT, uppersideC }])],
      instruments,
      records,
      ...over,
    })
  // Makers of chip capacitors publish 100 to 130 K: a bath of 250 °C after 110 °C preheat steps 140 K and cracks them.
  test('250 °C after 110 °C is a step of 140 K: too much for chip capacitors, not without them', () => {
    expect(judged(110, true).verdict).toBe('fails')
    expect(judged(110, undefined).verdict).toBe('fails')
    expect(judged(110, false).verdict).toBe('marginal')
    expect(judged(110, true).remedy?.message).toMatch(/10 K/)
  })
  test('a customer’s 100 K rules', () => {
    const requirements = [requirement(thermalStepChipMax, 100)]
    expect(judged(140, true, { requirements }).verdict).toBe('fails')
    expect(judged(165, true, { requirements }).verdict).toBe('meets')
  })
  test('the bath as measured at the time counts before the specified one', () => {
    const logs = [logOf('wave-preheat', [{ ...AT, uppersideC: 125, bathC: 258 }])]
    expect(judged(125, true, { logs }).margin?.found).toBe(133)
  })
})

describe('immersion and angle', () => {
  const judged = (row: Record<string, number>) =>
    findingOf(waveGeometryRule, {
      values: [...WAVE, set(boardThickness, 1.6)],
      logs: [logOf('wave-geometry', [{ ...AT, ...row }])],
      instruments,
      records,
    })
  // Common practice: half to two thirds of the board; 2.1 to 2.4 mm on a 1.6 mm board floods it.
  test.each([
    [{ immersionMm: 0.9, angleDeg: 6 }, 'meets'],
    [{ immersionMm: 0.8, angleDeg: 6 }, 'marginal'],
    [{ immersionMm: 0.7, angleDeg: 6 }, 'fails'],
    [{ immersionMm: 2.1, angleDeg: 6 }, 'fails'],
    [{ immersionMm: 0.9, angleDeg: 8 }, 'fails'],
  ])('%o %s', (row, verdict) => expect(judged(row).verdict).toBe(verdict))
})
