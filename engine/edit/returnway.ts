import { boxOf } from '../kinds/place'
import type { Design, Part, TerminalRef } from '../model/design'
import { conductorsAt, partById } from '../model/lookup'
import { blockBehind } from './block'
import { isBlock } from './distribution'
import { charges, consumersIn, type Fed } from './feed'
import { netsOf } from './nets'
import { freeStud, negativeBars } from './returnbars'

/** Where a return goes and which rule chose it; no place: why there is none. */
export interface ReturnWay {
  readonly to: TerminalRef | null
  readonly why: string
}

/**
 * The return bar that belongs to a feed, by the first rule that finds one with a free stud:
 * 1 a source other than a battery that feeds directly: its own negative terminal;
 * 2 the return bar of the fuse block that feeds (not for what charges, where it is behind the load-side shunt);
 * 3 the bar that other consumers of that block return to, most of them first;
 * 4 where there is a load-side shunt: a bar behind it for what only takes, one not behind it for what also charges;
 * 5 the nearest negative bar;
 * 6 the negative terminal of a battery that feeds, where there is no such bar.
 * A bar on the wrong side of the load-side shunt is never taken by rules 4 to 6: better no return than a false reading.
 */
export function returnWay(design: Design, fed: Fed): ReturnWay {
  const block = blockBehind(design, fed.feed)
  return (
    ownNegative(design, fed) ??
    ownBar(design, block, fed) ??
    sharedBar(design, block, fed) ??
    shuntSide(design, fed) ??
    nearest(design, fed) ??
    battery(design, fed) ?? {
      to: null,
      why: 'No return was drawn: there is neither a negative bar with a free stud nor a battery yet.',
    }
  )
}

function ownNegative(design: Design, fed: Fed): ReturnWay | null {
  const devices = netsOf(design).electrical(fed.feed.part)?.devices ?? []
  const source = devices.find((d) => d.positive === fed.feed.terminal && d.role === 'source')
  const part = partById(design, fed.feed.part)
  if (!source || !part) return null
  return {
    to: { part: part.id, terminal: source.negative },
    why: `The return goes to ${part.designation} itself, which feeds it directly.`,
  }
}

function ownBar(design: Design, block: Part | null, fed: Fed): ReturnWay | null {
  const stud = block && freeStud(design, block)
  if (!stud || (fed.charges && isBehindLoadShunt(design, block))) return null
  return { to: stud, why: `The return goes to the return bar of ${block.designation}, which feeds it.` }
}

const isBehindLoadShunt = (design: Design, bar: Part): boolean =>
  negativeBars(design).some((b) => b.part === bar && b.behindLoadShunt)

/** Bars by how many consumers of the block return to them. */
function sharedBar(design: Design, block: Part | null, fed: Fed): ReturnWay | null {
  if (!block) return null
  const votes = new Map<Part, number>()
  for (const part of design.parts) {
    if (charges(design, part) !== fed.charges) continue
    for (const d of consumersIn(design, part.id)) {
      const feeds = conductorsAt(design, part.id, d.positive)
      if (!feeds.some((c) => blockBehind(design, otherEnd(c, part.id)) === block)) continue
      for (const c of conductorsAt(design, part.id, d.negative)) {
        const bar = partById(design, otherEnd(c, part.id).part)
        if (bar && isBlock(bar)) votes.set(bar, (votes.get(bar) ?? 0) + 1)
      }
    }
  }
  for (const [bar] of [...votes].sort((a, b) => b[1] - a[1])) {
    const stud = freeStud(design, bar)
    if (stud) {
      const why = `The return goes to ${bar.designation}, where other consumers fed from ${block.designation} return.`
      return { to: stud, why }
    }
  }
  return null
}

function shuntSide(design: Design, fed: Fed): ReturnWay | null {
  const bars = negativeBars(design)
  if (!bars.some((b) => b.behindLoadShunt)) return null
  const wanted = bars.filter((b) => b.behindLoadShunt !== fed.charges)
  const stud = closest(
    design,
    fed,
    wanted.map((b) => b.part),
  )
  if (!stud) return fed.charges ? battery(design, fed) : NO_STUD_BEHIND
  const name = partById(design, stud.part)!.designation
  const why = fed.charges
    ? `The return goes to ${name}, on the battery side of the load-side shunt, as it also charges.`
    : `The return goes to ${name}, behind the load-side shunt, so that the load is measured.`
  return { to: stud, why }
}

/** Any other bar would let the load pass the shunt by. */
const NO_STUD_BEHIND: ReturnWay = {
  to: null,
  why: 'No return was drawn: no bar behind the load-side shunt has a free stud.',
}

function nearest(design: Design, fed: Fed): ReturnWay | null {
  const bars = negativeBars(design).map((b) => b.part)
  const stud = closest(design, fed, bars)
  if (!stud) return null
  return {
    to: stud,
    why: `The return goes to ${partById(design, stud.part)!.designation}, the nearest negative bar.`,
  }
}

function battery(design: Design, fed: Fed): ReturnWay | null {
  const nets = netsOf(design)
  const feeding = nets.positives(nets.netOf(fed.feed)).find((h) => h.device?.role === 'battery')
  if (!feeding?.device) return null
  return {
    to: { part: feeding.part.id, terminal: feeding.device.negative },
    why: `The return goes to ${feeding.part.designation} itself, as ${negativeBars(design).length === 0 ? 'no bar is joined to a negative terminal yet' : 'no negative bar has a place for it'}.`,
  }
}

/** Free stud of the bar nearest to the consumer. */
function closest(design: Design, fed: Fed, bars: readonly Part[]): TerminalRef | null {
  const here = middle(partById(design, fed.consumer.part)!)
  const away = (bar: Part): number => {
    const there = middle(bar)
    return Math.hypot(there.x - here.x, there.y - here.y)
  }
  for (const bar of [...bars].sort((a, b) => away(a) - away(b))) {
    const stud = freeStud(design, bar)
    if (stud) return stud
  }
  return null
}

function middle(part: Part): { x: number; y: number } {
  const { x, y, w, h } = boxOf(part)
  return { x: x + w / 2, y: y + h / 2 }
}

const otherEnd = (c: { from: TerminalRef; to: TerminalRef }, part: string): TerminalRef =>
  c.from.part === part ? c.to : c.from
