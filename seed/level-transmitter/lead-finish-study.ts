import { LEVEL_TRANSMITTER } from '@/seed/boards/level-transmitter'
import type { Story } from '@/seed/story'
import type { JsonValue } from '@/shared/trail/canonical-json'

const LEADS = LEVEL_TRANSMITTER['lead-finishes'] as readonly Row[]

type Row = Readonly<Record<string, JsonValue>>

/** What goes under the tin-lead on the brass pins: three ways side by side, and the one that was specified adopted. */
export async function studyLeadFinish(story: Story, costAction: number): Promise<void> {
  const opened = await story.on('2026-02-11').do('tomas', 'open-option-study', {
    item: 'lead-finish',
    title: 'What goes under the tin-lead on the brass pins of T1 and J1?',
    alternatives: [
      {
        name: 'Nickel',
        note: 'As proposed: nickel keeps the zinc of the brass from the tin.',
        values: { 'lead-finishes': LEADS },
        costs: costing(0.42, 0),
        defectsPerMillion: null,
        actions: [costAction],
      },
      {
        name: 'Copper',
        note: 'Cheaper by the piece; one supplier would have to set up for it.',
        values: { 'lead-finishes': pinsWith({ barrier: 'copper', barrierUm: 4 }) },
        costs: costing(0.3, 180),
        defectsPerMillion: 200,
        actions: [],
      },
      {
        name: 'Nothing',
        note: 'Tin-lead straight on the brass.',
        values: { 'lead-finishes': pinsWith({ barrier: 'none' }) },
        costs: costing(0, 0),
        defectsPerMillion: 600,
        actions: [],
      },
    ],
  })
  await story.on('2026-02-12').do('ines', 'adopt-option', {
    study: opened.study,
    revision: 1,
    alternative: 'Nickel',
    seen: { 'lead-finishes': 1 },
    reason:
      'Both suppliers plate it as standard, and without a barrier the pins would not last their year in store.',
  })
}

/** What a way costs by the piece, and once. */
const costing = (piece: number, tooling: number) => [
  { kind: 'piece' as const, per: 'board' as const, amount: piece },
  { kind: 'tooling' as const, per: 'once' as const, amount: tooling },
]

/** The leads as specified, with another layer under the coating of the brass pins. */
const pinsWith = (layer: Row): Row[] =>
  LEADS.map((row) => {
    const { barrier: _, barrierUm: __, ...pin } = row
    return row['base'] === 'brass' ? { ...pin, ...layer } : row
  })
