'use client'
import { useEffect, useId, useRef, useState, type KeyboardEvent } from 'react'
import { findAddress } from '@/app/addresses'
import { counted } from '@/shared/quantity/counted'
import type { Answer, Match } from './answer'
import { useAnswer, type Asked } from './use-answer'

interface FindDialogProps {
  programme: string | undefined
  onClose: () => void
}

/**
 * One box to find anything with: a combobox with a list, as the ARIA Authoring Practices describe it. The best match
 * is marked at once; arrows go along, Enter opens, Escape closes.
 */
export default function FindDialog({ programme, onClose }: FindDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  const list = useId()
  const [query, setQuery] = useState('')
  const asked = useAnswer(query, programme)
  const answer = asked.state === 'answered' ? asked.answer : undefined
  const matches = answer?.groups.flatMap((group) => group.matches) ?? []
  const [marked, setMarked] = useState<{ of: Answer | undefined; at: number }>({ of: undefined, at: 0 })
  const at = marked.of === answer ? marked.at : 0
  const active = matches.length > 0 ? `${list}-${at}` : undefined

  useEffect(() => dialog.current?.showModal(), [])
  useEffect(() => {
    if (active) document.getElementById(active)?.scrollIntoView({ block: 'nearest' })
  }, [active])

  const open = (href: string) => {
    dialog.current?.close()
    window.location.assign(href)
  }
  const pressed = (event: KeyboardEvent) => {
    const step = STEPS[event.key]
    if (step !== undefined && matches.length > 0) {
      event.preventDefault()
      setMarked({ of: answer, at: (at + step + matches.length) % matches.length })
    } else if (event.key === 'Enter' && query.trim() && !event.nativeEvent.isComposing) {
      event.preventDefault()
      // What is marked answers what was asked; while the answer to what stands there is awaited, the page finds it.
      const isAnswered = asked.state === 'answered' && asked.query === query.trim()
      open((isAnswered ? matches[at]?.href : undefined) ?? findAddress(query.trim(), programme))
    }
  }
  return (
    <dialog ref={dialog} className="find-dialog" aria-label="Find anything" onClose={onClose}>
      <label className="find-box">
        <span className="field-label">Find anything</span>
        <input
          className="control"
          type="text"
          role="combobox"
          autoComplete="off"
          autoFocus
          aria-autocomplete="list"
          aria-expanded={matches.length > 0}
          aria-controls={list}
          aria-activedescendant={active}
          placeholder="Words, a lot, a part, a reference"
          value={query}
          onChange={({ currentTarget }) => setQuery(currentTarget.value)}
          onKeyDown={pressed}
        />
      </label>
      <p role="status" className="field-hint">
        {told(asked)}
      </p>
      <div id={list} role="listbox" aria-label="Matches" className="find-matches">
        {answer && <Groups answer={answer} list={list} marked={at} />}
      </div>
      <p className="find-foot">
        {query.trim() && <a href={findAddress(query.trim(), programme)}>All matches on a page</a>}
        <span className="faint">↑ ↓ go along, Enter opens, Esc closes</span>
      </p>
    </dialog>
  )
}

const STEPS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 }

function told(asked: Asked): string {
  switch (asked.state) {
    case 'nothing asked':
      return 'Items, values, limits, checks, lots, parts, logs, files, people, words, pages, and all that has a number: actions, reviews, change notices, studies, nonconformities, concessions, lessons.'
    case 'asking':
      return 'Looking …'
    case 'no answer':
      return 'The server did not answer. Press Enter to ask on a page of its own.'
    case 'answered':
      return asked.answer.found === 0
        ? `Nothing that you may read holds “${asked.query}”.`
        : `${counted(asked.answer.found, 'match', 'matches')}.`
  }
}

function Groups({ answer, list, marked }: { answer: Answer; list: string; marked: number }) {
  let next = 0
  return answer.groups.map(({ name, all, matches }) => {
    const first = next
    next += matches.length
    return (
      <div key={name} role="group" aria-label={name}>
        <p className="find-group" aria-hidden="true">
          {name}
          {all > matches.length && ` (${matches.length} of ${all})`}
        </p>
        {matches.map((match, index) => (
          <Option
            key={`${match.href} ${match.label}`}
            id={`${list}-${first + index}`}
            match={match}
            marked={first + index === marked}
          />
        ))}
      </div>
    )
  })
}

const Option = ({ id, match, marked }: { id: string; match: Match; marked: boolean }) => (
  <a id={id} role="option" aria-selected={marked} tabIndex={-1} href={match.href} className="find-match">
    {match.label}
    {match.detail && <span className="faint"> {match.detail}</span>}
  </a>
)
