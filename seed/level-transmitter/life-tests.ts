import { LEVEL_TRANSMITTER } from '@/seed/boards/level-transmitter'
import type { Story } from '@/seed/story'
import { cycleTest, useCycles, type CycleTest, type UseCycle } from '@/shared/plan/parameters/thermal-fatigue'
import { fatigueModelsFor, testCyclesFor } from '@/shared/reliability/thermal-test-cycles'

const USE_CYCLES = LEVEL_TRANSMITTER[useCycles.key] as readonly UseCycle[]
const [SPECIFIED_TEST] = LEVEL_TRANSMITTER[cycleTest.key] as readonly CycleTest[]

/** The slow test is the one specified, in air. */
const SLOW = { test: 'LT-1, 0 to 100 °C in air', cycle: SPECIFIED_TEST!, joints: 960, ran: 5600, panels: 44 }
/** The hard test, to failure: boards of the first series between two chambers. */
const HARD = {
  test: 'LT-2, −40 to 125 °C, two chambers',
  cycle: { swingK: 165, hottestC: 125, perDay: 48, dwellMin: 13 },
  joints: 306,
  ran: 4000,
}
const FAILED_AT = [2310, 2790, 3240, 3620]
const HARD_BOARDS = 12

/** Reliability by test: panels that ran many lives without a failure, and a few boards run until some failed. */
export async function testLife(story: Story): Promise<void> {
  await story
    .on('2026-04-15')
    .specify('quill', { 'life-test-asked': true }, 'Class 3, twenty years: shown, not assumed.')
  const slow = Array.from({ length: SLOW.panels }, (_, index) => ({
    endedOn: '2026-04-13',
    test: SLOW.test,
    specimen: `P-${String(index + 1).padStart(2, '0')}`,
    joints: SLOW.joints,
    cycles: SLOW.ran,
    failed: false,
    ...accelerationOf(SLOW.cycle),
  }))
  const hard = Array.from({ length: HARD_BOARDS }, (_, index) => ({
    endedOn: '2026-04-10',
    test: HARD.test,
    specimen: `LX41-${String(201 + index).padStart(4, '0')}`,
    joints: HARD.joints,
    cycles: FAILED_AT[index] ?? HARD.ran,
    failed: index < FAILED_AT.length,
    ...accelerationOf(HARD.cycle),
  }))
  await story.on('2026-04-16').do('sunniva', 'add-record', { kind: 'life-test', rows: [...hard, ...slow] })
}

/** Service cycles that a test cycle stands for, the damage of both kinds of service cycle added up. */
function accelerationOf(cycle: Omit<CycleTest, 'test' | 'cycles'>) {
  const [model] = fatigueModelsFor('tin-lead')
  const test = { ...cycle, test: '', cycles: 1 }
  const inService = USE_CYCLES.reduce((sum, { perYear }) => sum + perYear, 0)
  const inTest = USE_CYCLES.reduce((sum, use) => sum + testCyclesFor(model!, test, use, 1), 0)
  return {
    acceleration: Number((inService / inTest).toPrecision(3)),
    model: `Norris–Landzberg, tin–lead: ${cycle.swingK} K to ${cycle.hottestC} °C, ${cycle.perDay} a day, against both cycles of service`,
  }
}
