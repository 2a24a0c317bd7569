import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { NetworkForm } from '../../../engine/calc/form'
import type { Operation } from '../../../engine/calc/operation'
import type { Stretches } from '../../../engine/calc/stretches'

/** A network with its operating point stated device by device, and the nodes tied to the simulator's ground. */
export interface Case {
  readonly name: string
  readonly form: NetworkForm
  readonly operations: readonly (readonly [device: string, operation: Operation])[]
  readonly grounds: readonly string[]
}

/** Is the circuit simulator (Debian package ngspice) on this machine? */
export function hasNgspice(): boolean {
  try {
    execFileSync('ngspice', ['--version'], { stdio: 'ignore' })
    return true
  } catch {
    return false
  }
}

/**
 * Under this voltage a constant power goes on as a constant current, so that the simulator cannot settle in the
 * collapsed state that constant powers have too. No case comes near it.
 */
const LOWEST_V = 9

/** What a device delivers that works in stretches, as an expression on the voltage across it. */
function stretchedAmps(stretches: Stretches, across: string): string {
  const amps = stretches.map((s) => {
    if ('amps' in s) return `(${s.amps})`
    if ('watts' in s) return `(${s.watts}/max(${across},${LOWEST_V}))`
    return `((${s.volts}-${across})/${s.ohms})`
  })
  return stretches.reduceRight(
    (above, { fromV }, i) => (i === 0 ? above : `(${across}<${fromV} ? ${amps[i - 1]} : ${above})`),
    amps[amps.length - 1]!,
  )
}

/** How long a case with stretches is left to come to rest, s. */
const UNTIL_S = 100

/** What an output delivers, as an expression on the voltage across it. */
function wattsOf(output: Operation, across: string): string {
  if ('stretches' in output) return `${stretchedAmps(output.stretches, across)}*${across}`
  if ('watts' in output) return `${output.watts}`
  if ('volts' in output) return `(${output.volts}-${across})/${output.ohms}*${across}`
  return `${(output as { amps: number }).amps}*${across}`
}

/**
 * The case as a SPICE deck: resistors, batteries as a source behind a resistor, constant currents as current
 * sources, constant power and converters as behavioural current sources. It writes every node voltage to `raw`.
 */
export function deckOf(c: Case, raw: string): string {
  const grounds = new Set(c.grounds)
  const number = new Map(c.form.nodes.map((id, i) => [id, `n${i}`]))
  const node = (id: string): string => (grounds.has(id) ? '0' : number.get(id)!)
  const operations = new Map(c.operations)
  const fedBy = new Map(
    c.operations.flatMap(([id, o]) => (o.input === undefined ? [] : [[o.input, id] as const])),
  )
  const devices = new Map(c.form.devices.map((d) => [d.id, d]))
  const across = (id: string): string => {
    const d = devices.get(id)!
    return `(v(${node(d.positive)})-v(${node(d.negative)}))`
  }
  const lines = [`* ${c.name}`]
  c.form.branches.forEach((b, i) => {
    lines.push(`R${i} ${node(b.from)} ${node(b.to)} ${b.resistance}`)
  })
  c.form.devices.forEach((d, i) => {
    const p = node(d.positive)
    const n = node(d.negative)
    const o = operations.get(d.id)
    const output = fedBy.get(d.id)
    if (output !== undefined) {
      const from = operations.get(output)!
      const watts = wattsOf(from, across(output))
      lines.push(`B${i} ${n} ${p} I=-(${watts})/${from.efficiency ?? 1}/max(${across(d.id)},${LOWEST_V})`)
    } else if (o && 'stretches' in o) {
      lines.push(`B${i} ${n} ${p} I=${stretchedAmps(o.stretches, across(d.id))}`)
    } else if (o && 'amps' in o) lines.push(`I${i} ${n} ${p} ${o.amps}`)
    else if (o && 'watts' in o) lines.push(`B${i} ${n} ${p} I=(${o.watts})/max(${across(d.id)},${LOWEST_V})`)
    else if (o && 'volts' in o) lines.push(`V${i} e${i} ${n} ${o.volts}`, `RI${i} e${i} ${p} ${o.ohms}`)
    else if (o) lines.push(`RL${i} ${p} ${n} ${o.ohms}`)
    else if (d.emf !== undefined)
      lines.push(`V${i} e${i} ${n} ${d.emf}`, `RI${i} e${i} ${p} ${d.internalResistance}`)
  })
  // Steps of the simulator's own search go to and fro over the bends of stretches; a capacitor across each lets it run
  // into its steady state in time instead.
  const bent = c.operations.flatMap(([id, o]) => ('stretches' in o ? [{ id, list: o.stretches }] : []))
  bent.forEach(({ id, list }, i) => {
    const { positive, negative } = devices.get(id)!
    lines.push(`C${i} ${node(positive)} ${node(negative)} 0.001 IC=${list[list.length - 1]!.fromV}`)
  })
  lines.push(
    '.options reltol=1e-11 vntol=1e-12 abstol=1e-13 itl1=1000 itl4=100 gmin=1e-18',
    '.control',
    'set filetype=ascii',
    bent.length > 0 ? `tran 0.01 ${UNTIL_S} 0 5 uic` : 'op',
    `write ${raw}`,
    'quit 0',
    '.endc',
    '.end',
  )
  return `${lines.join('\n')}\n`
}

/** Runs the case in batch and gives the voltage of each node of the form, V. */
export function simulate(c: Case): number[] {
  const folder = mkdtempSync(join(tmpdir(), 'ngspice-'))
  try {
    const raw = join(folder, 'out.raw')
    const deck = join(folder, 'deck.cir')
    writeFileSync(deck, deckOf(c, raw))
    execFileSync('ngspice', ['-b', deck], { stdio: 'ignore' })
    return voltagesOf(c, readFileSync(raw, 'utf8'))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** Reads the simulator's ASCII result: a list of variables, then one value for each, at the last of its points. */
function voltagesOf(c: Case, text: string): number[] {
  const lines = text.split('\n').map((line) => line.trim())
  const names = lines
    .slice(lines.indexOf('Variables:') + 1, lines.indexOf('Values:'))
    .map((line) => line.split(/\s+/)[1]!.toLowerCase())
  const values = lines
    .slice(lines.indexOf('Values:') + 1)
    .join(' ')
    .trim()
    .split(/\s+/)
    .slice(-names.length)
    .map(Number)
  const at = new Map(names.map((name, i) => [name, values[i]!]))
  if ((at.get('time') ?? UNTIL_S) < UNTIL_S) throw new Error(`${c.name}: stopped at ${at.get('time')} s`)
  const grounds = new Set(c.grounds)
  return c.form.nodes.map((id, i) => {
    if (grounds.has(id)) return 0
    const v = at.get(`v(n${i})`) ?? at.get(`n${i}`)
    if (v === undefined) throw new Error(`${c.name}: no voltage for node ${id}`)
    return v
  })
}
