/*
 * How much script a browser loads with its first page, against the framework's share of it, which is all
 * that an empty page loads. Gzip bytes; the polyfills that only old browsers ask for are left out on both sides.
 * Run: npx tsx tests/bench/first-load-script.bench.ts
 */
import { readFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import { signIn, withRunningApp } from '@/tests/bench/running-app'

const MAX_RATIO = 1.3
const MANIFEST = new URL('../../.next/build-manifest.json', import.meta.url)

interface Manifest {
  readonly rootMainFiles: readonly string[]
  readonly polyfillFiles: readonly string[]
}

async function gzipBytesOf(base: string, paths: Iterable<string>): Promise<number> {
  let bytes = 0
  for (const path of paths) {
    const response = await fetch(base + path)
    if (!response.ok)
      throw new Error(`${path} answered ${response.status}: is the app at ${base} this build?`)
    bytes += gzipSync(Buffer.from(await response.arrayBuffer())).length
  }
  return bytes
}

/** The scripts that the page asks for when it is opened first. */
async function scriptsOf(address: string, cookie: string): Promise<Set<string>> {
  const page = await (await fetch(address, { headers: { cookie } })).text()
  const sources = [...page.matchAll(/<script[^>]*\ssrc="([^"?]+)/g)].map(([, source]) => source ?? '')
  if (sources.length === 0) throw new Error(`${address} asks for no script at all.`)
  return new Set(sources)
}

await withRunningApp(async (base) => {
  const { rootMainFiles, polyfillFiles } = JSON.parse(readFileSync(MANIFEST, 'utf8')) as Manifest
  const served = (file: string) => `/_next/${file}`
  const floor = await gzipBytesOf(base, rootMainFiles.map(served))
  const cookie = await signIn(base)
  for (const [name, path, worn] of [
    ['sign-in', '/sign-in', ''],
    ['route card', '/programmes/LX-41', cookie],
  ] as const) {
    const scripts = await scriptsOf(base + path, worn)
    for (const file of polyfillFiles) scripts.delete(served(file))
    const bytes = await gzipBytesOf(base, scripts)
    const ratio = bytes / floor
    console.log(
      `${name}: ${(bytes / 1024).toFixed(0)} KiB of script, ${ratio.toFixed(2)} times the framework’s own ${(floor / 1024).toFixed(0)} KiB (wanted: ${MAX_RATIO} or less)`,
    )
    if (!(ratio <= MAX_RATIO)) process.exitCode = 1
  }
})
