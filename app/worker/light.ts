import type { Bench, Design } from '../../engine'

const known = new WeakMap<Bench, Bench>()

/** A design without the photos of the bench: no worker looks at them, and they would be copied with every edit. */
export function light(design: Design): Design {
  const { bench } = design
  if (!bench?.conductors.some((r) => r.photos)) return design
  let lighter = known.get(bench)
  if (!lighter) {
    lighter = { ...bench, conductors: bench.conductors.map(({ photos: _photos, ...rest }) => rest) }
    known.set(bench, lighter)
  }
  return { ...design, bench: lighter }
}
