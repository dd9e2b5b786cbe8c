/** A run of designators such as "R1–R40" or "R1-40": the letters, and from where to where. */
const RUN = /^([a-z]+)(\d+)\s*[–—-]\s*(?:[a-z]+)?(\d+)$/i
const DESIGNATOR = /^([a-z]+)(\d+)(?![a-z0-9])/i

/**
 * The component that a joint's name begins with, among these. "T1-3" belongs to
 * "T1", not to "T10-3"'s "T10"; "U3-4" belongs to a row named "U1–U9". A name
 * written out wins over a run, a longer one over a shorter that begins it.
 */
export function componentOfJoint(joint: string, components: readonly string[]): string | undefined {
  const name = joint.trim().toLowerCase()
  const exact = components
    .filter((component) => beginsWith(name, component.trim().toLowerCase()))
    .sort((a, b) => b.length - a.length)[0]
  if (exact !== undefined) return exact
  const [, letters, number] = DESIGNATOR.exec(name) ?? []
  if (letters === undefined) return undefined
  return components.find((component) =>
    component.split(/[,;]/).some((part) => isInRun(part.trim(), letters, Number(number))),
  )
}

const beginsWith = (name: string, component: string): boolean =>
  component !== '' &&
  name.startsWith(component) &&
  !/[a-z0-9]/.test(name.charAt(component.length)) &&
  !RUN.test(component)

function isInRun(part: string, letters: string, number: number): boolean {
  const [, own, from, to] = RUN.exec(part) ?? []
  if (own === undefined) {
    const [, single, at] = DESIGNATOR.exec(part) ?? []
    return single?.toLowerCase() === letters && Number(at) === number
  }
  return own.toLowerCase() === letters && number >= Number(from) && number <= Number(to)
}
