import type { Design } from '../model/design'
import { OWN_CONDUCTOR_BOUNDS, OWN_SIZE_KEY, type OwnConductor } from '../tables/ownsizes'
import { done } from './change'
import type { EditOf, EditResult, Refusal } from './edit'
import { refuse } from './refuse'

/** Sets the designer's own conductors, all rows at once. Conductors of a row that is taken away keep its key: their size is not known. */
export function applyOwnConductors(design: Design, { own }: EditOf<'own conductors'>): EditResult {
  const fault = ownFault(own)
  if (fault) return fault
  const { ownConductors: before, ...rest } = design
  if (own.length === 0) return done(before === undefined ? design : rest)
  return done({ ...rest, ownConductors: own })
}

/** A row of its own, with a key that neither a row nor a conductor has used. */
export function newOwnConductor(design: Design): OwnConductor {
  const key = newOwnKey(design)
  return {
    key,
    name: `Own cable ${key.slice(4)}`,
    sectionMm2: 1,
    ohmsPerKm: null,
    amps: null,
    insulationC: null,
    offered: false,
  }
}

/** A key that neither a row, of the design or of those about to be added, nor a conductor has used. */
export function newOwnKey(design: Design, added: readonly OwnConductor[] = []): string {
  const used = [
    ...[...(design.ownConductors ?? []), ...added].map(({ key }) => key),
    ...design.conductors.flatMap(({ size }) => size ?? []),
  ].map((key) => (OWN_SIZE_KEY.test(key) ? Number(key.slice(4)) : 0))
  return `own:${Math.max(0, ...used) + 1}`
}

/** What is wrong with rows of own conductors, or null. */
export function ownFault(own: readonly OwnConductor[]): Refusal | null {
  const keys = new Set<string>()
  const names = new Set<string>()
  for (const row of own) {
    if (!OWN_SIZE_KEY.test(row.key) || keys.has(row.key))
      return refuse('own-conductor', 'Every own conductor needs a key of its own.')
    const name = row.name.trim()
    if (name === '' || name.length > 60)
      return refuse('own-conductor', 'An own conductor needs a name of at most 60 letters.')
    if (names.has(name)) return refuse('own-conductor', `Two own conductors are called "${name}".`)
    keys.add(row.key)
    names.add(name)
    for (const [key, [least, most]] of Object.entries(OWN_CONDUCTOR_BOUNDS)) {
      const value = row[key as keyof typeof OWN_CONDUCTOR_BOUNDS]
      if (value !== null && !(value >= least && value <= most))
        return refuse('own-conductor', `This figure of an own conductor lies between ${least} and ${most}.`)
    }
  }
  return null
}
