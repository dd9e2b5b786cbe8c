import type { JoinedCopper } from './joined-copper'

/**
 * What each piece of copper is called: as its files name its net, else as the
 * netlist does, else by a number of its own.
 */
export function netNames(
  { stack, groups }: JoinedCopper,
  listed: ReadonlyMap<number, readonly string[]>,
): (group: number) => string {
  const names = new Map<number, string>()
  for (const { copper, first } of stack)
    copper.copper.forEach(({ attributes }, at) => {
      const group = groups.of(first + at)
      if (attributes.net !== undefined && !names.has(group)) names.set(group, attributes.net)
    })
  const numbers = new Map<number, number>()
  return (group) => {
    const named = names.get(group) ?? listed.get(group)?.[0]
    if (named !== undefined) return named
    if (!numbers.has(group)) numbers.set(group, numbers.size + 1)
    return `copper ${numbers.get(group)}`
  }
}
