/**
 * Writes the stored cases: `npx tsx tests/reference/ngspice/make.ts`, where ngspice is installed. Each holds a
 * network form, its operating point and the node voltages that ngspice's batch run gave.
 */
import { writeFileSync } from 'node:fs'
import { operatingCase } from './cases'
import { simulate } from './deck'

for (const [seed, ways] of [
  [101, 3],
  [102, 6],
  [103, 10],
  [104, 16],
] as const) {
  const c = operatingCase(seed, ways)
  const file = new URL(`./operating-${seed}.json`, import.meta.url)
  writeFileSync(
    file,
    `${JSON.stringify({ ...c, source: 'ngspice, batch run', volts: simulate(c) }, null, 1)}\n`,
  )
}
