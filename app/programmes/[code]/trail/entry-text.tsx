import type { ReactNode } from 'react'
import { recordedIn } from '@/shared/commands/entry-told'
import { findItem, findLimit, findParameter } from '@/shared/catalogue/standard-plan'

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json }

/** What an entry recorded, as labels and values a person can read. */
export function EntryText({ payload }: { payload: string }) {
  const recorded = recordedIn(payload) as Json | undefined
  return recorded === undefined ? <code className="digest">{payload}</code> : <Values value={recorded} />
}

function Values({ value }: { value: Json }): ReactNode {
  if (value === null || value === '') return 'none'
  if (typeof value !== 'object') return String(value)
  if (Array.isArray(value)) return <List values={value as readonly Json[]} />
  return (
    <dl className="entry-values">
      {Object.entries(value as Record<string, Json>).map(([key, entry]) => (
        <div key={key}>
          <dt>{wordsOf(key)}</dt>
          <dd>{named(key, entry) ?? <Values value={entry} />}</dd>
        </div>
      ))}
    </dl>
  )
}

function List({ values }: { values: readonly Json[] }) {
  if (values.length === 0) return <>none</>
  if (values.every((entry) => typeof entry !== 'object')) return <>{values.join(', ')}</>
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

/** Keys of items and parameters are said by their titles. */
function named(key: string, value: Json): string | undefined {
  if (typeof value !== 'string') return undefined
  if (key === 'item' || key === 'itemKey') return findItem(value)?.title
  if (key === 'limit') return findLimit(value)?.label
  if (key === 'parameter') return findParameter(value)?.label
  return undefined
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
