import { expect, test } from 'vitest'
import { allowedInService } from '@/shared/reliability/allowed-failures'
import reference from '@/tests/reference/statistics/reliability.json'

const target = {
  joints: 500,
  serviceYears: 20,
  lifeH: 175_200,
  survival: 0.99,
  allowedFailures: -Math.log(0.99),
  boardFit: 57.36,
  jointFit: 57.36 / 500,
  defectsPerMillion: undefined,
  lifeCycles: 7300,
  confidence: 0.9,
}

// Series of joints at constant rates, 20 years of 8760 h: 57.36 FIT leave 0.99000 (computed apart from the program).
test('one board’s life allows −ln 0.99 failures', () => {
  const row = reference.survival.rows.find(({ system_FIT }) => system_FIT === 57.36)
  const allowed = -Math.log(row?.R_20y ?? Number.NaN)
  expect(allowedInService(175_200, target)).toBeCloseTo(allowed, 4)
})
