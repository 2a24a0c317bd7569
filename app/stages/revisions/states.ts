import { asBuilt, type Design, issuedDesign, standingWords } from '../../../engine'

/** A state that can be looked at and compared: "now", "built", or "issued B". */
export interface StateChoice {
  readonly key: string
  readonly title: string
}

export const NOW = 'now'
export const BUILT = 'built'
export const issuedKey = (number: string): string => `issued ${number}`

/** Every state of a design, the oldest first, the present one last but for what was built otherwise. */
export function statesOf(design: Design): readonly StateChoice[] {
  const built = builtOf(design) !== design
  return [
    ...(design.revisions ?? []).map(({ number, date }) => ({
      key: issuedKey(number),
      title: `Revision ${number}, ${date}`,
    })),
    { key: NOW, title: built ? 'As drawn now' : 'As it is now' },
    ...(built ? [{ key: BUILT, title: 'As built' }] : []),
  ]
}

/** null: the revision is not what was issued. The same object while nothing changes. */
export function stateOf(design: Design, key: string): Design | null {
  if (key === NOW) return design
  if (key === BUILT) return builtOf(design)
  return issuedDesign(design, key.slice(issuedKey('').length))
}

const builtBefore = new WeakMap<Design, Design>()

function builtOf(design: Design): Design {
  const known = builtBefore.get(design) ?? asBuilt(design)
  builtBefore.set(design, known)
  return known
}

/** What is compared unless somebody chooses: the newest change there is. */
export function usualPair(design: Design): { readonly from: string; readonly to: string } {
  const revisions = design.revisions ?? []
  const { issued } = standingWords(design)
  if (builtOf(design) !== design) return { from: NOW, to: BUILT }
  const before = issued ? (revisions.at(-2) ?? revisions.at(-1)) : revisions.at(-1)
  return { from: before ? issuedKey(before.number) : NOW, to: NOW }
}
