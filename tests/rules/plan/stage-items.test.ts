import { describe, expect, test } from 'vitest'
import { assessmentItems } from '@/shared/catalogue/assessment-items'
import { controlItems } from '@/shared/catalogue/control-items'
import { evaluationItems } from '@/shared/catalogue/evaluation-items'
import { frameItems } from '@/shared/catalogue/frame-items'
import { specificationItems } from '@/shared/catalogue/specification-items'
import { ALL_LIMITS, ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import { NO_BOARD } from '@/scripts/rules-page/no-board'
import { rulesOnBoard } from '@/shared/board/judged/board-findings'
import { readableOf } from '@/shared/rules/rule'

const held = new Set([...ALL_PARAMETERS, ...ALL_LIMITS].map(({ key }) => key))

describe.each([
  ['specification', specificationItems],
  ['evaluation', evaluationItems],
  ['control', controlItems],
  ['assessment', assessmentItems],
] as const)('the items of the stage of %s', (stage, own) => {
  // What frames the whole programme is specified with it, and read by every stage.
  const items = stage === 'specification' ? [...frameItems, ...own] : own
  const rules = items.flatMap((item) => item.rules)
  const read = rules.flatMap((rule) => Object.values(rule.reads).map(readableOf))
  const readOnBoards = rulesOnBoard(NO_BOARD).flatMap((rule) => Object.values(rule.reads).map(readableOf))

  test('hold every rule, parameter and limit once', () => {
    for (const keys of [
      rules.map(({ id }) => id),
      items.flatMap((item) => item.parameters.map(({ key }) => key)),
      items.flatMap((item) => item.limits.map(({ key }) => key)),
    ])
      expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([])
  })
  test('have rules that read only what the plan holds', () => {
    const declared = read.filter(({ source }) => source === 'parameter' || source === 'limit')
    expect(declared.map(({ key }) => key).filter((key) => !held.has(key))).toEqual([])
  })
  test('hold no parameter or limit that none of their rules, and none of those judged on boards, reads', () => {
    const keys = new Set([...read, ...readOnBoards].map(({ key }) => key))
    const declared = own.flatMap((item) => [...item.parameters, ...item.limits])
    expect(declared.map(({ key }) => key).filter((key) => !keys.has(key))).toEqual([])
  })
  test('are approved by quality and at least one other department', () => {
    for (const { key, approvers } of items) {
      expect(approvers, key).toContain('quality')
      expect(approvers.length, key).toBeGreaterThan(1)
    }
  })
  test('have keys in kebab-case, and rules of the stage that say what they protect', () => {
    const keys = items.flatMap((item) => [item, ...item.parameters, ...item.limits].map(({ key }) => key))
    for (const key of [...keys, ...rules.map(({ id }) => id)]) expect(key).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)
    for (const { id, why, stage: itsStage } of rules) {
      expect(itsStage, id).toBe(stage)
      expect(why.length, id).toBeGreaterThan(40)
    }
  })
})
