import { clientAddress, originOf } from '@/lib/auth/origin'
import { log } from '@/lib/log/log'
import { settings } from '@/lib/settings/settings'

/** The browser at the other end of a request. */
export interface Visitor {
  readonly address: string
  /** What its tries are counted for. */
  readonly origin: string
  /** What it says it is, at most 300 characters. */
  readonly userAgent: string
}

const LONGEST_USER_AGENT = 300

const kept = globalThis as { liquidusProxyTold?: boolean }

/** Who asks, by the headers of the request; see `noteEveryPeer` for the one that is ours. */
export function visitorFrom(headers: { get(name: string): string | null }): Visitor {
  const passed = headers.get('x-forwarded-for')
  const { trustedProxies } = settings()
  if (trustedProxies === 0 && passed?.includes(',')) tellOfProxy()
  const address = clientAddress(passed, trustedProxies)
  const userAgent = (headers.get('user-agent') ?? '').slice(0, LONGEST_USER_AGENT)
  return { address, origin: originOf(address), userAgent }
}

/** Once a process: behind a proxy that is not counted, everybody has one address. */
function tellOfProxy(): void {
  if (kept.liquidusProxyTold) return
  kept.liquidusProxyTold = true
  log.warn(
    'A request names addresses it was passed on by, which are not believed. If a proxy of yours stands in front, set LIQUIDUS_TRUSTED_PROXIES.',
  )
}
