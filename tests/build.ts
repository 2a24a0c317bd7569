import { kindOf } from '../engine/kinds/all'
import type { Conductor, Design, Part, Settings, TerminalRef } from '../engine/model/design'
import { valueFault } from '../engine/model/fieldfault'
import type { Values } from '../engine/model/fields'
import { newConductor, newDesign } from '../engine/model/newdesign'
import { complete } from '../engine/model/values'

/** Place and words of a part where a test cares about them. */
export type PartWords = Partial<Pick<Part, 'name' | 'location' | 'x' | 'y' | 'turn' | 'mirrored'>>

/** Data of a conductor; `returnOf` names its feed by number. */
export type JoinWords = Partial<Omit<Conductor, 'id' | 'from' | 'to'>>

/**
 * A design in one expression:
 *
 *     design({ systemV: 12 })
 *       .part('battery', 'G1', { capacityAh: 100 })
 *       .part('fuse-bolt', 'F1', { ratingA: 100 })
 *       .join('G1.pos', 'F1.a', { size: '35mm2', lengthM: 0.3 })
 *       .build()
 *
 * Parts are named by designation, ends by "designation.terminal"; conductors are numbered W1, W2 … unless told.
 * Throws on what a test cannot mean: a kind, terminal or field that does not exist, a value that does not fit, a
 * name given twice. It does not ask whether a join is sensible: tests plant mistakes on purpose.
 */
export function design(settings: Partial<Settings> = {}): DesignBuilder {
  return new DesignBuilder(newDesign('test', { name: 'Test design', ...settings }))
}

export class DesignBuilder {
  constructor(private readonly now: Design) {}

  /** The same with another permanent id. */
  as(id: string): DesignBuilder {
    return new DesignBuilder({ ...this.now, id })
  }

  part(kindKey: string, designation: string, values: Values = {}, words: PartWords = {}): DesignBuilder {
    if (this.now.parts.some((p) => p.designation === designation))
      throw new Error(`${designation} stands twice`)
    const kind = kindOf(kindKey)
    if (!kind) throw new Error(`There is no kind "${kindKey}"`)
    for (const [key, value] of Object.entries(values)) {
      const field = kind.fields[key]
      if (!field) throw new Error(`${kindKey} has no field "${key}": ${Object.keys(kind.fields).join(', ')}`)
      const fault = valueFault(field, value)
      if (fault) throw new Error(`${designation} ${[key, ...fault.at].join('.')} takes ${fault.expected}`)
    }
    const n = this.now.parts.length
    const part: Part = {
      id: `p${n + 1}`,
      kind: kindKey,
      designation,
      name: '',
      location: '',
      x: (n % 12) * 60,
      y: Math.floor(n / 12) * 60,
      turn: 0,
      mirrored: false,
      values: complete(kind.fields, values),
      ...words,
    }
    return new DesignBuilder({ ...this.now, parts: [...this.now.parts, part] })
  }

  join(from: string, to: string, { returnOf, ...words }: JoinWords = {}): DesignBuilder {
    const n = this.now.conductors.length + 1
    const number = words.number ?? `W${n}`
    if (this.now.conductors.some((c) => c.number === number)) throw new Error(`${number} stands twice`)
    const conductor: Conductor = {
      ...newConductor(`c${n}`, number, this.end(from), this.end(to)),
      ...words,
      returnOf: returnOf === undefined || returnOf === null ? null : conductorNumbered(this.now, returnOf).id,
    }
    return new DesignBuilder({ ...this.now, conductors: [...this.now.conductors, conductor] })
  }

  build(): Design {
    return this.now
  }

  private end(text: string): TerminalRef {
    const dot = text.indexOf('.')
    const part = partNamed(this.now, text.slice(0, dot))
    const terminal = text.slice(dot + 1)
    const kind = kindOf(part.kind)!
    const keys = kind.terminals(complete(kind.fields, part.values)).map((t) => t.key)
    if (!keys.includes(terminal)) throw new Error(`${text}: ${part.kind} has terminals ${keys.join(', ')}`)
    return { part: part.id, terminal }
  }
}

/** The part of a designation; throws when there is none. */
export function partNamed(of: Design, designation: string): Part {
  const part = of.parts.find((p) => p.designation === designation)
  if (!part) throw new Error(`There is no part ${designation}`)
  return part
}

/** The conductor of a number; throws when there is none. */
export function conductorNumbered(of: Design, number: string): Conductor {
  const conductor = of.conductors.find((c) => c.number === number)
  if (!conductor) throw new Error(`There is no conductor ${number}`)
  return conductor
}
