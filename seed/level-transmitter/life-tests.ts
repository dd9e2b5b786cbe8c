import type { Story } from '@/seed/story'

/** Norris–Landzberg at the cycles of service and test, both service cycles added up. */
const MODEL = 'Norris–Landzberg, tin–lead; both service cycles added up (Palmgren–Miner)'
/** The slow test, in air: one cycle stands for so many of service. */
const SLOW = { test: 'LT-1, 0 to 100 °C in air', acceleration: 7.7, joints: 960, cycles: 5600, panels: 44 }
/** The hard test, to failure: boards of the first series. */
const HARD = { test: 'LT-2, −40 to 125 °C, two chambers', acceleration: 20, joints: 306, cycles: 4000 }
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
    cycles: SLOW.cycles,
    failed: false,
    acceleration: SLOW.acceleration,
    model: MODEL,
  }))
  const hard = Array.from({ length: HARD_BOARDS }, (_, index) => ({
    endedOn: '2026-04-10',
    test: HARD.test,
    specimen: `LX41-${String(201 + index).padStart(4, '0')}`,
    joints: HARD.joints,
    cycles: FAILED_AT[index] ?? HARD.cycles,
    failed: index < FAILED_AT.length,
    acceleration: HARD.acceleration,
    model: MODEL,
  }))
  await story.on('2026-04-16').do('sunniva', 'add-record', { kind: 'life-test', rows: [...hard, ...slow] })
}
