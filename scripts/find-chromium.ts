import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { chromium } from 'playwright'
import { say } from '@/scripts/progress'

const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
]

/**
 * The browser for the browser tests: the one that CHROMIUM_PATH names, one of this machine's, or the one
 * that Playwright keeps. As root on Debian it is installed when there is none.
 */
export function findChromium(): string {
  const named = process.env.CHROMIUM_PATH
  if (named && !existsSync(named)) throw new Error(`CHROMIUM_PATH is ${named}, but there is no such file.`)
  const found = named ?? firstThere() ?? install()
  if (found) return found
  throw new Error(
    'There is no Chromium for the browser tests. Install one (on Debian: apt-get install -y chromium; elsewhere: ' +
      'npx playwright install chromium), or set CHROMIUM_PATH to one.',
  )
}

function firstThere(): string | undefined {
  return [...USUAL_PLACES, chromium.executablePath()].find((path) => existsSync(path))
}

function install(): string | undefined {
  const mayInstall = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')
  if (!mayInstall) return undefined
  say('Installing chromium, for the browser tests …')
  const quietly = { env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } }
  execFileSync('apt-get', ['update'], quietly)
  execFileSync('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], quietly)
  return firstThere()
}
