import { type Control, type Design, kindOf, partById } from '../../engine'

export interface ControlGroup {
  readonly title: string
  readonly members: readonly Control[]
}

/** The controls as they stand in the panel: sun and other sources first, fuses last. Empty groups are left out. */
export function groupsOf(design: Design, controls: readonly Control[]): readonly ControlGroup[] {
  const of = (title: string, test: (c: Control) => boolean): ControlGroup => ({
    title,
    members: controls.filter(test),
  })
  const isArray = (c: Control): boolean =>
    c.is === 'source' && kindOf(partById(design, c.part)?.kind ?? '')?.key === 'pv-array'
  return [
    of('Sun', isArray),
    of('Other sources', (c) => c.is === 'source' && !isArray(c)),
    of('Charge stages', (c) => c.is === 'stage'),
    of('Switches', (c) => c.is === 'contact' || c.is === 'throw'),
    of('Loads', (c) => c.is === 'load'),
    of('Batteries', (c) => c.is === 'charge'),
    of('Fuses', (c) => c.is === 'fuse'),
  ].filter((g) => g.members.length > 0)
}
