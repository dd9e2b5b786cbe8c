import { startEmbeddedServer } from '@/lib/db/embedded-server'

/**
 * A program for tests to kill: starts the private server of the folder named on its command line, tells
 * the address in one line, and then lives on, whatever signal its terminal sends, until it is killed
 * or its input ends.
 */
const server = await startEmbeddedServer(process.argv[2] ?? '')
process.on('SIGINT', () => undefined)
process.stdout.write(`${server.url}\n`)
process.stdin.resume()
process.stdin.once('end', () => void server.stop())
