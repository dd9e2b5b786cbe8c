import { describe, expect, test } from 'vitest'
import { boardSurvival } from '@/shared/reliability/models/board-survival'
import {
  CONNECTION_BASE_RATES,
  ENVIRONMENT_FACTORS,
  HANDBOOK_REVISIONS,
} from '@/shared/reliability/models/connection-rates'
import type { EnvironmentLetters } from '@/shared/reliability/models/connection-rates'
import {
  complexityFactor,
  connectionFailureRate,
  platedHolesFailureRate,
} from '@/shared/reliability/models/joint-failure-rate'
import { modelLabel } from '@/shared/reliability/models/model'
import type { ReliabilityModel } from '@/shared/reliability/models/model'
import reference from '@/tests/reference/statistics/reliability.json'

const supposed: ReliabilityModel = {
  name: 'supposed rate',
  edition: 'test',
  source: { cite: 'test', how: 'computed' },
  caution: '',
}

describe('plated holes, MIL-HDBK-217F section 16.1', () => {
  // Worked by hand from the handbook's model; factors read in two transcriptions that agree.
  test.each(reference.platedHoles.rows)(
    '$N1 machine and $N2 hand holes, $P planes, $env, base $lb',
    (row) => {
      const rate = platedHolesFailureRate(
        {
          wiring: 'printed wiring',
          machineSoldered: row.N1,
          handSoldered: row.N2,
          circuitPlanes: row.P,
          topQuality: row.piQ === 1,
        },
        row.env as EnvironmentLetters,
        row.lb === 1.7e-5 ? 'Notice 2, 1995' : 'base issue, 1991',
      )
      expect(rate.fit).toBeCloseTo(row.FIT, 9)
      const board = boardSurvival([{ joints: 1, rate }], 20)
      expect(board.survival).toBeCloseTo(row.R_20y, 12)
      expect(board.meanTimeToFailureH / row.MTTF_h).toBeCloseTo(1, 12)
    },
  )

  test('the plane factor rounds to every row of the printed table', () => {
    for (const [planes, printed] of Object.entries(reference.planeFactors.value))
      expect(Math.round(complexityFactor(Number(planes)) * 10) / 10).toBe(printed)
  })

  test('a hole soldered by hand weighs fourteen of one by machine, at two planes', () => {
    const holes = (machineSoldered: number, handSoldered: number): number =>
      platedHolesFailureRate(
        { wiring: 'printed wiring', machineSoldered, handSoldered, circuitPlanes: 2, topQuality: true },
        'GB',
        'Notice 2, 1995',
      ).fit
    expect(holes(0, 1) / holes(1, 0)).toBeCloseTo(14, 12)
  })

  test('the table ends at 18 planes', () => {
    expect(() => complexityFactor(19)).toThrow('ends at 18')
    expect(() => complexityFactor(0)).toThrow(RangeError)
  })
})

describe('connections, MIL-HDBK-217F section 17.1', () => {
  test('both revisions as transcribed', () => {
    const names = {
      'hand solder, not wrapped': 'hand solder, no wrapping',
      'hand solder, wrapped': 'hand solder, with wrapping',
    }
    for (const row of CONNECTION_BASE_RATES) {
      const key = (names[row.kind as keyof typeof names] ??
        row.kind) as keyof typeof reference.connectionRates.notice2
      expect(row['Notice 2, 1995'], row.kind).toBe(reference.connectionRates.notice2[key])
      expect(row['base issue, 1991'], row.kind).toBe(
        reference.connectionRates.baseIssue[key as keyof typeof reference.connectionRates.baseIssue],
      )
    }
  })

  test('environment factors of both sections', () => {
    expect(Object.fromEntries(ENVIRONMENT_FACTORS.map((row) => [row.letters, row.connection]))).toEqual(
      reference.environmentFactors.connection,
    )
    expect(Object.fromEntries(ENVIRONMENT_FACTORS.map((row) => [row.letters, row.platedHole]))).toEqual(
      reference.environmentFactors.platedHole,
    )
  })

  // By hand: 500 reflow joints on the ground, fixed, 0.069 failures per million hours.
  test('five hundred reflow joints, fifty by hand', () => {
    const reflow = connectionFailureRate('reflow solder', 'GF', 'Notice 2, 1995')
    const hand = connectionFailureRate('hand solder, not wrapped', 'GF', 'Notice 2, 1995')
    expect(500 * reflow.fit).toBeCloseTo(69, 10)
    expect(50 * hand.fit).toBeCloseTo(130, 10)
  })

  test('every figure names its model and revision, and the two revisions are two models', () => {
    const labels = HANDBOOK_REVISIONS.map((revision) =>
      modelLabel(connectionFailureRate('hand solder, not wrapped', 'GB', revision).model),
    )
    expect(labels).toEqual([
      'MIL-HDBK-217F section 17.1, Notice 2, 1995',
      'MIL-HDBK-217F section 17.1, base issue, 1991',
    ])
  })
})

describe('board survival', () => {
  // Computed with Python: exp(−N · rate · 175 200 h).
  test.each(reference.survival.rows)('$joints joints at $FIT_per_joint FIT for twenty years', (row) => {
    const found = boardSurvival(
      [{ joints: row.joints, rate: { fit: row.FIT_per_joint, model: supposed } }],
      20,
    )
    expect(found.survival).toBeCloseTo(row.R_20y, 12)
    expect(found.boardFit).toBeCloseTo(row.system_FIT, 9)
    expect(found.expectedFailures).toBeCloseTo(row.expected_failures_20y, 12)
  })

  test('groups add up, and each model is carried once', () => {
    const other = { ...supposed, edition: 'other' }
    const found = boardSurvival(
      [
        { joints: 100, rate: { fit: 1, model: supposed } },
        { joints: 100, rate: { fit: 2, model: supposed } },
        { joints: 1, rate: { fit: 200, model: other } },
      ],
      20,
    )
    expect(found.boardFit).toBe(500)
    expect(found.models).toEqual([supposed, other])
  })

  test('a rate of zero survives for ever; no joints, years or a rate below zero are refused', () => {
    const rate = { fit: 0, model: supposed }
    expect(boardSurvival([{ joints: 1, rate }], 20)).toMatchObject({
      survival: 1,
      meanTimeToFailureH: Infinity,
    })
    expect(() => boardSurvival([], 20)).toThrow(RangeError)
    expect(() => boardSurvival([{ joints: 1, rate }], 0)).toThrow(RangeError)
    expect(() => boardSurvival([{ joints: 0, rate }], 20)).toThrow(RangeError)
    expect(() => boardSurvival([{ joints: 1, rate: { ...rate, fit: Number.NaN } }], 20)).toThrow(RangeError)
  })
})
