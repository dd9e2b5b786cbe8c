import { expect, test } from 'vitest'
import type { LaminateKey } from '@/shared/materials/laminates'
import { laminate } from '@/shared/plan/parameters/laminate'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { serviceYears } from '@/shared/plan/parameters/programme'
import { laminatePlatedHoles } from '@/shared/rules/specification/laminate-plated-holes'
import { findingOf, set } from '../facts-builder'
import { leadHole } from './lead-hole-rows'

const judged = (grade: LaminateKey, plated: boolean, years: number) =>
  findingOf(laminatePlatedHoles, {
    values: [set(laminate, grade), set(leadHoles, [leadHole({ plated })]), set(serviceYears, years)],
  })

// Wilson, The Circuit Designer's Companion: no plated holes in paper phenolic.
test.each([
  ['fr-2', true, 20, 'fails'],
  ['xpc', true, 1, 'fails'],
  ['fr-2', false, 20, 'not applicable'],
  ['fr-4', true, 20, 'meets'],
  ['cem-1', true, 3, 'marginal'],
  ['cem-1', true, 20, 'fails'],
] as const)('%s, plated %s, %i years: %s', (grade, plated, years, verdict) => {
  expect(judged(grade, plated, years).verdict).toBe(verdict)
})
