import type { ReactNode } from 'react'
import { recordedIn } from '@/shared/commands/entry-told'
import { keyInWords } from '@/shared/commands/key-in-words'
import { findParameter } from '@/shared/catalogue/standard-plan'

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json }

/** What an entry recorded, as labels and values a person can read. */
export function EntryText({ payload }: { payload: string }) {
  const recorded = recordedIn(payload) as Json | undefined
  return recorded === undefined ? <code className="digest">{payload}</code> : <Values value={recorded} />
}

function Values({ value }: { value: Json }): ReactNode {
  if (value === null || value === '') return 'none'
  if (typeof value === 'string') return <Text text={value} />
  if (typeof value !== 'object') return String(value)
  if (Array.isArray(value)) return <List values={value as readonly Json[]} />
  return (
    <dl className="entry-values">
      {Object.entries(value as Record<string, Json>).map(([key, entry]) => (
        <div key={key}>
          <dt>{wordsOf(key)}</dt>
          <dd>
            <Values value={entry} />
          </dd>
        </div>
      ))}
    </dl>
  )
}

function List({ values }: { values: readonly Json[] }) {
  if (values.length === 0) return <>none</>
  if (values.every((entry) => typeof entry !== 'object'))
    return <>{values.map((entry) => keyInWords(String(entry))).join(', ')}</>
  return (
    <ol>
      {values.slice(0, 50).map((entry, position) => (
        <li key={position}>
          <Values value={entry} />
        </li>
      ))}
      {values.length > 50 && <li>and {values.length - 50} more</li>}
    </ol>
  )
}

/** A text as it was recorded; data that was kept as text is told as data, a stored key in words. */
function Text({ text }: { text: string }) {
  const data = text.startsWith('{') ? (recordedIn(text) as Json | undefined) : undefined
  return data === undefined ? <>{keyInWords(text)}</> : <Values value={data} />
}

/** "dueOn" as "due on", "sha256" as it is. */
const wordsOf = (key: string): string =>
  /^[a-z]+\d+$/.test(key)
    ? key
    : (findParameter(key)?.label ??
      key
        .replace(/([a-z])([A-Z])/g, '$1 $2')
        .replaceAll('-', ' ')
        .toLowerCase())
