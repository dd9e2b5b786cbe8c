import { deskAddress } from '@/app/addresses'

/** Only an address of this app: another would make the sign-in page a stepping stone. */
export const placeWithin = (then: string): string => (/^\/(?![/\\])/.test(then) ? then : deskAddress())
