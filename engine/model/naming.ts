import type { Design } from './design'

/** Hands out ids, designations and conductor numbers that a design does not use yet, none of them twice. */
export interface Naming {
  readonly partId: () => string
  readonly conductorId: () => string
  /** Of an outline on the sheet: "z3". */
  readonly zoneId: () => string
  /** Of a text on the sheet: "t4". */
  readonly textId: () => string
  /** Next designation of a class letter: "F7". */
  readonly designation: (letter: string) => string
  /** Next conductor number: "W12". */
  readonly number: () => string
}

/**
 * One past the highest number in use, so that a name taken off the drawing is not given to something else at once.
 * Conductors and bars share the class letter W of IEC 81346-2 and are counted together: no bar is called as a
 * conductor is.
 */
export function namingFor(design: Design): Naming {
  const partId = counter('p', design.parts, (p) => p.id)
  const conductors = [...design.conductors.map((c) => c.id), ...benchIds(design)]
  const conductorId = counter('c', conductors, (id) => id)
  const zoneId = counter('z', design.zones ?? [], (z) => z.id)
  const textId = counter('t', design.texts ?? [], (t) => t.id)
  const names = [...design.parts.map((p) => p.designation), ...design.conductors.map((c) => c.number)]
  const letters = new Map<string, () => string>()
  const designation = (letter: string): string => {
    let next = letters.get(letter)
    if (!next) {
      next = counter(letter, names, (name) => name)
      letters.set(letter, next)
    }
    return next()
  }
  return { partId, conductorId, zoneId, textId, designation, number: () => designation('W') }
}

/** Conductors that something was recorded of at the bench: a new one never takes over the record of an old one. */
const benchIds = ({ bench }: Design): readonly string[] => bench?.conductors.map((r) => r.conductor) ?? []

/** Next free id: "p12" for a part, "c12" for a conductor, "z2" for an outline, "t3" for a text on the sheet. */
export function nextId(design: Design, of: 'p' | 'c' | 'z' | 't'): string {
  const { partId, conductorId, zoneId, textId } = namingFor(design)
  return { p: partId, c: conductorId, z: zoneId, t: textId }[of]()
}

export const nextDesignation = (design: Design, letter: string): string =>
  namingFor(design).designation(letter)

export const nextNumber = (design: Design): string => namingFor(design).number()

function counter<T>(letter: string, items: readonly T[], nameOf: (item: T) => string): () => string {
  let highest = 0
  for (const item of items) {
    const name = nameOf(item)
    if (!name.startsWith(letter)) continue
    const digits = name.slice(letter.length)
    // Longer numbers come from elsewhere and need not be counted on from.
    if (/^\d{1,9}$/.test(digits)) highest = Math.max(highest, Number(digits))
  }
  return () => {
    highest += 1
    return `${letter}${highest}`
  }
}
