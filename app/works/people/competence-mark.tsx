import { Day } from '@/app/ui/date'
import { Sign, type SignKind } from '@/app/ui/sign'
import type { Competence, Held } from '@/shared/training/competence'

const LOOKS: Readonly<Record<Competence, { sign: SignKind; ink: string; word: string } | undefined>> = {
  current: { sign: 'success', ink: 'ink-mask', word: 'current' },
  'runs out': { sign: 'warning', ink: 'ink-rosin', word: 'runs out' },
  lapsed: { sign: 'refusal', ink: 'ink-carmine', word: 'lapsed' },
  never: undefined,
}

/** How somebody stands in a skill: a sign of its own shape, the word, and the last day. */
export function CompetenceMark({ held: { competence, until } }: { held: Held }) {
  const look = LOOKS[competence]
  if (!look || until === null) return <span className="ink-faint">never</span>
  return (
    <span className="mark">
      <span className={look.ink}>
        <Sign kind={look.sign} size={16} />
      </span>
      <span>
        {look.word}
        <span className="block">
          <span className="sr-only">, last day </span>
          <Day at={until} />
        </span>
      </span>
    </span>
  )
}
