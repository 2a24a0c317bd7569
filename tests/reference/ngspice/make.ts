/**
 * Writes the stored cases: `npx tsx tests/reference/ngspice/make.ts`, where ngspice is installed. operating-*: a
 * network form, its operating point and the node voltages that ngspice's batch run gave. shorts.json: seeds of such
 * systems with what a short circuit at a node drives, batteries alone feeding it. charging-*: systems with chargers in
 * bulk, absorption and float.
 */
import { writeFileSync } from 'node:fs'
import { operatingCase, shortCase } from './cases'
import { CHARGING_SEEDS, chargingCase } from './charging'
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

for (const seed of CHARGING_SEEDS) {
  const c = chargingCase(seed, 6)
  const file = new URL(`./charging-${seed}.json`, import.meta.url)
  writeFileSync(
    file,
    `${JSON.stringify({ ...c, source: 'ngspice, batch run', volts: simulate(c) }, null, 1)}\n`,
  )
}

const shorts = [301, 302, 303, 304].flatMap((seed) =>
  ['bar+', 'way0', 'load3+', 'alternator'].map((node) => {
    const { c, ampsOf } = shortCase(seed, 8, node)
    return { seed, ways: 8, node, amps: ampsOf(simulate(c)) }
  }),
)
writeFileSync(
  new URL('./shorts.json', import.meta.url),
  `${JSON.stringify({ source: 'ngspice, batch run', shorts }, null, 1)}\n`,
)
