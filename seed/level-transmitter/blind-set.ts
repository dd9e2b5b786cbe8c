import type { Story } from '@/seed/story'

const JOINTS = 80
/** Joints of the set that are known to be bad, and how; the others are sound. */
const KNOWN: Readonly<Record<number, string>> = {
  3: 'bridge',
  7: 'insufficient solder',
  11: 'non-wetting',
  12: 'bridge',
  16: 'hole not filled',
  19: 'icicle',
  23: 'insufficient solder',
  26: 'non-wetting',
  29: 'bridge',
  33: 'blowhole',
  36: 'hole not filled',
  38: 'solder ball',
  43: 'bridge',
  46: 'insufficient solder',
  50: 'non-wetting',
  53: 'hole not filled',
  55: 'bridge',
  59: 'cold joint',
  62: 'insufficient solder',
  65: 'non-wetting',
  68: 'bridge',
  72: 'hole not filled',
  75: 'icicle',
  79: 'blowhole',
}

interface Caller {
  readonly inspector: string
  readonly calledOn: string
  readonly round: number
  /** Joints called otherwise than they are known to be. */
  readonly otherwise: Readonly<Record<number, string>>
}

const CALLERS: readonly Caller[] = [
  { inspector: 'Sunniva Brandt', calledOn: '2026-04-08', round: 1, otherwise: { 36: 'sound' } },
  {
    inspector: 'Quill Amaro',
    calledOn: '2026-04-08',
    round: 1,
    otherwise: { 21: 'excess solder', 33: 'void' },
  },
  { inspector: 'Sunniva Brandt', calledOn: '2026-04-13', round: 2, otherwise: { 36: 'sound', 33: 'void' } },
]

/** The two inspectors call the same eighty joints blind, one of them again five days later. */
export async function callBlindSet(story: Story): Promise<void> {
  await story.do('quill', 'add-record', {
    kind: 'inspector-call',
    rows: CALLERS.flatMap(({ inspector, calledOn, round, otherwise }) =>
      Array.from({ length: JOINTS }, (_, index) => {
        const known = KNOWN[index + 1] ?? 'sound'
        return {
          calledOn,
          study: 'Set A',
          inspector,
          joint: `A-${String(index + 1).padStart(2, '0')}`,
          round,
          call: otherwise[index + 1] ?? known,
          reference: known,
        }
      }),
    ),
  })
}
