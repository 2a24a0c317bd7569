import type { Answers } from '../calc/answers'
import { contextOf } from '../calc/network'
import { electricalIn } from '../edit/terminal'
import type { Design, Part } from '../model/design'
import type { PartDevice } from '../model/kind'
import { conductorsAt } from '../model/lookup'
import { figure } from '../words/names'

/** What a part draws as a load; undefined where it is none. */
export function loadDeviceOf(design: Design, part: Part): PartDevice | undefined {
  return electricalIn(part, contextOf(design))?.devices.find((d) => d.role === 'load')
}

/** Largest running current of a load: "8.3 A", "? A" where it is not known. */
export function drawWords({ minA }: PartDevice): string {
  if (minA === null) return '? A'
  return minA === 'unlimited' ? 'unlimited' : figure(0 - minA, 'A')
}

/**
 * Whether the load-side shunts count a load: one or two words, as on every load of the drawing. A load in a circuit of
 * its own, behind a converter, counts as its feed does.
 */
export function meteredOf(
  design: Design,
  part: Part,
  { positive }: PartDevice,
  answers: Answers | null,
): string {
  if (!answers) return 'metering ?'
  const shares = [...answers.shunts.values()]
    .filter((s) => s.role === 'load')
    .flatMap((s) => s.shares)
    .filter((share) => share.part === part.id && share.role === 'load')
  if (shares.length === 0) {
    const feeds = conductorsAt(design, part.id, positive).map((c) => answers.runs.get(c.id)?.metered)
    if (feeds.includes('shared')) return 'partly measured'
    return feeds.includes('measured') ? 'measured' : 'not measured'
  }
  const least = Math.max(...shares.map((s) => s.from))
  const most = Math.max(...shares.map((s) => s.to))
  if (least > 1 - EPSILON) return 'measured'
  if (most > EPSILON) return 'partly measured'
  return shares.some((s) => s.from < -EPSILON) ? 'measured backwards' : 'not measured'
}

const EPSILON = 1e-6
