import { useEffect, useState } from 'react'
import { useWorks } from '@/app/forms/works'
import type { SpecificationFacts } from '@/shared/gate/live-turns'
import { decimalTyped } from '@/shared/quantity/decimal-typed'
import type { MarginsAnswer } from './judge-margins'
import type { ValueToTry } from './values-to-try'

const PAUSE_MS = 60

/** What the rules say of a value as typed or dragged; undefined until one is tried that differs from what stands. */
export function useTried(
  value: ValueToTry | undefined,
  text: string,
  facts: SpecificationFacts,
): MarginsAnswer | undefined {
  const { notation } = useWorks()
  const [answered, setAnswered] = useState<{ of: string; answer: MarginsAnswer }>()
  const key = value?.key
  const number = decimalTyped(text, notation.decimal)
  const isOther = key !== undefined && number !== value?.value && text.trim() !== ''
  const asked = `${key} ${text}`
  useEffect(() => {
    if (!isOther || key === undefined) return undefined
    let wanted = true
    const judge = async () => {
      const { judgeMargins } = await import('./judge-margins')
      const answer = number === undefined ? { message: 'Type a number.' } : judgeMargins(key, number, facts)
      if (wanted) setAnswered({ of: asked, answer })
    }
    const timer = setTimeout(() => void judge(), PAUSE_MS)
    return () => {
      wanted = false
      clearTimeout(timer)
    }
  }, [isOther, key, number, asked, facts])
  // While a value is dragged, the margins stay where the last one put them.
  return isOther && answered?.of.startsWith(`${key} `) ? answered.answer : undefined
}
