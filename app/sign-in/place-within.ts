import { deskAddress } from '@/app/addresses'

/** Any address will do: it only gives a relative one something to be relative to. */
const HERE = 'http://here.invalid'

/**
 * Only an address of this app: another would make the sign-in page a stepping stone. It is read as a
 * browser reads it, which drops tabs and line ends and takes a backslash for a slash (WHATWG URL, section 4.4).
 */
export function placeWithin(then: string): string {
  if (!then.startsWith('/') || !URL.canParse(then, HERE)) return deskAddress()
  const { origin, pathname, search, hash } = new URL(then, HERE)
  return origin === HERE && !pathname.startsWith('//') ? `${pathname}${search}${hash}` : deskAddress()
}
