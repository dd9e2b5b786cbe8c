import type { InputOf } from '@/lib/commands/all-commands'
import type { Story } from '@/seed/story'
import { partDigest } from '@/shared/works/part-content'

type Values = InputOf<'describe-part'>['values']

/** The parts of the invented works that its boards share, as their makers describe them. */
const PARTS: Readonly<Record<string, Values>> = {
  'HI-2204': {
    description: 'Transformer, 12 brass pins, potted',
    kind: 'component',
    leads: 12,
    leadShape: 'round',
    leadMm: 1,
    leadToleranceMm: 0.02,
    base: 'brass',
    barrier: 'nickel',
    barrierUm: 4,
    coating: 'tin-lead',
    coatingUm: 7,
    heatMaxC: 350,
    heatMaxS: 5,
  },
  'HI-1040': {
    description: 'Resistor, metal film, 0.25 W',
    kind: 'component',
    leads: 2,
    leadShape: 'round',
    leadMm: 0.6,
    leadToleranceMm: 0.02,
    base: 'copper',
    barrier: 'none',
    coating: 'tin-lead',
    coatingUm: 8,
    heatMaxC: 350,
    heatMaxS: 10,
  },
  'HI-1122': {
    description: 'Capacitor, ceramic, 50 V',
    kind: 'component',
    leads: 2,
    leadShape: 'round',
    leadMm: 0.5,
    leadToleranceMm: 0.02,
    base: 'copper',
    barrier: 'none',
    coating: 'tin-lead',
    coatingUm: 8,
    heatMaxC: 260,
    heatMaxS: 10,
  },
  'HI-3014': circuit(14),
  'HI-3016': circuit(16),
  'HI-5040': {
    description: 'Connector, 40 pins in two rows',
    kind: 'connector',
    leads: 40,
    leadShape: 'square',
    leadMm: 0.64,
    leadToleranceMm: 0.01,
    base: 'brass',
    barrier: 'nickel',
    barrierUm: 5,
    coating: 'tin-lead',
    coatingUm: 6,
    heatMaxC: 265,
    heatMaxS: 6,
  },
}

function circuit(leads: number): Values {
  return {
    description: `Integrated circuit, ${leads} leads in two rows`,
    kind: 'component',
    leads,
    leadShape: 'rectangular',
    leadMm: 0.48,
    leadThicknessMm: 0.28,
    leadToleranceMm: 0.02,
    base: 'iron-nickel',
    barrier: 'none',
    coating: 'dipped-tin-lead',
    coatingUm: 6,
    heatMaxC: 260,
    heatMaxS: 10,
  }
}

/** The parts list that two of the boards have: the same circuit in another housing. */
export const PARTS_LIST = [
  { references: 'T1', part: 'HI-2204', quantity: 1, soldered: 'hand', side: 'top' },
  { references: 'R1–R40', part: 'HI-1040', quantity: 40, soldered: 'machine', side: 'top' },
  { references: 'C1–C22', part: 'HI-1122', quantity: 22, soldered: 'machine', side: 'top' },
  { references: 'U1–U7', part: 'HI-3014', quantity: 7, soldered: 'machine', side: 'top' },
  { references: 'U8, U9', part: 'HI-3016', quantity: 2, soldered: 'machine', side: 'top' },
  { references: 'J1', part: 'HI-5040', quantity: 1, soldered: 'machine', side: 'top' },
]

/** Design describes the parts, and quality approves each. */
export async function describeParts(story: Story): Promise<void> {
  for (const [part, values] of Object.entries(PARTS)) {
    await story.act('tomas', 'describe-part', {
      code: part,
      values,
      reason: 'As the maker’s data sheet and drawing have it.',
    })
    await story.act('quill', 'approve-part', { part, digest: partDigest(part, values) })
  }
}
