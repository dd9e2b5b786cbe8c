import { useEffect, useState } from 'react'
import { matchesAddress } from '@/app/addresses'
import type { Answer } from './answer'

const PAUSE_MS = 120

export type Asked =
  | { readonly state: 'nothing asked' | 'asking' | 'no answer' }
  | { readonly state: 'answered'; readonly query: string; readonly answer: Answer }

/** Asks the server what answers a query, once the typing pauses; what is asked anew takes the place of what was. */
export function useAnswer(query: string, programme: string | undefined): Asked {
  const [asked, setAsked] = useState<Asked>({ state: 'nothing asked' })
  const text = query.trim()
  useEffect(() => {
    if (!text) return undefined
    const abort = new AbortController()
    const ask = async () => {
      try {
        const response = await fetch(matchesAddress(text, programme), {
          signal: abort.signal,
          headers: { accept: 'application/json' },
        })
        if (!response.ok) throw new Error(`The server answered ${response.status}.`)
        setAsked({ state: 'answered', query: text, answer: (await response.json()) as Answer })
      } catch {
        if (!abort.signal.aborted) setAsked({ state: 'no answer' })
      }
    }
    const timer = setTimeout(() => void ask(), PAUSE_MS)
    return () => {
      clearTimeout(timer)
      abort.abort()
    }
  }, [text, programme])
  return text ? asked : { state: 'nothing asked' }
}
