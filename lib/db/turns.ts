/** Hands out a limited number of places; who finds none free waits for one, in the order of asking. */
export function turns(max: number): () => Promise<() => void> {
  const waiting: (() => void)[] = []
  let free = max
  const giveBack = (): void => {
    const next = waiting.shift()
    if (next) next()
    else free += 1
  }
  return async () => {
    if (free > 0) free -= 1
    else await new Promise<void>((resolve) => waiting.push(resolve))
    let given = false
    return () => {
      if (!given) giveBack()
      given = true
    }
  }
}
