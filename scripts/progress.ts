// Whoever read the output may be gone (`npm start | head`): no reason for the app to end.
process.stdout.on('error', () => undefined)

/** Says to the person at the terminal what is going on, a short line a step. */
export function say(line = ''): void {
  process.stdout.write(`${line}\n`)
}

/** Runs a step that may take long: says that it begins and, after a second or more, how long it took. Steps may overlap. */
export async function step<Result>(what: string, work: () => Promise<Result>): Promise<Result> {
  const began = performance.now()
  say(`  ${what} …`)
  const result = await work()
  const tookS = (performance.now() - began) / 1000
  if (tookS >= 1) say(`  ${what}: done in ${tookS.toFixed(0)} s`)
  return result
}
