import type { ConductorId } from '../../engine'

/** The conductor drawn at a point of the page; null where there is none. */
export function conductorUnder(at: {
  readonly clientX: number
  readonly clientY: number
}): ConductorId | null {
  const run = document.elementFromPoint(at.clientX, at.clientY)?.closest('[data-conductor]')
  return run?.getAttribute('data-conductor') ?? null
}
