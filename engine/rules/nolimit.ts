import type { Answer, WorstCase } from '../calc/answers'
import { found, type Rule } from './rule'

/** C2: a battery without a stated limit leaves worst-case currents without a bound. */
export const noLimit: Rule = {
  id: 'C2',
  looksFor: 'currents without a bound, because a limit is not stated',
  check: ({ answers, border }) => {
    const conductors = [...answers.runs].flatMap(([id, run]) =>
      [run.forward, run.backward].some(isEndless) ? [id] : [],
    )
    const endless = [
      ...[...answers.runs.values()].flatMap((run) => [run.forward, run.backward]),
      ...[...answers.branches.values()].map((b) => b.worst),
      ...answers.bars.values(),
    ].filter(isEndless)
    if (endless.length === 0) return []
    const by = new Set(endless.flatMap((a) => ('value' in a ? a.value.unlimitedBy : [])))
    const open = [...border.devices.values()].filter(
      ({ part, device }) => by.has(part) && (device.minA === 'unlimited' || device.maxA === 'unlimited'),
    )
    const batteries = open.filter((ref) => ref.role === 'battery')
    return (batteries.length > 0 ? batteries : open).map(({ part, device }) =>
      found(
        'C2',
        'not-checked',
        'method',
        { parts: [part] },
        {
          part,
          conductors,
          charge: device.minA === 'unlimited',
          discharge: device.maxA === 'unlimited',
        },
      ),
    )
  },
}

const isEndless = (a: Answer<WorstCase>): boolean => 'value' in a && a.value.amps === 'unlimited'
