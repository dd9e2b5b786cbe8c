import { existsSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'

export interface Counts {
  readonly passed: number
  readonly failed: number
  readonly skipped: number
  /** What failed, a line each: file and test. */
  readonly failures: readonly string[]
}

export const NOTHING: Counts = { passed: 0, failed: 0, skipped: 0, failures: [] }

export const added = (one: Counts, other: Counts): Counts => ({
  passed: one.passed + other.passed,
  failed: one.failed + other.failed,
  skipped: one.skipped + other.skipped,
  failures: [...one.failures, ...other.failures],
})

interface VitestReport {
  numPassedTests: number
  numFailedTests: number
  numPendingTests: number
  numTodoTests: number
  testResults: readonly {
    name: string
    status: string
    assertionResults: readonly { fullName: string; status: string }[]
  }[]
}

interface PlaywrightSuite {
  file: string
  specs: readonly { title: string; ok: boolean }[]
  suites?: readonly PlaywrightSuite[]
}

interface PlaywrightReport {
  stats: { expected: number; unexpected: number; flaky: number; skipped: number }
  suites: readonly PlaywrightSuite[]
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
    return {
      passed: expected,
      failed: unexpected + flaky,
      skipped,
      failures: report.suites.flatMap(failedStories),
    }
  }
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests,
    skipped: report.numPendingTests + report.numTodoTests,
    failures: report.testResults.flatMap(failedTests),
  }
}

function failedStories({ file, specs, suites = [] }: PlaywrightSuite): string[] {
  const failed = specs.filter(({ ok }) => !ok).map(({ title }) => `${basename(file)} › ${title}`)
  return [...failed, ...suites.flatMap(failedStories)]
}

function failedTests({ name, status, assertionResults }: VitestReport['testResults'][number]): string[] {
  const failed = assertionResults.filter((test) => test.status === 'failed')
  if (failed.length === 0 && status === 'failed') return [`${basename(name)} did not run`]
  return failed.map(({ fullName }) => `${basename(name)} › ${fullName}`)
}
