import { subscribe } from 'node:diagnostics_channel'
import type { IncomingMessage } from 'node:http'

/**
 * Adds the address at the other end of the connection to every request's `x-forwarded-for`, last, as a proxy in
 * front would. The framework hands no connection on, and keeps that header as the browser wrote it.
 */
export function noteEveryPeer(): void {
  subscribe('http.server.request.start', (message) => {
    const { request } = message as { request: IncomingMessage }
    const said = request.headers['x-forwarded-for']
    request.headers['x-forwarded-for'] = [said, request.socket.remoteAddress]
      .flat()
      .filter(Boolean)
      .join(', ')
  })
}
