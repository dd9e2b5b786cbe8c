import { isIP } from 'node:net'

/**
 * The address a request came from: `forwardedFor` lists who passed it on, this server's own peer last. Each proxy
 * that the installation trusts wrote the entry before its own; what stands further left anybody can have written.
 */
export function clientAddress(forwardedFor: string | null, trustedProxies: number): string {
  const passed = (forwardedFor ?? '').split(',').map((each) => each.trim())
  const named = passed.filter((each) => each !== '')
  return bareAddress(named[Math.max(0, named.length - 1 - trustedProxies)] ?? '')
}

/**
 * What tries are counted for: the address, of IPv6 its first 64 bits, which one network has to itself (RFC 4291,
 * section 2.5.4; RFC 6177), so that a machine with many addresses counts once.
 */
export function originOf(address: string): string {
  if (isIP(address) !== 6) return address
  const groups = groupsOf(address)
  const mapped = groups.slice(0, 5).every((group) => group === 0) && groups[5] === 0xffff
  if (mapped) return [groups[6], groups[7]].flatMap((group = 0) => [group >> 8, group & 255]).join('.')
  return `${groups
    .slice(0, 4)
    .map((group) => group.toString(16))
    .join(':')}::/64`
}

/** Without the port, brackets or zone that some servers write beside an address; what is no address is none. */
function bareAddress(written: string): string {
  const [, inBrackets] = /^\[([^\]]*)\](?::\d+)?$/.exec(written) ?? []
  const [, beforePort] = /^([\d.]+):\d+$/.exec(written) ?? []
  const address = (inBrackets ?? beforePort ?? written).replace(/%.*$/, '')
  return isIP(address) ? address : 'unknown'
}

/** The eight groups of an IPv6 address, by the form that the URL standard gives it. */
function groupsOf(address: string): number[] {
  const [left = '', right] = new URL(`http://[${address}]/`).hostname.slice(1, -1).split('::')
  const numbers = (side: string) => (side ? side.split(':').map((group) => parseInt(group, 16)) : [])
  const [first, last] = [numbers(left), numbers(right ?? '')]
  return [...first, ...Array<number>(8 - first.length - last.length).fill(0), ...last]
}
