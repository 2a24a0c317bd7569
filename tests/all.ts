/** Runs every test, first those of the engine and the app, then those in a browser, and closes with one plain line. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

interface Count {
  passed: number
  failed: number
  skipped: number
}

const folder = mkdtempSync(join(tmpdir(), 'loomwright-tests-'))
const unitReport = join(folder, 'unit.json')
const browserReport = join(folder, 'browser.json')

const run = (args: readonly string[], env: Record<string, string> = {}): number =>
  spawnSync('npx', args, { stdio: 'inherit', env: { ...process.env, ...env } }).status ?? 1

/** A report that is missing or unreadable counts as one failure: a run that broke off never looks green. */
function count(path: string, read: (report: never) => Count, status: number): Count {
  try {
    const counted = read(JSON.parse(readFileSync(path, 'utf8')) as never)
    if (status !== 0 && counted.failed === 0) return { ...counted, failed: 1 }
    return counted
  } catch {
    return { passed: 0, failed: 1, skipped: 0 }
  }
}

const unitStatus = run([
  'vitest',
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${unitReport}`,
])
const unit = count(
  unitReport,
  (r: { numPassedTests: number; numFailedTests: number; numPendingTests: number }) => ({
    passed: r.numPassedTests,
    failed: r.numFailedTests,
    skipped: r.numPendingTests,
  }),
  unitStatus,
)

const browserStatus = run(
  ['playwright', 'test', '--config', 'tests/e2e/playwright.config.ts', '--reporter=list,json'],
  { PLAYWRIGHT_JSON_OUTPUT_FILE: browserReport },
)
const browser = count(
  browserReport,
  (r: { stats: { expected: number; unexpected: number; flaky: number; skipped: number } }) => ({
    passed: r.stats.expected + r.stats.flaky,
    failed: r.stats.unexpected,
    skipped: r.stats.skipped,
  }),
  browserStatus,
)

const passed = unit.passed + browser.passed
const failed = unit.failed + browser.failed
const skipped = unit.skipped + browser.skipped
console.log(`${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`)
process.exit(failed > 0 || passed === 0 ? 1 : 0)
