import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ionicResidueMax } from '@/shared/plan/limits/assessment-residue'
import { reworkHeatsMax } from '@/shared/plan/limits/assessment-rework'
import { defectFreeBoards } from '@/shared/plan/parameters/joint-budget'
import { inspectedAssembliesShare } from '@/shared/plan/parameters/assessment-inspection'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { assessmentItems } from '@/shared/catalogue/assessment-items'
import type { Inspection } from '@/shared/records/inspection'
import { defectsAgainstBudget } from '@/shared/rules/assessment/defects-against-budget'
import { inspectionCoverage } from '@/shared/rules/assessment/inspection-coverage'
import { ionicCleanlinessRule } from '@/shared/rules/assessment/ionic-cleanliness'
import { reworkLimits } from '@/shared/rules/assessment/rework-limits'
import { VERDICTS, type Verdict } from '@/shared/rules/finding'
import { judge } from '@/shared/rules/rule'
import { factsWith, findingOf, requirement, set } from '@/tests/rules/facts-builder'
import { holes, inspection, run } from '@/tests/rules/record-builder'

const rank = (verdict: Verdict): number => VERDICTS.indexOf(verdict)

/** Assemblies of 200 joints, the first few with some joints defective. */
const looks = fc
  .array(fc.tuple(fc.integer({ min: 20, max: 200 }), fc.integer({ min: 0, max: 3 })), {
    minLength: 1,
    maxLength: 30,
  })
  .map((rows) => rows.map(([seen, defective], index) => inspection(`A-${index}`, seen, defective)))
const budgetPct = fc.double({ min: 50, max: 99.99, noNaN: true })
const verdictOf = (inspections: readonly Inspection[], defectFree: number): number =>
  rank(
    findingOf(defectsAgainstBudget, {
      values: [set(leadHoles, [holes(200)]), set(defectFreeBoards, defectFree)],
      inspections,
    }).verdict,
  )

describe('laws of the defect budget', () => {
  test('one more defective joint never improves the verdict', () => {
    fc.assert(
      fc.property(looks, budgetPct, fc.nat(), (inspections, pct, pick) => {
        const at = pick % inspections.length
        const worse = inspections.map((look, index) =>
          index === at
            ? { ...look, defects: [...look.defects, { kind: 'void' as const, joint: 'one-more' }] }
            : look,
        )
        expect(verdictOf(worse, pct)).toBeGreaterThanOrEqual(verdictOf(inspections, pct))
      }),
      { numRuns: 200 },
    )
  })

  test('more sound joints inspected never worsen the verdict', () => {
    fc.assert(
      fc.property(looks, budgetPct, fc.integer({ min: 1, max: 200 }), (inspections, pct, sound) => {
        const more = [...inspections, inspection('one-more', sound)]
        expect(verdictOf(more, pct)).toBeLessThanOrEqual(verdictOf(inspections, pct))
      }),
      { numRuns: 200 },
    )
  })

  test('a looser budget never worsens the verdict', () => {
    fc.assert(
      fc.property(looks, budgetPct, budgetPct, (inspections, one, other) => {
        const strict = verdictOf(inspections, Math.max(one, other))
        expect(verdictOf(inspections, Math.min(one, other))).toBeLessThanOrEqual(strict)
      }),
      { numRuns: 200 },
    )
  })
})

test('one more assembly inspected in full never worsens coverage', () => {
  const covered = (count: number, made: number, share: number): number =>
    rank(
      findingOf(inspectionCoverage, {
        values: [set(inspectedAssembliesShare, share), set(leadHoles, [holes(120)])],
        inspections: Array.from({ length: count }, (_, index) => inspection(`A-${index}`, 120)),
        records: { 'soldering-run': [run(made)] },
      }).verdict,
    )
  fc.assert(
    fc.property(
      fc.nat(30),
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 1, max: 100 }),
      (n, made, share) => {
        expect(covered(n + 1, made, share)).toBeLessThanOrEqual(covered(n, made, share))
      },
    ),
    { numRuns: 100 },
  )
})

test('one more heat never improves rework; a looser limit never worsens it', () => {
  const verdict = (heats: number, max: number): number =>
    rank(
      findingOf(reworkLimits, {
        requirements: [requirement(reworkHeatsMax, max, { relaxes: true })],
        records: { rework: [{ id: 'w', assembly: 'A', joint: 'J', heats, minutes: 1 } as { id: string }] },
      }).verdict,
    )
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 10 }), fc.integer({ min: 1, max: 10 }), (heats, max) => {
      expect(verdict(heats + 1, max)).toBeGreaterThanOrEqual(verdict(heats, max))
      expect(verdict(heats, max + 1)).toBeLessThanOrEqual(verdict(heats, max))
    }),
  )
})

test('more salt never improves cleanliness; a larger board never worsens it', () => {
  const verdict = (concentrationUgPerMl: number, lengthMm: number): number =>
    rank(
      findingOf(ionicCleanlinessRule, {
        requirements: [requirement(ionicResidueMax, 1)],
        records: {
          'ionic-cleanliness': [
            {
              id: 'c',
              testedOn: '2026-02-01',
              assembly: 'A',
              method: 'manual',
              concentrationUgPerMl,
              solventMl: 500,
              lengthMm,
              widthMm: 100,
              componentAllowancePct: 0,
            } as { id: string },
          ],
        },
      }).verdict,
    )
  const salt = fc.double({ min: 0.01, max: 2, noNaN: true })
  const length = fc.double({ min: 20, max: 400, noNaN: true })
  fc.assert(
    fc.property(salt, salt, length, length, (a, b, x, y) => {
      expect(verdict(Math.max(a, b), x)).toBeGreaterThanOrEqual(verdict(Math.min(a, b), x))
      expect(verdict(a, Math.max(x, y))).toBeLessThanOrEqual(verdict(a, Math.min(x, y)))
    }),
  )
})

test('with no record at all, no rule of the stage throws', () => {
  const facts = factsWith({
    values: [set(leadHoles, [holes(200)]), set(defectFreeBoards, 99), set(inspectedAssembliesShare, 100)],
  })
  for (const rule of assessmentItems.flatMap((item) => item.rules)) {
    expect(judge(rule, facts).found.length).toBeGreaterThan(0)
  }
})
