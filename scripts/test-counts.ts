import { existsSync, readFileSync } from 'node:fs'

export interface Counts {
  passed: number
  failed: number
  skipped: number
}

interface VitestReport {
  numPassedTests: number
  numFailedTests: number
  numPendingTests: number
  numTodoTests: number
}

interface PlaywrightReport {
  stats: { expected: number; unexpected: number; flaky: number; skipped: number }
}

/**
 * What a test runner wrote of its tests. Undefined when it wrote nothing: it broke before it ran any.
 * A browser test that passed only when tried again counts as failed.
 */
export function readCounts(path: string): Counts | undefined {
  if (!existsSync(path)) return undefined
  const report = JSON.parse(readFileSync(path, 'utf8')) as VitestReport | PlaywrightReport
  if ('stats' in report) {
    const { expected, unexpected, flaky, skipped } = report.stats
    return { passed: expected, failed: unexpected + flaky, skipped }
  }
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests,
    skipped: report.numPendingTests + report.numTodoTests,
  }
}
