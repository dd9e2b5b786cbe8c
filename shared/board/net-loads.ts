import type { NetClass } from '@/shared/plan/parameters/net-classes'

/** What a net carries as far as the specification says it of its name. */
export interface NetLoad {
  /** Between which voltages against common it lies, V; undefined where none is stated. */
  readonly voltage: VoltageSpan | undefined
  /** A; undefined where none is stated. */
  readonly currentA: number | undefined
  /** The least that is allowed of those stated, mV. */
  readonly dropMostMv: number | undefined
}

export interface VoltageSpan {
  readonly leastV: number
  readonly mostV: number
}

/** All that is stated of a net, by every row that names it: the widest span, the greatest current, the least drop. */
export function netLoad(net: string, classes: readonly NetClass[]): NetLoad {
  const rows = classes.filter(({ nets }) => namesNet(nets, net))
  const spans = rows.flatMap(spansOf)
  return {
    voltage:
      spans.length > 0
        ? {
            leastV: Math.min(...spans.map(({ leastV }) => leastV)),
            mostV: Math.max(...spans.map(({ mostV }) => mostV)),
          }
        : undefined,
    currentA: greatest(rows.flatMap(({ currentA }) => currentA ?? [])),
    dropMostMv: least(rows.flatMap(({ dropMostMv }) => dropMostMv ?? [])),
  }
}

/** The greatest voltage that two nets can have between them, V. */
export const voltageBetween = (one: VoltageSpan, other: VoltageSpan): number =>
  Math.max(0, one.mostV - other.leastV, other.mostV - one.leastV)

/** The greatest voltage between any two of some nets, V; 0 where there are none. */
export const spread = (spans: readonly VoltageSpan[]): number =>
  Math.max(0, Math.max(...spans.map(({ mostV }) => mostV)) - Math.min(...spans.map(({ leastV }) => leastV)))

/** Between which voltages one row says that its nets lie; none where it states no voltage. */
export function spansOf({ voltageV, alternates = false }: NetClass): VoltageSpan[] {
  if (voltageV === undefined) return []
  return alternates
    ? [{ leastV: -Math.abs(voltageV), mostV: Math.abs(voltageV) }]
    : [{ leastV: voltageV, mostV: voltageV }]
}

const greatest = (values: readonly number[]): number | undefined =>
  values.length > 0 ? Math.max(...values) : undefined
const least = (values: readonly number[]): number | undefined =>
  values.length > 0 ? Math.min(...values) : undefined

/** Whether a list of names and patterns, parted by commas, names a net. Capitals are no matter. */
export const namesNet = (names: string, net: string): boolean =>
  names.split(',').some((name) => fits(name.trim().toLowerCase(), net.toLowerCase()))

/** A star stands for any letters, none among them. Takes each piece where it first comes, so that no pattern takes long. */
function fits(pattern: string, net: string): boolean {
  if (pattern === '') return false
  const [first = '', ...rest] = pattern.split('*')
  const last = rest.pop()
  if (last === undefined) return pattern === net
  if (!net.startsWith(first)) return false
  let from = first.length
  for (const piece of rest) {
    const found = net.indexOf(piece, from)
    if (found < 0) return false
    from = found + piece.length
  }
  return net.length - last.length >= from && net.endsWith(last)
}
